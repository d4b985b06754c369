using Ashery.Cautions;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Exchange.Catalogue;

/// <summary>From catalogue rows to their JSON.</summary>
public static class MaterialsOut
{
    /// <summary>A line of the list.</summary>
    public static MaterialJson Line(Material material) =>
        new(material.Id, material.Name, material.Kind, Percent(material.Label), Sheet: null);

    /// <summary>With everything known of it.</summary>
    public static MaterialJson WithSheet(Material material) => Line(material) with { Sheet = Sheet(material) };

    /// <summary>Words of the cautions that go with handling and keeping a material.</summary>
    public static IReadOnlyList<string> Cautions(Material material) =>
        [.. CautionIndex.Default.CautionsFor([material], CautionUse.Mixing, CautionUse.Storing)
            .Select(static id => CautionIndex.Default.Find(id)).OfType<Caution>().Select(static c => c.Words)];

    internal static IReadOnlyDictionary<string, double> Percent(LabelAnalysis label) =>
        label.Present.ToDictionary(LabelBasis.Symbol, n => Tidy(label.Percent(n)));

    private static MaterialSheetJson Sheet(Material m) => new(
        m.OtherNames,
        m.Formula,
        m.IsLiquid,
        m.Dissolves,
        Forms(m.Nitrogen),
        m.BulkDensity is { } b ? new(b.Min, b.Typical, b.Max) : null,
        m.LiquidDensity,
        Figure(m.SaltIndex),
        Figure(m.LimeEquivalent),
        Figure(m.CriticalRelativeHumidity),
        [.. m.Solubility.Select(static s => new SolubilityJson(s.Celsius, Tidy(s.GramsPerKgWater)))],
        Cautions(m),
        m.Notes,
        m.Regulations,
        [.. MaterialCatalogue.Default.FiguresOf(m.Id).Select(static f => new PublishedFigureJson(
            f.Property, f.Unit, f.Min, f.Typical, f.Max, SourceIndex.Default.Cite(f.SourceId), f.Provenance, f.Note, f.Chosen))]);

    private static Dictionary<string, double> Forms(NitrogenForms n)
    {
        var forms = new Dictionary<string, double>();
        foreach (var (name, share) in new[]
        {
            ("ammonium", n.Ammonium), ("nitrate", n.Nitrate), ("urea", n.Urea), ("organic", n.Organic), ("slowSynthetic", n.SlowSynthetic),
        })
        {
            if (share > 0)
            {
                forms.Add(name, Tidy(share * 100));
            }
        }

        return forms;
    }

    private static FigureJson? Figure(Figure? figure) => figure is null
        ? null
        : new(Tidy(figure.Value), SourceIndex.Default.Cite(figure.SourceId), figure.Provenance, figure.Note);

    // Twelve significant digits: what a factor of a hundred adds in the last bit is no content.
    private static double Tidy(double value) =>
        value == 0 || !double.IsFinite(value) ? value : Math.Round(value, Math.Clamp(11 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 15));
}
