using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Sources;
using CsvHelper;

namespace Ashery.Exchange.Materials;

/// <summary>One line of a CSV as a bag.</summary>
internal sealed class BagCsvRow(CsvReader csv, MaterialCatalogue catalogue, string place, List<Problem> problems)
{
    private const int LongestName = 120;

    /// <summary>The bag; null when something on the line is wrong, which is then among the problems.</summary>
    public Bag? Read()
    {
        var before = problems.Count;
        var id = Text(BagColumns.Id);
        var materialId = Text(BagColumns.Material);
        if (id.Length == 0)
        {
            id = materialId;
        }

        if (OwnBag.IdProblem(id) is { } wrongId)
        {
            Add(wrongId with { Field = Place(BagColumns.Id) });
        }

        var name = Name();
        var lines = Label();
        var material = problems.Exists(p => p.Severity == Severity.Error && p.Field.StartsWith(place + ",", StringComparison.Ordinal))
            ? null
            : materialId.Length > 0 ? OfCatalogue(materialId, name, lines) : Compound(id, name, lines);
        var left = Amount(BagColumns.Left, allowNone: true);
        var size = Amount(BagColumns.Size, allowNone: false);
        var price = Number(BagColumns.Price, 0, 1e9);
        for (var i = before; i < problems.Count; i++)
        {
            if (problems[i].Severity == Severity.Error)
            {
                return null;
            }
        }

        return material is null ? null : new Bag(id, material, left, price, size);
    }

    private Material? OfCatalogue(string materialId, string? name, List<LabelLine> lines)
    {
        if (catalogue.Find(materialId) is not { } known)
        {
            Add(InlineMaterial.Unknown(materialId, catalogue) with { Field = Place(BagColumns.Material) });
            return null;
        }

        var named = known with { Name = name ?? known.Name };
        if (lines.Count == 0)
        {
            return Densities(named);
        }

        var bag = OwnBag.Of(named, lines, field: place);
        AddRange(bag.Problems);
        return bag.Ok ? Densities(bag.Value) : null;
    }

    private Material? Compound(string id, string? name, List<LabelLine> lines)
    {
        // A filler or an inoculant holds nothing that a label would print.
        if (lines.Count == 0 && !string.Equals(Text(BagColumns.Kind), nameof(MaterialKind.Filler), StringComparison.OrdinalIgnoreCase))
        {
            Add(new Problem(place, "Neither a material of the catalogue nor a label is given.", "Fill the material column, or N, P2O5, K2O and the rest."));
            return null;
        }

        var liquid = Number(BagColumns.LiquidDensity, 0.5, 3);
        var bag = OwnBag.Compound(id, name ?? id, Kind(), lines, Flag(BagColumns.Dissolves), bulkDensity: null, liquid, field: place);
        AddRange(bag.Problems);
        return bag.Ok
            ? Densities(bag.Value) with
            {
                SaltIndex = Own(BagColumns.SaltIndex, 0, 300) ?? bag.Value.SaltIndex,
                LimeEquivalent = Own(BagColumns.LimeEquivalent, -5, 5) ?? bag.Value.LimeEquivalent,
            }
            : null;
    }

    // A density typed replaces the range of the catalogue; the same figure leaves it as it is.
    private Material Densities(Material material)
    {
        var bulk = Number(BagColumns.BulkDensity, 0.05, 5);
        var liquid = Number(BagColumns.LiquidDensity, 0.5, 3);
        return material with
        {
            BulkDensity = bulk is { } b && (material.BulkDensity is null || Math.Abs(material.BulkDensity.Value.Typical - b) > 1e-9) ? Spread.Exactly(b) : material.BulkDensity,
            LiquidDensity = liquid ?? material.LiquidDensity,
        };
    }

    private List<LabelLine> Label()
    {
        var lines = new List<LabelLine>();
        for (var i = 0; i < csv.FieldCount; i++)
        {
            var header = csv.Headers[i].Trim();
            var cell = csv.GetString(i).Trim();
            if (cell.Length == 0 || BagColumns.IsPlain(header))
            {
                continue;
            }

            var line = LabelReader.Line(header, cell, place);
            if (line.Ok)
            {
                lines.Add(line.Value);
            }
            else
            {
                AddRange(line.Problems);
            }
        }

        return lines;
    }

    private string? Name()
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

    private MaterialKind Kind()
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

    private Figure? Own(string column, double low, double high) => Number(column, low, high) is { } v ? new Figure(v, "label", Provenance.Seen) : null;

    private bool Flag(string column)
    {
        var word = Text(column).ToLowerInvariant();
        if (word is not ("" or "yes" or "no" or "true" or "false" or "1" or "0"))
        {
            Add(new Problem(Place(column), $"'{NumberReader.Shown(word)}' is neither yes nor no.", "Write yes or no."));
        }

        return word is "yes" or "true" or "1";
    }

    private double? Number(string column, double low, double high)
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

    private Mass? Amount(string column, bool allowNone)
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

    private string Text(string column)
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

    private string Place(string column) => $"{place}, {column}";

    private void Add(Problem problem)
    {
        if (!problems.Contains(problem))
        {
            problems.Add(problem);
        }
    }

    // What was kept from the catalogue is no news for a whole file of bags.
    private void AddRange(IEnumerable<Problem> more)
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
