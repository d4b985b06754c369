using System.Globalization;
using System.Text.Json;
using Ashery.Problems;

namespace Ashery.Exchange.RootZone;

/// <summary>The fields of one object, read by hand: each is asked for once, what is of the wrong kind or not known is named.</summary>
internal sealed class JsonFields
{
    private readonly Dictionary<string, JsonElement> fields = new(StringComparer.Ordinal);
    private readonly List<Problem> problems;

    public JsonFields(JsonElement element, string path, List<Problem> problems)
    {
        Path = path;
        this.problems = problems;
        foreach (var property in element.EnumerateObject())
        {
            if (!fields.TryAdd(property.Name, property.Value))
            {
                problems.Add(new(At(property.Name), "This is there twice.", "Keep one."));
            }
        }
    }

    public string Path { get; }

    public bool Has(string name) => fields.ContainsKey(name);

    public string At(string name) => Path.Length == 0 ? name : Path + "." + name;

    /// <summary>Names every field that is not one of these.</summary>
    public void Only(params ReadOnlySpan<string> known)
    {
        foreach (var name in fields.Keys)
        {
            if (known.IndexOf(name) < 0)
            {
                problems.Add(new(At(name.Length > 40 ? name[..40] + "..." : name), "There is no such field here.", $"Use {string.Join(", ", known.ToArray())}."));
            }
        }
    }

    public double? Number(string name, double low, double high)
    {
        if (!fields.TryGetValue(name, out var value))
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number >= low && number <= high)
        {
            return number;
        }

        Wrong(name, string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}"));
        return null;
    }

    public double Needed(string name, double low, double high)
    {
        if (!Has(name))
        {
            problems.Add(new(At(name), "This is missing.", string.Create(CultureInfo.InvariantCulture, $"Give a number from {low} to {high}.")));
        }

        return Number(name, low, high) ?? low;
    }

    public string? Text(string name)
    {
        if (!fields.TryGetValue(name, out var value))
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.String && value.GetString() is { Length: > 0 and <= 200 } text && !text.Any(char.IsControl))
        {
            return text;
        }

        Wrong(name, "a short text in quotes");
        return null;
    }

    public DateOnly? Date(string name)
    {
        if (!fields.TryGetValue(name, out var value))
        {
            problems.Add(new(At(name), "The date is missing.", "Write it as 2026-04-01."));
            return null;
        }

        if (value.ValueKind == JsonValueKind.String && DateOnly.TryParseExact(value.GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        Wrong(name, "a date as 2026-04-01");
        return null;
    }

    public JsonFields? Object(string name)
    {
        if (!fields.TryGetValue(name, out var value))
        {
            return null;
        }

        if (value.ValueKind == JsonValueKind.Object)
        {
            return new(value, At(name), problems);
        }

        Wrong(name, "an object in braces");
        return null;
    }

    public IEnumerable<JsonFields> Objects(string name, int most)
    {
        if (!fields.TryGetValue(name, out var value))
        {
            yield break;
        }

        if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() > most)
        {
            Wrong(name, string.Create(CultureInfo.InvariantCulture, $"a list of at most {most}"));
            yield break;
        }

        var i = 0;
        foreach (var item in value.EnumerateArray())
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"{At(name)}[{i++}]");
            if (item.ValueKind == JsonValueKind.Object)
            {
                yield return new(item, path, problems);
            }
            else
            {
                problems.Add(new(path, "An event is an object in braces.", "Write { \"date\": \"2026-04-01\", \"feed\": \"urea\", \"grams\": 2 }."));
            }
        }
    }

    /// <summary>The text of a field as it stands, for a reader of its own.</summary>
    public string? Raw(string name) => fields.TryGetValue(name, out var value) ? value.GetRawText() : null;

    public bool IsText(string name) => fields.TryGetValue(name, out var value) && value.ValueKind == JsonValueKind.String;

    public void Wrong(string name, string wanted) => problems.Add(new(At(name), "This cannot be used.", $"Give {wanted}."));
}
