using System.Globalization;
using Ashery.Problems;
using Ashery.Web.Show;

namespace Ashery.Web.Forms;

/// <summary>Reads the fields of a draft one by one and gathers what is wrong, field by field.</summary>
public sealed class FieldReader(Draft draft)
{
    private const NumberStyles Styles = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    private readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>True when no error was found yet; notes and warnings do not hold up.</summary>
    public bool Fine => problems.TrueForAll(p => p.Severity != Severity.Error);

    public void Add(string field, string message, string wayOut) => problems.Add(new Problem(field, message, wayOut));

    public void AddRange(IEnumerable<Problem> found) => problems.AddRange(found);

    /// <summary>A text that must be there.</summary>
    public string Text(string name, string what, int longest = 200)
    {
        var text = draft[name].ReplaceLineEndings(" ");
        if (text.Length == 0)
        {
            Add(name, $"{what} is missing.", "Write it here.");
        }
        else if (text.Length > longest)
        {
            Add(name, $"{what} is too long ({Number(text.Length)} signs).", $"Keep it within {Number(longest)} signs.");
        }

        return text;
    }

    /// <summary>A number that may be left out.</summary>
    public double? Optional(string name, double least, double most, string example)
    {
        var text = draft[name].Replace('\u2212', '-');
        if (text.Length == 0)
        {
            return null;
        }

        if (text.Contains(',', StringComparison.Ordinal))
        {
            Add(name, $"{Cut(text)} has a comma.", $"Write decimals with a point, as in {example}.");
            return null;
        }

        if (!double.TryParse(text, Styles, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
        {
            Add(name, $"{Cut(text)} is not a number.", $"Write one, as in {example}.");
            return null;
        }

        if (value < least || value > most)
        {
            Add(name, $"{Cut(text)} is outside {Number(least)} to {Number(most)}.", $"Write a number between them, as in {example}.");
            return null;
        }

        return value;
    }

    /// <summary>A number that must be there; a stand-in within the bounds when it is not.</summary>
    public double Required(string name, double least, double most, string example)
    {
        if (!draft.Has(name))
        {
            Add(name, "A number is missing.", $"Write one, as in {example}.");
            return least;
        }

        return Optional(name, least, most, example) ?? least;
    }

    public int Whole(string name, int least, int most, string example)
    {
        var value = Required(name, least, most, example);
        if (value != Math.Floor(value))
        {
            Add(name, $"{Cut(draft[name])} is not a whole number.", $"Write one, as in {example}.");
        }

        return (int)value;
    }

    public DateOnly? Date(string name)
    {
        if (!draft.Has(name))
        {
            return null;
        }

        if (DateOnly.TryParseExact(draft[name], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            && date.Year is >= 1900 and <= 2200)
        {
            return date;
        }

        Add(name, $"{Cut(draft[name])} is not a date.", "Write year-month-day, as in 2026-03-14.");
        return null;
    }

    public TEnum Choice<TEnum>(string name, TEnum otherwise)
        where TEnum : struct, Enum
    {
        if (!draft.Has(name))
        {
            return otherwise;
        }

        foreach (var value in Enum.GetValues<TEnum>())
        {
            if (string.Equals(value.ToString(), draft[name], StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        Add(name, $"{Cut(draft[name])} is not one of the choices.", "Choose from the list.");
        return otherwise;
    }

    public static string Cut(string text) => text.Length > 40 ? $"“{text[..40]}…”" : $"“{text}”";

    private static string Number(double value) => Figures.Number(value);
}
