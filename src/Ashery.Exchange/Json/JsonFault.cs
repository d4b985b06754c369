using System.Globalization;
using System.Text.Json;

namespace Ashery.Exchange.Json;

/// <summary>Says in a grower's words what the JSON reader found wrong and where.</summary>
internal static class JsonFault
{
    /// <summary>Line and field, counted from one as editors do.</summary>
    public static string Place(string field, JsonException wrong)
    {
        var place = field;
        if (wrong.LineNumber is { } line)
        {
            place += string.Create(CultureInfo.InvariantCulture, $", line {line + 1}");
        }

        return wrong.Path is { Length: > 2 } path ? $"{place}, {path[2..]}" : place;
    }

    public static string Message(JsonException wrong)
    {
        var text = wrong.Message;
        if (Between(text, "The JSON property '", "'") is { } unknown && text.Contains("could not be mapped", StringComparison.Ordinal))
        {
            return $"There is no field '{unknown}' here.";
        }

        if (text.Contains("missing required properties", StringComparison.Ordinal) && text.LastIndexOf(": ", StringComparison.Ordinal) is > 0 and var at)
        {
            return $"Missing: {text[(at + 2)..].TrimEnd('.')}.";
        }

        if (text.StartsWith("The JSON value could not be converted", StringComparison.Ordinal))
        {
            return "The value is not of the kind this field takes (a number, a word in quotes, a list ...).";
        }

        // The reader's own sentence, without the position that Place already gives.
        var end = text.IndexOf(" Path: ", StringComparison.Ordinal) is > 0 and var p ? p : text.IndexOf(" LineNumber: ", StringComparison.Ordinal);
        return end > 0 ? text[..end] : text;
    }

    public static string WayOut(JsonException wrong) =>
        wrong.InnerException is InvalidOperationException or FormatException
            ? "Write numbers without quotes and with a point: 2.5."
            : "Compare with the schema in docs/schemas; numbers take a point, words take quotes.";

    private static string? Between(string text, string before, string after)
    {
        var from = text.IndexOf(before, StringComparison.Ordinal);
        if (from < 0)
        {
            return null;
        }

        from += before.Length;
        var to = text.IndexOf(after, from, StringComparison.Ordinal);
        return to < 0 ? null : text[from..to];
    }
}
