using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Sources;
using CsvHelper;

namespace Ashery.Exchange.Materials;

/// <summary>The cells of one line, each read as what its column holds; what is wrong goes to the problems with line and column.</summary>
internal sealed class BagCsvCells(CsvReader csv, string place, List<Problem> problems)
{
    private const int LongestName = 120;

    public string? Name()
    {
        var name = Text(BagColumns.Name);
        if (name.Length == 0)
        {
            return null;
        }

        // What the writer put in front so that a spreadsheet takes the name as text.
        if (name.Length > 1 && name[0] == '\'' && name[1] is '=' or '+' or '-' or '@')
        {
            name = name[1..];
        }

        if (name.Length > LongestName || name.Any(char.IsControl))
        {
            Add(new Problem(Place(BagColumns.Name), "It is too long or holds control characters.", "Keep names to 120 ordinary characters."));
        }

        return name;
    }

    public MaterialKind Kind()
    {
        var word = Text(BagColumns.Kind);
        foreach (var kind in Enum.GetValues<MaterialKind>())
        {
            if (word.Length == 0 || string.Equals(kind.ToString(), word, StringComparison.OrdinalIgnoreCase))
            {
                return kind;
            }
        }

        Add(new Problem(Place(BagColumns.Kind), $"'{NumberReader.Shown(word)}' is not a kind of material.", "Use straight, slowRelease, calciumMagnesium, liming, traceElement, acid, organicMeal, bulkyOrganic or filler."));
        return default;
    }

    public Figure? Own(string column, double low, double high) => Number(column, low, high) is { } v ? new Figure(v, "label", Provenance.Seen) : null;

    public bool Flag(string column)
    {
        var word = Text(column).ToLowerInvariant();
        if (word is not ("" or "yes" or "no" or "true" or "false" or "1" or "0"))
        {
            Add(new Problem(Place(column), $"'{NumberReader.Shown(word)}' is neither yes nor no.", "Write yes or no."));
        }

        return word is "yes" or "true" or "1";
    }

    public double? Number(string column, double low, double high)
    {
        var cell = Text(column);
        if (cell.Length == 0)
        {
            return null;
        }

        var read = NumberReader.Read(cell, Place(column), low, high);
        AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }

    public Mass? Amount(string column, bool allowNone)
    {
        var cell = Text(column);
        if (cell.Length == 0)
        {
            return null;
        }

        if (allowNone && cell is "0" or "0 g" or "0g" or "0 kg" or "0kg")
        {
            return new Mass(0);
        }

        var read = QuantityReader.Mass(cell, Place(column), "2.5 kg");
        AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }

    public string Text(string column)
    {
        if (!csv.TryGetFieldIndex(column, out var index) || index >= csv.FieldCount)
        {
            return string.Empty;
        }

        var text = csv.GetString(index).Trim();
        if (text.Contains('\uFFFD', StringComparison.Ordinal))
        {
            Add(new Problem(Place(column), "It holds letters in another encoding than UTF-8.", "Save the file as CSV UTF-8."));
            return string.Empty;
        }

        return text;
    }

    public string Place(string column) => $"{place}, {column}";

    public void Add(Problem problem)
    {
        if (!problems.Contains(problem))
        {
            problems.Add(problem);
        }
    }

    // What was kept from the catalogue is no news for a whole file of bags.
    public void AddRange(IEnumerable<Problem> more)
    {
        foreach (var problem in more)
        {
            if (problem.Severity != Severity.Note)
            {
                Add(problem.Field.StartsWith(place, StringComparison.Ordinal) ? problem : problem with { Field = $"{place}, {problem.Field}" });
            }
        }
    }
}
