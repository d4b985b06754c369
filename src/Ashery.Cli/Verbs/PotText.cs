using System.Globalization;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Problems;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;

namespace Ashery.Cli.Verbs;

/// <summary>A pot's likely year as a grower reads it.</summary>
internal static class PotText
{
    private const int ChartWidth = 61, ChartHeight = 8, LabelWidth = 6;

    // Shares of variance and of worth that are worth a line.
    private const double Notable = 0.03;

    public static void Write(Terminal terminal, PotOutlook outlook)
    {
        var page = new Page(terminal);
        var f = outlook.Forecast;
        page.Heading($"{SafeText.Of(f.Request.Scenario.Name)}: salt passes {Figures.Short(f.EcLimit)} mS/cm on some day in {Figures.Fixed(f.OverLimitEver * 100, 0)} of 100 likely years.");
        page.Blank();
        page.Fact("pot", $"{Figures.Short(f.Request.Scenario.Shape.Litres)} L of {f.Request.Scenario.Medium.Name}, water: {SafeText.Of(f.Request.Scenario.Water.Name)}");
        page.Fact("days", $"{Figures.Whole(f.Draws.Days)} from {Figures.Date(f.Request.From)}");
        page.Fact("draws", $"{Figures.Whole(f.Draws.Draws)}, seed {Figures.Whole(f.Request.Seed)}, {Figures.Whole(f.Space.Count)} unknowns and the weather");
        page.Fact("days above", $"{Figures.Fixed(f.DaysOverLimit, 0)} in the mean of draws; the odds are the model's");
        Chart(terminal, page, f);
        Months(terminal, page, outlook);
        Readings(terminal, page, outlook);
        Matters(page, outlook);
        Measure(page, outlook);
        Balance(page, outlook.Budget);
        foreach (var (severity, title) in new[] { (Severity.Warning, "Mind"), (Severity.Note, "Assumed") })
        {
            page.Bullets(title, [.. f.Notes.Where(n => n.Severity == severity).Select(static n => $"{n.Field}: {n.Message} {n.WayOut}").Distinct()]);
        }
    }

