using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>The answer to a wish as text: the answer in a line, the best blend in full, the others in tables.</summary>
internal static class MixText
{
    public static void Write(Terminal terminal, MixJson answer, bool full = false)
    {
        var page = new Page(terminal);
        page.Heading(Answer(answer));
        if (answer.OutOfReach is { } reach)
        {
            OutOfReach(terminal, page, answer, reach);
        }

        var shown = answer.OutOfReach?.Nearest is { } nearest && answer.Blends.Count > 0 && BlendText.Same(nearest, answer.Blends[0]);
        if (answer.Blends.Count > 0 && !shown)
        {
            BlendText.Write(terminal, page, answer.Blends.Count == 1 ? "The blend" : $"Blend 1 of {Figures.Whole(answer.Blends.Count)}", answer.Blends[0], answer);
        }

        Instead(terminal, page, answer);
        Others(terminal, page, answer);
        if (full)
        {
            InFull(terminal, page, "Blend", answer.Blends.Skip(1), answer, from: 2);
            InFull(terminal, page, "Trade", answer.Trade, answer, from: 1);
            InFull(terminal, page, "Instead", answer.Instead.Values, answer, from: 1);
        }

        Trade(terminal, page, answer);
        Exact(terminal, page, answer);
        page.Bullets("Left out", [.. answer.LeftOut.Select(static l => $"{l.Material}: {l.Reason}")]);
        Problems(page, "Notes", answer.Problems);
    }

    private static string Answer(MixJson answer)
    {
        var wish = SafeText.Of(answer.Wish.Name);
        if (answer.OutOfReach is not null)
        {
            return $"{wish} is out of reach.";
        }

        var best = answer.Blends[0];
        var proved = answer.Proved ? "proved best" : $"not proved best (the error may still be {Figures.Percent(answer.WholeStepGap)} lower)";
        return $"{BlendText.Parts(best, answer)} for {wish}: grade {BlendText.Grade(best)}, {answer.ErrorMeasure} {Figures.Percent(best.RatioError)}, {proved}.";
    }

    private static void OutOfReach(Terminal terminal, Page page, MixJson answer, OutOfReachJson reach)
    {
        page.Title("Why");
        page.Text(reach.Why, indent: 2);
        if (reach.FallsShort is { } nutrient)
        {
            page.Text($"Falls short most: {nutrient}.", indent: 2);
        }

        if (reach.ToBuy is { } buy)
        {
            var strength = buy.Strength is { } s ? $", strength at the ratio {Figures.Fixed(s, 2)} %" : string.Empty;
            page.Text($"What to buy: {buy.Material} ({SafeText.Of(buy.Name)}) leaves an error of {Figures.Percent(buy.RemainingError)}{strength}.", indent: 2);
        }

        if (reach.Nearest is { } nearest)
        {
            BlendText.Write(terminal, page, "Nearest blend", nearest, answer);
        }
    }

    private static void Instead(Terminal terminal, Page page, MixJson answer)
    {
        if (answer.Instead.Count == 0)
        {
            return;
        }

        page.Title("Instead, avoiding a warning of the first blend");
        var table = new Table("avoids", ">error", "grade", "blend");
        foreach (var (field, blend) in answer.Instead)
        {
            table.Add(field, Figures.Percent(blend.RatioError), BlendText.Grade(blend), BlendText.Parts(blend, answer));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Others(Terminal terminal, Page page, MixJson answer)
    {
        if (answer.Blends.Count < 2)
        {
            return;
        }

        page.Title($"All blends, best first (error: {answer.ErrorMeasure})");
        BlendText.List(answer.Blends, answer).Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void InFull(Terminal terminal, Page page, string title, IEnumerable<BlendJson> blends, MixJson answer, int from)
    {
        foreach (var blend in blends)
        {
            BlendText.Write(terminal, page, $"{title} {Figures.Whole(from++)}", blend, answer);
        }
    }

    private static void Trade(Terminal terminal, Page page, MixJson answer)
    {
        if (answer.Trade.Count < 2)
        {
            return;
        }

        page.Title("What other blends trade: error against cost, number of materials and strength");
        BlendText.List(answer.Trade, answer).Write(terminal.Output, terminal.Width, indent: 2);
    }

    private static void Exact(Terminal terminal, Page page, MixJson answer)
    {
        if (answer.AtExactRatio is not { } exact)
        {
            return;
        }

        if (answer.Blends.Count > 0 && BlendText.Same(exact, answer.Blends[0]))
        {
            page.Title("The blend is also the strongest at exactly this ratio.");
        }
        else if (answer.OutOfReach?.Nearest is { } nearest && BlendText.Same(exact, nearest))
        {
            page.Title("The nearest blend is the strongest at exactly this ratio.");
        }
        else
        {
            BlendText.WriteShort(terminal, page, "Strongest at exactly this ratio", exact);
        }
    }

    internal static void Problems(Page page, string title, IReadOnlyList<ProblemJson> problems) =>
        page.Bullets(title, [.. problems.Select(static p => $"{(p.Severity == Severity.Warning ? "Warning, " : string.Empty)}{p.Field}: {p.Message} {p.WayOut}")]);
}
