namespace Ashery.Solutions.Waters;

/// <summary>A line of a form: what may be typed for a quantity and in which units.</summary>
/// <param name="Quantity">What it counts; alkalinity takes in bicarbonate.</param>
/// <param name="Units">Texts a report may use, the usual one first as an empty text, with words for each.</param>
/// <param name="IsMajor">Most reports print it.</param>
public sealed record ReportRow(WaterQuantity Quantity, IReadOnlyList<(string Unit, string Words)> Units, bool IsMajor)
{
    private static readonly string[] Usual = ["calcium", "magnesium", "hardness", "sodium", "potassium", "alkalinity", "chloride", "sulfate", "nitrate"];

    private static readonly Lazy<IReadOnlyList<ReportRow>> Rows = new(static () => Make());

    /// <summary>Majors first, in the order most reports print them.</summary>
    public static IReadOnlyList<ReportRow> All => Rows.Value;

    public string Symbol => Quantity.Symbol;

    /// <summary>
    /// A line of a report as one of this row: its unit in a text of <see cref="Units"/>. Null when the line is of another row.
    /// </summary>
    public string? UnitOf(WaterLine line)
    {
        if (WaterQuantity.Named(line.Name) is not var (quantity, basis)
            || !(quantity == Quantity || (Quantity.Id == "alkalinity" && quantity.Id == "bicarbonate")))
        {
            return null;
        }

        var (unit, said) = line.Unit is null ? (WaterUnit.All[0], null) : WaterUnit.Named(line.Unit) ?? (WaterUnit.All[0], null);
        var text = Text(unit, said ?? basis);
        foreach (var (known, _) in Units)
        {
            if (known == text)
            {
                return text;
            }
        }

        return null;
    }

    private string Text(WaterUnit unit, string basis) =>
        unit.Kind != WaterUnitKind.Mass ? unit.Id
        : basis == Quantity.Names[0].Basis ? (unit.Id == "mg/L" ? "" : unit.Id)
        : $"{unit.Id} as {basis}";

    private static List<ReportRow> Make()
    {
        var rows = new List<ReportRow>();
        foreach (var id in Usual)
        {
            rows.Add(Row(WaterDraft.QuantityOf(id), major: true));
        }

        foreach (var quantity in WaterQuantity.All)
        {
            if (quantity.Id != "bicarbonate" && !rows.Exists(r => r.Quantity == quantity))
            {
                rows.Add(Row(quantity, major: false));
            }
        }

        return rows;
    }

    private static ReportRow Row(WaterQuantity quantity, bool major)
    {
        var units = new List<(string, string)>();
        var usual = quantity.Names[0].Basis;
        units.Add(("", quantity.Kind == WaterQuantityKind.Solids ? "mg/L" : $"mg/L {usual}"));
        foreach (var (basis, _) in quantity.Bases)
        {
            if (basis != usual)
            {
                units.Add(($"mg/L as {basis}", $"mg/L {basis}"));
            }
        }

        foreach (var unit in WaterUnit.All)
        {
            var fits = unit.Id is not ("g/L" or "mg/L") && !double.IsNaN(ReportedAmount.AmountIn(quantity, 1, unit, usual));
            if (fits && (quantity.Kind != WaterQuantityKind.Solids) && !(major && unit.Id.StartsWith('µ')))
            {
                units.Add((unit.Id, unit.Id));
            }
        }

        return new(quantity, units, major);
    }
}
