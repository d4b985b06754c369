using System.Text.Json;
using Ashery.Exchange.Gardens;

namespace Ashery.Exchange.RootZone;

/// <summary>One object of a file with its path: reads fields, keeps what is wrong, and at the end names fields nobody asked for.</summary>
internal sealed class Node
{
    private const int LongestText = 120;

    private readonly JsonElement element;
    private readonly FieldReader fields;
    private readonly string path;
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    public Node(JsonElement element, FieldReader fields, string path)
    {
        (this.element, this.fields, this.path) = (element, fields, path);
        IsObject = element.ValueKind == JsonValueKind.Object;
        if (!IsObject)
        {
            fields.Add(new(path.Length == 0 ? "pot" : path, $"Here stands {Kind(element)}, not an object in braces.", "Write it as { ... }; docs/pot-file.md shows each part."));
        }
    }

    public bool IsObject { get; }

    public string PathOf(string key) => path.Length == 0 ? key : path + "." + key;

    public bool Has(string key) => Find(key) is not null;

    public double? Number(string key, double low, double high, string unit)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.Number || !value.TryGetDouble(out var number) || !double.IsFinite(number))
        {
            fields.Add(new(PathOf(key), $"Here stands {Kind(value)}, not a number.", "Write a plain number with a point, such as 2.5, without quotes."));
            return null;
        }

        return fields.Optional(number, PathOf(key), low, high, unit);
    }

    public double Needed(string key, double low, double high, string unit)
    {
        if (!Has(key) && IsObject)
        {
            return fields.Number(null, PathOf(key), low, high, unit);
        }

        return Number(key, low, high, unit) ?? low;
    }

    public int? Whole(string key, int low, int high)
    {
        if (Number(key, low, high, "") is not { } number)
        {
            return null;
        }

        if (number != Math.Floor(number))
        {
            fields.Add(new(PathOf(key), FormattableString.Invariant($"{number} is not a whole number."), "Leave the part after the point out."));
        }

        return (int)number;
    }

    public string? Text(string key)
    {
        if (Find(key) is not { } value)
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.String)
        {
            fields.Add(new(PathOf(key), $"Here stands {Kind(value)}, not a text.", "Put it in double quotes."));
            return null;
        }

        return fields.Text(value.GetString(), PathOf(key), LongestText);
    }

    public bool Flag(string key)
    {
        if (Find(key) is not { } value)
        {
            return false;
        }

        if (value.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            fields.Add(new(PathOf(key), $"Here stands {Kind(value)}, not true or false.", "Write true or false without quotes."));
        }

        return value.ValueKind == JsonValueKind.True;
    }

    public DateOnly? Date(string key) => Text(key) is { } text ? fields.Date(text, PathOf(key)) : null;

    public DateOnly NeededDate(string key)
    {
        if (!Has(key) && IsObject)
        {
            fields.Missing(PathOf(key), "Write the day as 2027-04-12.");
        }

        return Date(key) ?? new DateOnly(2000, 1, 1);
    }

    /// <summary>An object under a key; null when there is none.</summary>
    public Node? Object(string key) => Find(key) is { } value ? new(value, fields, PathOf(key)) : null;

    /// <summary>The bare value, of whatever kind.</summary>
    public JsonElement? Raw(string key) => Find(key);

    public IEnumerable<Node> List(string key, int most)
    {
        if (Find(key) is not { } value)
        {
            yield break;
        }

        if (value.ValueKind != JsonValueKind.Array)
        {
            fields.Add(new(PathOf(key), $"Here stands {Kind(value)}, not a list.", "Write it as [ ... ], parts set apart by commas."));
            yield break;
        }

        if (value.GetArrayLength() > most)
        {
            fields.Add(new(PathOf(key), FormattableString.Invariant($"There are {value.GetArrayLength()} entries; {most} is the limit."), "Take some out."));
            yield break;
        }

        var i = 0;
        foreach (var item in value.EnumerateArray())
        {
            yield return new(item, fields, FormattableString.Invariant($"{PathOf(key)}[{i++}]"));
        }
    }

    /// <summary>Names fields that are not of this file.</summary>
    public void Close()
    {
        if (!IsObject)
        {
            return;
        }

        foreach (var property in element.EnumerateObject())
        {
            if (!asked.Contains(property.Name))
            {
                var name = property.Name.Length > 40 ? property.Name[..40] + "..." : property.Name;
                fields.Add(new(PathOf(name), "There is no such field here.", "Use " + string.Join(", ", asked.Order(StringComparer.Ordinal)) + "."));
            }
        }
    }

    public static string Kind(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True or JsonValueKind.False => "true or false",
        _ => "nothing",
    };

    private JsonElement? Find(string key)
    {
        asked.Add(key);
        return IsObject && element.TryGetProperty(key, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
    }
}
