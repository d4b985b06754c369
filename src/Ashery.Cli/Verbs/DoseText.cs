using System.Globalization;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Verbs;

/// <summary>A round of the garden as text.</summary>
internal static class DoseText
{
    public static void Write(Terminal terminal, DoseJson round)
    {
        var page = new Page(terminal);
        page.Heading(Answer(round));
        MixText.Problems(page, "Mind", round.Problems);
        if (round.Pots.Count == 0)
        {
            return;
        }

        page.Title("In walking order, for one pot of each line");
        var table = new Table(">#", "pot", ">L", "feed", ">g", "how", "today");
        foreach (var p in round.Pots)
        {
            table.Add(
                Figures.Whole(p.Number),
                SafeText.Of(p.Name) + (p.Count > 1 ? $" (x {Figures.Whole(p.Count)})" : string.Empty),
                Figures.Short(p.Volume),
                SafeText.Of(p.Feed),
                Grams(p.Grams),
                How(p),
                p.Today ? "yes" : "NO");
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        page.Bullets("How to give it", round.How);
        Supply(terminal, page, round);
        Gates(page, round);
        page.Title("Why so much");
        foreach (var group in round.Pots.GroupBy(static p => string.Join(' ', p.Reasons)))
        {
            page.Bullet($"{string.Join(", ", group.Select(static p => p.Name))}: {group.Key}");
        }

        foreach (var p in round.Pots.Where(static p => p.Notes.Count > 0))
        {
            MixText.Problems(page, $"Notes on {SafeText.Of(p.Name)}", p.Notes);
        }

        FirstAid(terminal, page, round);
    }

    /// <summary>Grams as a kitchen scale or a trace scale shows them.</summary>
    public static string Grams(double grams) => grams.ToString(grams >= 10 ? "0.#" : grams >= 0.1 ? "0.##" : "0.####", CultureInfo.InvariantCulture);

    /// <summary>How one pot gets its feed, in a few words.</summary>
    public static string Words(MethodJson method)
    {
        var how = method.By switch
        {
            "can" when method.Can is { } can => $"can: {Figures.Short(can.GramsPer10Litres)} g in 10 L, {Figures.Short(can.LitresPerPot)} L a pot" + (can.Waterings > 1 ? $", {Figures.Whole(can.Waterings)} waterings" : string.Empty),
            "spray" when method.Spray is { } spray => $"spray: {Figures.Short(spray.GramsPerLitre)} g in 1 L, {Figures.Short(spray.MillilitresPerPot)} mL a pot",
            _ => "dry",
        };
        if (method.Scoops is { } scoops)
        {
            how += $", {Figures.Short(scoops)} scoops";
        }

        return method.Predilution is { } p
            ? $"{how}; dissolve {Figures.Short(p.Grams)} g in {Figures.Short(p.WaterMillilitres)} mL, {Figures.Short(p.MillilitresPerPot)} mL of it a pot"
            : how;
    }

    private static string How(PotDoseJson p) => p.Grams > 0 ? Words(p.Method) : "nothing";

    private static string Answer(DoseJson round)
    {
        var held = round.Pots.Count(static p => !p.Today);
        var fed = round.Pots.Count(static p => p.Grams > 0);
        var held1 = held == 0 ? "nothing says not today" : held == round.Pots.Count ? "NOT TODAY for any of them" : $"NOT TODAY for {Figures.Whole(held)} of them";
        return $"{Figures.Date(round.On)}: a dose for {Figures.Whole(fed)} of {Figures.Whole(round.Pots.Count)} pots or groups; {held1}.";
    }

    private static void Supply(Terminal terminal, Page page, DoseJson round)
    {
        page.Title("Nitrogen a litre of medium, were this feed given every time");
        var table = new Table("pot", ">g a month", ">g a season", "against the published rates");
        foreach (var p in round.Pots)
        {
            table.Add(SafeText.Of(p.Name), Figures.Fixed(p.NitrogenPerLitreMonth, 3), Figures.Fixed(p.NitrogenPerLitreSeason, 2), p.RateBand);
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Gates(Page page, DoseJson round)
    {
        page.Bullets("Not today", [.. Group(round, static p => p.Holds)]);
        page.Bullets("Rather not", [.. Group(round, static p => p.Warnings)]);
    }

    private static IEnumerable<string> Group(DoseJson round, Func<PotDoseJson, IReadOnlyList<GateJson>> gates) => round.Pots
        .SelectMany(p => gates(p).Select(g => (p.Name, g.Words, g.Until)))
        .GroupBy(static g => (g.Words, g.Until))
        .Select(static g => $"{string.Join(", ", g.Select(static p => p.Name))}: {g.Key.Words}{(g.Key.Until is { } day ? $" Try again on {Figures.Date(day)}." : string.Empty)}");

    private static void FirstAid(Terminal terminal, Page page, DoseJson round)
    {
        page.Title("First aid when a pot got too much");
        var table = new Table("pot", ">L of water each time", ">times", ">hours between");
        foreach (var p in round.Pots)
        {
            table.Add(SafeText.Of(p.Name), Figures.Fixed(p.FirstAid.LitresAPass, 1), Figures.Whole(p.FirstAid.Passes), Figures.Short(p.FirstAid.HoursBetween));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);

        // The second step names each pot's own litres, which the table has.
        foreach (var step in round.Pots[0].FirstAid.Steps)
        {
            page.Bullet(step.StartsWith("Pour ", StringComparison.Ordinal) ? "Pour the water of the table slowly over the whole surface and let it drain away; not into a saucer." : step);
        }
    }
}
