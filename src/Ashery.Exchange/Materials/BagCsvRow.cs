using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using CsvHelper;

namespace Ashery.Exchange.Materials;

/// <summary>One line of a CSV as a bag.</summary>
internal sealed class BagCsvRow(CsvReader csv, MaterialCatalogue catalogue, string place, List<Problem> problems)
{
    private readonly BagCsvCells cells = new(csv, place, problems);

    /// <summary>The bag; null when something on the line is wrong, which is then among the problems.</summary>
    public Bag? Read()
    {
        var before = problems.Count;
        var id = cells.Text(BagColumns.Id);
        var materialId = cells.Text(BagColumns.Material);
        if (id.Length == 0)
        {
            id = materialId;
        }

        if (OwnBag.IdProblem(id) is { } wrongId)
        {
            cells.Add(wrongId with { Field = cells.Place(BagColumns.Id) });
        }

        var name = cells.Name();
        var lines = Label();
        var material = problems.Exists(p => p.Severity == Severity.Error && p.Field.StartsWith(place + ",", StringComparison.Ordinal))
            ? null
            : materialId.Length > 0 ? OfCatalogue(materialId, name, lines) : Compound(id, name, lines);
        var left = cells.Amount(BagColumns.Left, allowNone: true);
        var size = cells.Amount(BagColumns.Size, allowNone: false);
        var price = cells.Number(BagColumns.Price, 0, 1e9);
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
            cells.Add(InlineMaterial.Unknown(materialId, catalogue) with { Field = cells.Place(BagColumns.Material) });
            return null;
        }

        var named = known with { Name = name ?? known.Name };
        if (lines.Count == 0)
        {
            return Densities(named);
        }

        var bag = OwnBag.Of(named, lines, field: place);
        cells.AddRange(bag.Problems);
        return bag.Ok ? Densities(bag.Value) : null;
    }

    private Material? Compound(string id, string? name, List<LabelLine> lines)
    {
        // A filler or an inoculant holds nothing that a label would print.
        if (lines.Count == 0 && !string.Equals(cells.Text(BagColumns.Kind), nameof(MaterialKind.Filler), StringComparison.OrdinalIgnoreCase))
        {
            cells.Add(new Problem(place, "Neither a material of the catalogue nor a label is given.", "Fill the material column, or N, P2O5, K2O and the rest."));
            return null;
        }

        var liquid = cells.Number(BagColumns.LiquidDensity, 0.5, 3);
        var bag = OwnBag.Compound(id, name ?? id, cells.Kind(), lines, cells.Flag(BagColumns.Dissolves), bulkDensity: null, liquid, field: place);
        cells.AddRange(bag.Problems);
        return bag.Ok
            ? Densities(bag.Value) with
            {
                SaltIndex = cells.Own(BagColumns.SaltIndex, 0, 300) ?? bag.Value.SaltIndex,
                LimeEquivalent = cells.Own(BagColumns.LimeEquivalent, -5, 5) ?? bag.Value.LimeEquivalent,
            }
            : null;
    }

    // A density typed replaces the range of the catalogue; the same figure leaves it as it is.
    private Material Densities(Material material)
    {
        var bulk = cells.Number(BagColumns.BulkDensity, 0.05, 5);
        var liquid = cells.Number(BagColumns.LiquidDensity, 0.5, 3);
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
                cells.AddRange(line.Problems);
            }
        }

        return lines;
    }
}
