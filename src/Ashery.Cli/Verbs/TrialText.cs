using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Trials;
using Ashery.Trials.Designs;
using Ashery.Trials.Results;

namespace Ashery.Cli.Verbs;

/// <summary>A trial's plan and what it showed, as a grower reads them.</summary>
internal static class TrialText
{
    public static void Write(Terminal terminal, TrialPlan plan, IReadOnlyList<string> written)
    {
        var page = new Page(terminal);
        var (trial, wish) = (plan.Trial, plan.Trial.Wish);
        page.Heading(plan.PotsNeeded is { } n
            ? $"{Figures.Whole(n)} pots a feed, {Figures.Whole(n * trial.Treatments.Count)} in all, to see {Wished(trial)} in {Figures.Fixed(plan.PowerThen!.Value * 100, 0)} of 100 such trials."
            : $"More than {Figures.Whole(TrialDesign.MostPotsAFeed)} pots a feed would be needed to see {Wished(trial)}.");
        page.Fact("feeds", string.Join(", ", trial.Treatments.Select(static t => SafeText.Of(t.Name) + (t.IsControl ? " (control)" : string.Empty))));
        page.Fact("pots fed alike differ", Figures.Percent(wish.Spread, 0) + (trial.Measure.Kind == MeasureKind.Count ? $", on top of the scatter of counting about {Figures.Short(wish.Mean)} a pot" : " of their mean"));
        page.Fact("reckoned", plan.Simulated > 0 ? $"by {Figures.Whole(plan.Simulated)} simulated trials for each number of pots, each analysed as the real one" : "by the noncentral t");
        if (plan.PowerHere is { } here)
        {
            page.Fact("with the pots named", $"{Figures.Whole(plan.PotsLaidOut)} a feed: seen in {Figures.Fixed(here * 100, 0)} of 100{(plan.SmallestSeen is { } least ? $"; a gain of {Figures.Percent(least, 0)} would be seen in {Figures.Fixed(wish.Power * 100, 0)}" : string.Empty)}");
        }

        page.Title("Chance to see it");
        var curve = new Table(">pots a feed", ">seen in 100");
        foreach (var at in plan.Curve)
        {
            curve.Add(Figures.Whole(at.PotsAFeed), Figures.Fixed(at.Power * 100, 1));
        }

        curve.Write(terminal.Output, terminal.Width);
        if (trial.Layout.Count > 0)
        {
            page.Title($"Which pot gets what (seed {Figures.Whole(trial.Seed)})");
            var table = new Table(">block", "pot", "plant", trial.Blind ? "code" : "feed");
            foreach (var place in trial.Layout)
            {
                var feed = trial.Find(place.Treatment)!;
                table.Add(Figures.Whole(place.Block), SafeText.Of(place.Pot), SafeText.Of(Of(trial.Pots.FirstOrDefault(p => p.Id == place.Pot))), SafeText.Of(trial.Blind ? feed.Code! : feed.Name));
            }

            table.Write(terminal.Output, terminal.Width);
        }

        Looks(terminal, page, plan);
        page.Bullets("Mind", [.. plan.Warnings.Select(static w => w.Words)]);
        Written(page, written);
    }

    public static void Write(Terminal terminal, TrialReport report, IReadOnlyList<string> written)
    {
        var page = new Page(terminal);
        foreach (var sentence in TrialAnswer.Of(report))
        {
            page.Heading(SafeText.Of(sentence));
        }

        page.Bullets("Mind", [.. report.Warnings.Where(static w => !w.Stops).Select(static w => w.Words)]);
        if (report.Comparisons.Count > 0)
        {
            page.Title(report.IsRatio ? "Times as many" : $"More or less{(report.Trial.Measure.Unit.Length > 0 ? ", " + SafeText.Of(report.Trial.Measure.Unit) : string.Empty)}");
            var table = new Table("feed", "against", ">estimate", ">from", ">to", ">p", ">by lot");
            foreach (var c in report.Comparisons)
            {
                table.Add(Name(report.Trial, c.Feed), Name(report.Trial, c.Against), Figure(c.Estimate), Figure(c.Low), Figure(c.High), P(c.P), P(c.PermutationP));
            }

            table.Write(terminal.Output, terminal.Width);
        }

        page.Title("Pots as they are");
        var groups = new Table("feed", ">pots", ">mean", ">deviation", ">least", ">most");
        foreach (var g in report.Groups)
        {
            groups.Add(SafeText.Of(g.Name), Figures.Whole(g.Pots), Figure(g.Mean), Figure(g.Deviation), Figure(g.Least), Figure(g.Most));
        }

        groups.Write(terminal.Output, terminal.Width);
        TrialModelText.Write(terminal, page, report);
        Written(page, written);
    }

    internal static string Name(Trial trial, string id) => SafeText.Of(trial.Find(id)?.Name ?? id);

    internal static string Figure(double? value) => value is { } v ? TrialAnswer.Figure(v) : Figures.Unknown;

    internal static string P(double? p) => p is { } v ? v < 0.001 ? "<0.001" : TrialAnswer.P(v) : Figures.Unknown;

    internal static string Level(double level) => level < 1e-5 ? "0.00001" : level.ToString("0.#####", System.Globalization.CultureInfo.InvariantCulture);

    private static void Looks(Terminal terminal, Page page, TrialPlan plan)
    {
        if (plan.Looks.Count < 2)
        {
            return;
        }

        page.Title("Looks");
        var looks = new Table(">look", ">of the trial", ">p below");
        for (var i = 0; i < plan.Looks.Count; i++)
        {
            looks.Add(Figures.Whole(i + 1), Figures.Percent(plan.Looks[i].Fraction, 0), Level(plan.Looks[i].Level));
        }

        looks.Write(terminal.Output, terminal.Width);
    }

    private static void Written(Page page, IReadOnlyList<string> written)
    {
        if (written.Count > 0)
        {
            page.Blank();
            page.Text("Written: " + string.Join(", ", written.Select(SafeText.Of)) + ".");
        }
    }

    private static string Wished(Trial trial) => $"{Figures.Percent(Math.Abs(trial.Wish.Difference), 0)} {(trial.Wish.Difference < 0 ? "less" : "more")} {SafeText.Of(trial.Measure.Name)}";

    private static string Of(TrialPot? pot) => pot is null ? string.Empty : string.Join(", ", new[] { pot.Name, pot.Litres is { } l ? Figures.Short(l) + " L" : string.Empty, pot.Place ?? string.Empty }.Where(static w => w.Length > 0));
}
