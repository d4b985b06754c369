using Ashery.Cautions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Problems;
using Ashery.Solutions.Tanks;

namespace Ashery.Cli.Verbs;

/// <summary>Stock tanks as a grower reads them.</summary>
internal static class TanksText
{
    public static void Write(Terminal terminal, TankReport report)
    {
        var page = new Page(terminal);
        page.Heading(Answer(report));
        if (report.Notes.Count > 0)
        {
            page.Blank();
        }

        foreach (var note in report.Notes)
        {
            page.Bullet($"{(note.Severity == Severity.Warning ? "Warning" : "Note")}: {note.Message} {note.WayOut}");
        }

        foreach (var tank in report.Tanks)
        {
            Tank(terminal, page, tank);
        }

        page.Blank();
        page.Fact("at most", report.MostRatio > 0 ? $"1:{Ratio(report.AdvisedRatio)} advised, 1:{Ratio(report.MostRatio)} by the model" : "at no strength");
        page.Fact("limited by", report.Limiting is { } first ? $"{first.Name} at {Figures.Short(first.Celsius)} °C" : "nothing");
        page.Fact("all in one tank", report.MostRatioInOne > 0 ? $"up to 1:{Ratio(report.MostRatioInOne)} by the model" : "never clear");
        page.Fact("how sure", $"{(report.Certificate.Splits > 1 ? $"{Figures.Short(report.Certificate.Splits)} splits of whole materials, {Figures.Whole(report.Certificate.Judged)} judged as full tanks, the others cut by a pair that limits them more" : "the only split there is")}{(report.Certificate.Divided ? "; then a material was shared over two tanks, by quarters" : string.Empty)}");
        page.Bullets("Mind", [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)]);
    }

    private static string Answer(TankReport report)
    {
        var tanks = report.Tanks.Count == 1 ? "One tank" : $"{Figures.Whole(report.Tanks.Count)} tanks";
        var where = $"1:{Figures.Short(report.Request.Ratio)} in {SafeText.Of(report.Request.WaterName)}, down to {Figures.Short(report.Request.Coldest)} °C";
        return report.IsClear ? $"{tanks}, clear at {where}."
            : report.IsNear ? $"{tanks}, clear at {where} only by the model, inside the safety margin."
            : $"{tanks}, not clear at {where}.";
    }

    private static void Tank(Terminal terminal, Page page, Tank tank)
    {
        page.Title($"Tank {tank.Name}: clear up to 1:{Ratio(tank.MostRatio)}");
        var table = new Table("dissolve in this order", ">g a litre", ">dissolves alone", "share");
        foreach (var part in tank.Parts)
        {
            table.Add(
                part.Material.Name, Figures.Short(part.GramsPerLitre),
                part.Limit is { } limit ? double.IsInfinity(limit) ? "any" : Figures.Short(limit) : Figures.Unknown,
                part.Share < 1 ? Figures.Percent(part.Share, 0) : "all");
        }

        table.Write(terminal.Output, terminal.Width, 2);
        page.Text($"pH {Figures.Fixed(tank.Solution.PH, 1)}, {Figures.Fixed(tank.WaterPerLitre, 2)} kg of water in a litre. Nearest to coming out: {Nearest(tank)}.", 2);
    }

    private static string Nearest(Tank tank)
    {
        var near = tank.Margins.Take(3).Select(static m => $"{m.Name} (index {Figures.Fixed(m.Index, 1)} at {Figures.Short(m.Celsius)} °C)");
        return tank.Margins.Count == 0 ? "nothing" : string.Join(", ", near);
    }

    // Never rounded up: a ratio shown is one that was clear.
    private static string Ratio(double ratio) => ratio >= 10 ? Figures.Fixed(Math.Floor(ratio), 0) : Figures.Fixed(Math.Floor(ratio * 10) / 10, 1);
}
