using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Compatibility;

namespace Ashery.Cli.Verbs;

/// <summary>Pairs with the three verdicts, then the reasons of all that is not plainly fine.</summary>
internal static class PairTable
{
    public static void Write(Terminal terminal, IReadOnlyList<PairVerdict> pairs)
    {
        var page = new Page(terminal);
        page.Heading(Answer(pairs));
        page.Blank();
        var table = new Table("pair", "dry today", "dry, stored", "in solution");
        foreach (var pair in pairs)
        {
            table.Add($"{pair.A} + {pair.B}", Word(pair.DryToday.Verdict), Word(pair.DryStored.Verdict), Word(pair.InSolution.Verdict));
        }

        table.Write(terminal.Output, terminal.Width);
        foreach (var pair in pairs)
        {
            page.Title($"{pair.A} + {pair.B}");
            Reasons(page, pair);
        }
    }

    /// <summary>The reasons of one pair, the same reason once.</summary>
    public static void Reasons(Page page, PairVerdict pair)
    {
        (string Question, Judgement Judgement)[] questions =
            [("dry today", pair.DryToday), ("dry, stored", pair.DryStored), ("in solution", pair.InSolution)];
        foreach (var group in questions.GroupBy(static q => (q.Judgement.Verdict, q.Judgement.Reason, q.Judgement.Limit, q.Judgement.Source)))
        {
            var limit = group.Key.Limit is { } l ? $" Limit: {l}" : string.Empty;
            page.Bullet($"{string.Join(" and ", group.Select(static q => q.Question))}: {Word(group.Key.Verdict)}. {group.Key.Reason}{limit} [{group.Key.Source}]");
        }
    }

    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Fine => "fine",
        Verdict.Limited => "limited",
        Verdict.Stop => "STOP",
        _ => "not known",
    };

    private static string Answer(IReadOnlyList<PairVerdict> pairs)
    {
        var stops = pairs.Count(static p => p.DryToday.Verdict == Verdict.Stop || p.DryStored.Verdict == Verdict.Stop || p.InSolution.Verdict == Verdict.Stop);
        var all = pairs.Count == 1 ? "the pair" : $"{Figures.Whole(pairs.Count)} pairs";
        return stops == 0
            ? $"No stop in {all}; mind the limits and what is not known."
            : $"{(pairs.Count == 1 ? "The pair has a stop" : $"{Figures.Whole(stops)} of {all} have a stop")}: read which of the three it is.";
    }
}