    private static void Months(Terminal terminal, Page page, PotOutlook outlook)
    {
        page.Title("Month by month (5, 50 and 95 of 100 draws lie below)");
        var table = new Table("month", ">EC 5", ">50", ">95", ">N mg/L 5", ">50", ">95", ">pH 5", ">95", ">leached g", ">days over");
        foreach (var m in outlook.Months)
        {
            table.Add(
                m.First.ToString("MMM yyyy", CultureInfo.InvariantCulture), Figures.Fixed(m.ExtractEc.P5, 1), Figures.Fixed(m.ExtractEc.P50, 1), Figures.Fixed(m.ExtractEc.P95, 1),
                Figures.Fixed(m.MineralN.P5, 0), Figures.Fixed(m.MineralN.P50, 0), Figures.Fixed(m.MineralN.P95, 0), Figures.Fixed(m.PH.P5, 1), Figures.Fixed(m.PH.P95, 1),
                Figures.Fixed(m.LeachedN.P50, 2), Figures.Fixed(m.DaysOver, 1));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        page.Text("EC of the saturated extract, mS/cm; N ammonium and nitrate in the pore water; leached g N, middle draw.", indent: 2);
    }

    // The band as dots, the middle as stars, the limit as a line of dashes, feeds under it.
    private static void Chart(Terminal terminal, Page page, PotForecastReport f)
    {
        page.Title("EC of the saturated extract, mS/cm (* middle, : 90 of 100 draws, - limit)");
        var days = f[PotFigure.ExtractEc].Days;
        var width = Math.Min(ChartWidth, days.Count);
        var top = Math.Max(f.EcLimit * 1.2, days.Max(static d => d.P95));
        var rows = new char[ChartHeight][];
        for (var r = 0; r < ChartHeight; r++)
        {
            rows[r] = new char[width];
            Array.Fill(rows[r], Row(f.EcLimit) == r ? '-' : ' ');
        }

        for (var c = 0; c < width; c++)
        {
            var band = days[(int)((c + 0.5) * days.Count / width)];
            for (var r = Row(band.P95); r <= Row(band.P5); r++)
            {
                rows[r][c] = rows[r][c] == '-' ? '+' : ':';
            }

            rows[Row(band.P50)][c] = '*';
        }

        for (var r = 0; r < ChartHeight; r++)
        {
            var label = r == 0 ? Figures.Fixed(top, 1) : r == ChartHeight - 1 ? "0" : Row(f.EcLimit) == r ? Figures.Fixed(f.EcLimit, 1) : string.Empty;
            terminal.Output.WriteLine(($"  {label.PadLeft(LabelWidth - 1)} " + new string(rows[r])).TrimEnd());
        }

        var marks = new char[width];
        Array.Fill(marks, '.');
        foreach (var e in f.Request.Scenario.Events)
        {
            var day = e.Date.DayNumber - f.Request.From.DayNumber;
            if (day >= 0 && day < days.Count)
            {
                marks[Math.Min(width - 1, day * width / days.Count)] = e is Ashery.RootZone.FlushEvent ? 'W' : e is Ashery.RootZone.PruneEvent ? 'P' : e is Ashery.RootZone.RepotEvent ? 'R' : 'F';
            }
        }

        terminal.Output.WriteLine($"  {"done".PadLeft(LabelWidth - 1)} " + new string(marks));
        page.Text($"{Figures.Date(f.Request.From)} to {Figures.Date(f.DateOf(days.Count - 1))}; F feed, W flush, P pruned, R repotted.", indent: LabelWidth + 2);

        int Row(double value) => Math.Clamp((int)((1 - (value / top)) * ChartHeight), 0, ChartHeight - 1);
    }

    private static void Readings(Terminal terminal, Page page, PotOutlook outlook)
    {
        if (outlook.Calibration is not { } c)
        {
            return;
        }

        page.Title("Your readings");
        var table = new Table("date", "what", ">read", ">said before", ">band after");
        foreach (var fit in c.Taken)
        {
            table.Add(
                Figures.Date(fit.Reading.Date), Kind(fit.Reading.Kind), Figures.Fixed(fit.Reading.Value, 2), Figures.Fixed(fit.Before.P50, 2), $"{Figures.Fixed(fit.After.P5, 2)} to {Figures.Fixed(fit.After.P95, 2)}");
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        foreach (var kind in Enum.GetValues<ReadingKind>())
        {
            if (outlook.Trial is { } trial && CalibrationReport.Error(trial.Held, kind) is var (before, after) && !double.IsNaN(before))
            {
                page.Text($"The last of them foretold from the rest, {Kind(kind)}: error {Figures.Fixed(before, 2)} before, {Figures.Fixed(after, 2)} after.", indent: 2);
            }
        }

        page.Bullets("What they say of this pot", [.. c.Shifts.Take(4).Where(static s => Math.Abs(s.Moved) >= 0.3).Select(static s =>
            $"{s.Figure.Name}: {(s.Moved > 0 ? "more" : "less")} than thought ({Change(s.Before.P50, s.After.P50)})")]);
    }

    // A rate of a millionth says nothing to a grower; its change does.
    private static string Change(double before, double after) => Math.Abs(before) is > 0 and < 0.01
        ? $"by {Figures.Percent(Math.Abs((after / before) - 1), 0)}"
        : $"{Figures.Short(before)} to {Figures.Short(after)}";

    private static void Matters(Page page, PotOutlook outlook) =>
        page.Bullets("What matters most (share of the variance, alone and with all it has a part in)", [.. outlook.Shares.Where(static t => t.Target != PotTarget.PH).Select(static t =>
            $"{Target(t.Target)}: " + string.Join(", ", t.Groups.Where(static g => g.Share.Total >= Notable).Take(4).Select(static g =>
                $"{g.Name} {Figures.Percent(Math.Clamp(g.Share.First, 0, 1), 0)} to {Figures.Percent(Math.Clamp(Math.Max(g.Share.First, g.Share.Total), 0, 1), 0)}")))]);

    private static void Measure(Page page, PotOutlook outlook)
    {
        var items = new List<string>();
        foreach (var (name, worth) in new[] { ("EC", outlook.ForEc), ("nitrogen", outlook.ForNitrogen) })
        {
            items.AddRange(worth.Take(3).Where(static w => w.Known >= Notable).Select(w =>
                $"for {name}: {w.Name} would narrow what follows from ±{Figures.Short(w.Before)} to ±{Figures.Short(w.After)} ({Figures.Percent(w.Known, 0)} of the variance)"));
        }

        page.Bullets($"What to measure by {Figures.Date(outlook.MeasureOn)}", items);
    }

    private static void Balance(Page page, PotBudget b)
    {
        page.Title("Balance of the most likely run");
        page.Fact("water in, L", $"{Figures.Fixed(b.Rain, 1)} rain, {Figures.Fixed(b.Irrigation, 1)} given");
        page.Fact("water out, L", $"{Figures.Fixed(b.Transpired, 1)} plant, {Figures.Fixed(b.Evaporated, 1)} surface, {Figures.Fixed(b.Drained, 1)} below");
        page.Fact("nitrogen in, g", $"{Figures.Fixed(b.StartN, 2)} at first, {Figures.Fixed(b.FedN, 2)} fed, {Figures.Fixed(b.WaterN, 2)} with the water");
        page.Fact("nitrogen out, g", $"{Figures.Fixed(b.UptakeN, 2)} plant, {Figures.Fixed(b.LeachedN, 2)} leached, {Figures.Fixed(b.AirN, 2)} to the air, {Figures.Fixed(b.RemovedN, 2)} thrown out; {Figures.Fixed(b.LeftN, 2)} left");
        page.Fact("closes to", b.Residual < 1e-9 ? "better than a billionth" : Figures.Short(b.Residual));
    }

    private static string Target(PotTarget target) => target switch
    {
        PotTarget.ExtractEc => "mean EC",
        PotTarget.MineralN => "mean nitrogen in the pore water",
        PotTarget.PH => "mean pH",
        _ => "nitrogen leached",
    };

    private static string Kind(ReadingKind kind) => kind switch
    {
        ReadingKind.LeachateEc => "EC run out",
        ReadingKind.LeachatePh => "pH run out",
        _ => "kg below full",
    };
}
