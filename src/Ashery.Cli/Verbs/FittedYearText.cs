using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Calendar;
using Ashery.Gardens;

namespace Ashery.Cli.Verbs;

/// <summary>What the fit changed and how pots fare, above the plan itself.</summary>
internal static class FittedYearText
{
    public static void Write(Terminal terminal, FittedYearJson year, Garden garden, string? file, bool full, bool again)
    {
        var page = new Page(terminal);
        var beside = again ? "plan as it was" : "rule of thumb";
        page.Heading(year.Gained
            ? $"{SafeText.Of(garden.Name)}: fitted to the root zone, {Figures.Whole(year.Fitted.Rounds)} rounds instead of {Figures.Whole(year.Beside.Rounds)}, {Figures.Short(year.Fitted.Score)} days against {Figures.Short(year.Beside.Score)}."
            : $"{SafeText.Of(garden.Name)}: nothing better than the {beside} was found; it stands.");
        page.Text($"The mean pot in {Figures.Whole(year.Draws)} made years the plan was not fitted to, from {Figures.Date(year.Since)} on. Days and odds are the model's.");
        page.Blank();
        Measures(terminal, year, beside);
        page.Bullets("What became of each round", [.. year.Changes.Where(static c => c.Words != "As it was.").Select(Change)]);
        Pots(terminal, page, year, garden);
        page.Bullets("A flush would help", [.. year.Pots.Where(static p => p.Flush is not null).Select(static p => p.Flush!.Words)]);
        MixText.Problems(page, "About the fit", [.. year.Problems.Where(p => !year.Plan.Problems.Contains(p))]);
        if (full)
        {
            page.Bullets("Taken for each pot where the garden does not tell", [.. year.Pots.Select(p => $"{Name(garden, p.Pot)}: {string.Join(' ', p.Assumed)}")]);
        }

        page.Blank();
        YearText.Write(terminal, year.Plan, garden, file, full);
    }

    private static void Measures(Terminal terminal, FittedYearJson year, string beside)
    {
        var table = new Table("the mean pot", ">fitted", ">" + beside);
        table.Add("days of growth lost", Figures.Fixed(year.Fitted.LostDays, 0), Figures.Fixed(year.Beside.LostDays, 0));
        table.Add("days short of nitrogen", Figures.Fixed(year.Fitted.HungryDays, 0), Figures.Fixed(year.Beside.HungryDays, 0));
        table.Add("days with too strong nitrogen", Figures.Fixed(year.Fitted.StrongDays, 1), Figures.Fixed(year.Beside.StrongDays, 1));
        table.Add("days over the EC limit", Figures.Fixed(year.Fitted.SaltDays, 1), Figures.Fixed(year.Beside.SaltDays, 1));
        table.Add("g N a litre given", Figures.Fixed(year.Fitted.GivenNitrogen, 2), Figures.Fixed(year.Beside.GivenNitrogen, 2));
        table.Add("g N a litre washed out", Figures.Fixed(year.Fitted.LeachedNitrogen, 2), Figures.Fixed(year.Beside.LeachedNitrogen, 2));
        table.Add("rounds", Figures.Whole(year.Fitted.Rounds), Figures.Whole(year.Beside.Rounds));
        table.Add("all in days", Figures.Fixed(year.Fitted.Score, 0), Figures.Fixed(year.Beside.Score, 0));
        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Pots(Terminal terminal, Page page, FittedYearJson year, Garden garden)
    {
        page.Title("Pots: days short of nitrogen, and the largest chance on any day to pass the EC limit");
        var table = new Table("pot", ">short", ">before", ">EC limit", ">chance", ">before");
        foreach (var p in year.Pots)
        {
            table.Add(
                Name(garden, p.Pot),
                Figures.Fixed(p.Fitted.HungryDays, 0),
                Figures.Fixed(p.Beside.HungryDays, 0),
                Figures.Short(p.MostEc),
                Figures.Percent(p.WorstOdds, 0),
                Figures.Percent(p.WorstOddsBeside, 0));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static string Change(RoundChangeJson c) =>
        $"{Figures.Date((c.Fitted ?? c.Before)!.Value)} {YearText.Kind(c.Kind)}: {c.Words}";

    private static string Name(Garden garden, string id) => SafeText.Of(garden.Pots.FirstOrDefault(p => p.Id == id)?.Name ?? id);
}
