using Ashery.Cautions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Solutions.Foliar;
using Ashery.Sources;

namespace Ashery.Cli.Verbs;

/// <summary>A leaf spray as a grower reads it.</summary>
internal static class SprayText
{
    public static void Write(Terminal terminal, SprayReport report)
    {
        var page = new Page(terminal);
        var state = report.Can.State;
        page.Heading($"{Answer(report.Worst)} EC {Figures.Fixed(state.Ec25, 2)} mS/cm, pH {Figures.Fixed(state.PH, 1)} in {SafeText.Of(report.Request.WaterName)}{(report.Request.Crop is { } crop ? $", for {crop.Name}" : string.Empty)}.");
        if (report.Weaken < 1)
        {
            page.Text($"Within the limits of its salts and its EC at {Figures.Percent(Math.Floor(report.Weaken * 100) / 100, 0)} of this strength.");
        }

        page.Title("Against what is printed");
        var table = new Table("what", "verdict", ">here", ">limit", "unit");
        foreach (var finding in report.Findings)
        {
            table.Add(finding.What, Level(finding.Level), Figures.Short(finding.Value), Figures.Short(finding.Limit), finding.Unit);
        }

        table.Write(terminal.Output, terminal.Width);
        foreach (var finding in report.Findings)
        {
            page.Bullet($"{finding.What}: {finding.Words}{(finding.SourceId is { } id ? $" ({SourceIndex.Default.Cite(id)}; {How(finding.Provenance)})" : string.Empty)}");
            foreach (var beside in finding.Beside)
            {
                page.Text($"also printed: {Figures.Short(beside.GramsPerLitre)} g/L. {beside.Words} ({SourceIndex.Default.Cite(beside.SourceId)}; {How(beside.Provenance)})", 6);
            }
        }

        if (report.Volume is { } volume)
        {
            page.Title("How much");
            page.Fact("a pot", $"{Figures.Short(volume.MillilitresPerPot)} mL, to just before it runs off ({volume.Basis})");
            page.Fact("in all", $"{Figures.Short(volume.Litres)} L for {Figures.Whole(report.Request.Pots)} {(report.Request.Pots == 1 ? "pot" : "pots")}");
        }

        page.Bullets("When", [.. report.Gates.Select(static g => $"{(g.Holds switch { true => "Not now: ", false => "Met: ", _ => string.Empty })}{g.Words}")]);
        page.Bullets("Mind", [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)]);
    }

    private static string Answer(SprayLevel level) => level switch
    {
        SprayLevel.Fine => "Within the printed limits.",
        SprayLevel.Mind => "Within the printed limits, with something to mind.",
        _ => "Too strong or unfit for leaves.",
    };

    private static string Level(SprayLevel level) => level switch { SprayLevel.Fine => "fine", SprayLevel.Mind => "mind", _ => "over" };

    private static string How(Provenance provenance) => provenance switch
    {
        Provenance.Seen => "seen",
        Provenance.Computed => "computed",
        Provenance.CommonPractice => "common practice, no source",
        _ => "from memory",
    };
}
