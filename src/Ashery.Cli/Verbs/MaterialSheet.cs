using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Catalogue;
using Ashery.Sources;

namespace Ashery.Cli.Verbs;

/// <summary>The data sheet of a material as text.</summary>
internal static class MaterialSheet
{
    public static void Write(Terminal terminal, MaterialJson material)
    {
        var sheet = material.Sheet!;
        var page = new Page(terminal);
        page.Heading($"{SafeText.Of(material.Name)} ({material.Id})");
        page.Fact("kind", Figures.Words(material.Kind.ToString()) + (sheet.IsLiquid ? ", liquid" : string.Empty));
        page.Fact("also called", string.Join(", ", sheet.OtherNames.Select(SafeText.Of)));
        page.Fact("formula", sheet.Formula);
        page.Fact("label, % by weight", Contents(material.Label));
        page.Fact("nitrogen forms, %", Contents(sheet.Nitrogen));
        page.Fact("dissolves", sheet.Dissolves ? "clear at feed strength" : "no, or not clear");
        page.Fact("bulk density, g/mL", sheet.BulkDensity is { } b ? $"{Figures.Short(b.Typical)} ({Figures.Short(b.Min)} to {Figures.Short(b.Max)}), loose" : null);
        page.Fact("density, g/mL", sheet.LiquidDensity is { } d ? Figures.Short(d) : null);
        page.Fact("salt index", sheet.SaltIndex is { } s ? $"{Figures.Short(s.Value)} by weight, sodium nitrate = 100" : "not published");
        page.Fact("lime equivalent", sheet.LimeEquivalent is { } l ? $"{Figures.Short(l.Value)} kg CaCO3 a kg, {(l.Value > 0 ? "acidifies" : "sweetens")}" : "not published");
        page.Fact("takes up water above", sheet.CriticalHumidity is { } h ? $"{Figures.Short(h.Value)} % relative humidity at 30 °C" : null);
        page.Fact("solubility", string.Join(", ", sheet.Solubility.Select(static s => $"{Figures.Short(s.GramsPerKgWater)} at {Figures.Short(s.Celsius)} °C")) is { Length: > 0 } at ? at + " (g a kg of water)" : null);
        page.Bullets("Cautions", sheet.Cautions);
        page.Bullets("Rules", sheet.Regulations);
        page.Bullets("Notes", sheet.Notes);
        if (sheet.Figures.Count == 0)
        {
            return;
        }

        page.Title("Where the figures come from");
        var sources = new List<string>();
        var table = new Table("figure", ">value", "how", ">source", "used");
        foreach (var figure in sheet.Figures)
        {
            var number = sources.IndexOf(figure.Source) + 1;
            if (number == 0)
            {
                sources.Add(figure.Source);
                number = sources.Count;
            }

            table.Add(figure.Property, Value(figure), How(figure.Provenance), Figures.Whole(number), figure.InUse ? "yes" : "no");
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        page.Blank();
        for (var i = 0; i < sources.Count; i++)
        {
            Paragraph.Write(terminal.Output, $"  {Figures.Whole(i + 1)}. {SafeText.Of(sources[i])}", terminal.Width, hanging: 5);
        }
    }

    public static string How(Provenance provenance) => provenance switch
    {
        Provenance.Seen => "seen",
        Provenance.Computed => "computed",
        Provenance.CommonPractice => "common practice",
        _ => "from memory",
    };

    private static string Value(PublishedFigureJson f) => (f.Min, f.Typical, f.Max) switch
    {
        (null, { } t, null) => Figures.Short(t),
        ({ } min, { } t, { } max) => $"{Figures.Short(t)} ({Figures.Short(min)}-{Figures.Short(max)})",
        ({ } min, null, { } max) => $"{Figures.Short(min)}-{Figures.Short(max)}",
        _ => Figures.Short(f.Typical ?? f.Min ?? f.Max),
    };

    private static string? Contents(IReadOnlyDictionary<string, double> contents) =>
        contents.Count == 0 ? null : string.Join("  ", contents.Select(static c => $"{c.Key} {Figures.Short(c.Value)}"));
}
