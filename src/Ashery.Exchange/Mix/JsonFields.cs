using System.Text;
using System.Text.Json;
using Ashery.Compatibility;
using Ashery.Exchange.Json;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Exchange.Mix;

/// <summary>Fields that the writer has no word for.</summary>
internal static class JsonFields
{
    private const string Indent = "\n";

    /// <summary>The text that <paramref name="write"/> makes, in the shared form, closed by a line end.</summary>
    public static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions { Indented = true, NewLine = Indent, Encoder = AsheryJson.Options.Encoder };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer().AsSpan(0, (int)stream.Length)) + Indent;
    }

    public static void Number(this Utf8JsonWriter json, string name, double? number)
    {
        if (number is { } value)
        {
            json.WriteNumber(name, value);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    public static void Numbers(this Utf8JsonWriter json, string name, IReadOnlyDictionary<string, double> numbers)
    {
        json.WriteStartObject(name);
        foreach (var (key, value) in numbers)
        {
            json.WriteNumber(key, value);
        }

        json.WriteEndObject();
    }

    public static void Strings(this Utf8JsonWriter json, string name, IReadOnlyList<string> words)
    {
        json.WriteStartArray(name);
        foreach (var word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    public static void Problems(this Utf8JsonWriter json, string name, IReadOnlyList<ProblemJson> problems)
    {
        json.WriteStartArray(name);
        foreach (var problem in problems)
        {
            json.WriteStartObject();
            Fields(json, problem);
        }

        json.WriteEndArray();
    }

    public static void Problem(this Utf8JsonWriter json, string name, ProblemJson? problem)
    {
        if (problem is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        Fields(json, problem);
    }

    private static void Fields(Utf8JsonWriter json, ProblemJson problem)
    {
        json.WriteString("field", problem.Field);
        json.WriteString("message", problem.Message);
        json.WriteString("wayOut", problem.WayOut);
        json.WriteString("severity", Words.Of(problem.Severity));
        json.WriteEndObject();
    }
}

/// <summary>The words of enums, as <see cref="WordConverter{TEnum}"/> writes them.</summary>
internal static class Words
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Fine => "fine",
        Verdict.Limited => "limited",
        Verdict.Stop => "stop",
        _ => "unknown",
    };

    public static string Of(StorageClass storage) => storage switch
    {
        StorageClass.KeepsDry => "keepsDry",
        StorageClass.Airtight => "airtight",
        StorageClass.OnTheDay => "onTheDay",
        StorageClass.Never => "never",
        _ => "unknown",
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Warning => "warning",
        _ => "error",
    };

    public static string Of(BlendUse use) => use switch
    {
        BlendUse.DryToday => "dryToday",
        BlendUse.DryStored => "dryStored",
        _ => "dissolved",
    };

    public static string Of(RankBy rank) => rank is RankBy.Percentile95 ? "percentile95" : "typicalAnalysis";
}
