using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Waters;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Verbs;

/// <summary>A water report read and judged, as text.</summary>
internal static class WaterText
{
    public static void Write(Terminal terminal, WaterJson water, string? phWords)
    {
        var page = new Page(terminal);
        page.Heading(Headline(water));
        page.Fact("EC, mS/cm at 25 °C", water.EcWords ?? Range(water.ComputedEc, 3) + " from the ions");
        page.Fact("pH", water.PH is { } pH ? Figures.Fixed(pH, 1) : phWords);
        page.Fact("hardness, mg/L CaCO3", Range(water.Hardness, 0));
        page.Fact("alkalinity, same", Range(water.Alkalinity, 0));
        page.Fact("dry residue, mg/L", Figures.Fixed(water.Solids, 0));
        page.Fact("SAR", water.Sar is { } sar ? Range(sar, 1) + (water.AdjustedSar is { } adjusted ? $", adjusted {Figures.Fixed(adjusted, 1)}" : string.Empty) : null);
        page.Fact("residual alkalinity", $"{Figures.Fixed(water.ResidualAlkalinity, 1)} meq/L: alkalinity less calcium and magnesium");
        page.Fact("balance", water.Balance.Words);
        Ions(terminal, page, water);
        page.Bullets("Put in, because the report does not say", [.. water.Estimates.Select(static e =>
            $"{e.Name} {Range(e.MgPerLitre, 1)} mg/L{(e.Name == "alkalinity" ? " CaCO3" : string.Empty)}: {e.How}")]);
        Findings(terminal, page, water);
        page.Bullets("Notes", [.. water.Problems.Select(static p => $"{p.Message} {p.WayOut}")]);
    }

    private static string Headline(WaterJson water)
    {
        var worst = water.Findings.Count == 0 ? WaterLevel.Fine : water.Findings.Max(static f => f.Level);
        return $"{water.Name}: " + worst switch
        {
            WaterLevel.Fine => $"fine for {water.JudgedFor}.",
            WaterLevel.Watch => $"usable for {water.JudgedFor}, with an eye on {Names(water, worst)}.",
            _ => $"trouble for {water.JudgedFor}: {Names(water, worst)}.",
        };
    }

    private static string Names(WaterJson water, WaterLevel level) => string.Join(", ", water.Findings.Where(f => f.Level == level).Select(static f => f.Name));

    private static void Ions(Terminal terminal, Page page, WaterJson water)
    {
        page.Title("Ions");
        var table = new Table("ion", ">mg/L", ">meq/L", "how known");
        foreach (var ion in water.Ions)
        {
            table.Add(ion.Symbol == "H" ? "free acid" : ion.Name, ion.MgPerLitre is { } mg ? Figures.Short(mg) : Figures.Unknown, Figures.Fixed(ion.MeqPerLitre, 2), ion.Estimated ? "estimated" : "reported");
        }

        table.Write(terminal.Output, terminal.Width);
    }

    private static void Findings(Terminal terminal, Page page, WaterJson water)
    {
        page.Title($"For {water.JudgedFor}");
        page.Text($"Classes: {water.JudgedBy}.{(water.Findings.Any(static f => f.Estimated) ? " A ~ marks what hangs on an estimate." : string.Empty)}", indent: 2);
        page.Blank();
        var table = new Table("figure", ">value", ">watch", ">trouble", "verdict");
        foreach (var f in water.Findings)
        {
            table.Add(f.Name + (f.Unit.Length > 0 ? ", " + f.Unit : string.Empty), (f.Estimated ? "~" : string.Empty) + Figures.Short(f.Value.Typical), Limit(f.Watch), Limit(f.Trouble), Verdict(f));
        }

        table.Write(terminal.Output, terminal.Width);
        var told = water.Findings.Where(static f => f.Level != WaterLevel.Fine).ToList();
        page.Bullets("What to do", [.. told.Select(static f =>
            $"{f.Name}: {f.Effect} {f.Remedy}" + (f.RainShare is { } rain ? $" {Figures.Percent(rain, 0)} of rain brings it to the limit." : string.Empty))]);
        page.Bullets("Where the limits come from", [.. water.Findings.SelectMany(Sources).Distinct()]);
    }

    private static IEnumerable<string> Sources(WaterFindingJson f)
    {
        foreach (var limit in new[] { f.Watch, f.Trouble })
        {
            if (limit is not null)
            {
                yield return $"{limit.Source} ({MaterialSheet.How(limit.Provenance)})";
            }
        }
    }

    private static string Limit(WaterLimitJson? limit) => limit is null ? Figures.Unknown : Figures.Short(limit.Value);

    private static string Verdict(WaterFindingJson f) => Word(f.Level) + (f.Worst > f.Level ? $", may be {Word(f.Worst)}" : string.Empty);

    private static string Word(WaterLevel level) => level.ToString().ToLowerInvariant();

    private static string Range(WaterRangeJson range, int decimals) => range.Low == range.High
        ? Figures.Fixed(range.Typical, decimals)
        : $"{Figures.Fixed(range.Typical, decimals)} ({Figures.Fixed(range.Low, decimals)} to {Figures.Fixed(range.High, decimals)})";
}
