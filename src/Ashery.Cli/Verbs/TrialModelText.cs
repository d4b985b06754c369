using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Trials.Results;

namespace Ashery.Cli.Verbs;

/// <summary>How a trial was judged: the model, the test of all feeds, factors, repeated measurements.</summary>
internal static class TrialModelText
{
    public static void Write(Terminal terminal, Page page, TrialReport report)
    {
        var model = report.Model;
        if (model.Kind == "none")
        {
            return;
        }

        page.Title("How it was judged");
        page.Fact("model", Model(model) + (model.Blocks ? ", with blocks" : ", without blocks"));
        page.Fact("comparisons", Family(model.Family));
        if (report.Overall is { } all)
        {
            page.Fact("any difference", $"F {TrialAnswer.Figure(all.F)} on {Figures.Whole(all.Df)} and {Figures.Whole(all.ResidualDf)}, p {TrialText.P(all.P)}; by lots drawn again within blocks p {TrialText.P(all.PermutationP)} ({Figures.Whole(all.Arrangements)} arrangements, {(all.Exact ? "all there are" : "drawn")})");
        }

        page.Fact("a pot varies by", model.ResidualDeviation is { } sd ? TrialAnswer.Figure(sd) + (report.Trial.Measure.Unit.Length > 0 ? " " + SafeText.Of(report.Trial.Measure.Unit) : string.Empty) : null);
        page.Fact("scatter of counts", model.PoissonDispersion is { } d ? $"{TrialAnswer.Figure(d)} times that of counting alone{(model.Theta is { } theta ? $"; theta {TrialAnswer.Figure(theta)}" : string.Empty)}{(model.Scale is > 1 and { } scale ? $"; squared errors times {TrialAnswer.Figure(scale)}" : string.Empty)}" : null);
        page.Fact("look", report.Trial.Looks > 1 ? $"{Figures.Whole(report.Look)} of {Figures.Whole(report.Trial.Looks)}, p below {TrialText.Level(report.Limit.Level)}" : null);
        if (report.Factors.Count > 0)
        {
            page.Title("What each part does, all else alike");
            var factors = new Table("part", "level", "against", ">estimate", ">from", ">to", ">p");
            foreach (var f in report.Factors)
            {
                factors.Add(SafeText.Of(f.Factor), SafeText.Of(f.Level), SafeText.Of(f.Against), TrialAnswer.Figure(f.Estimate), TrialAnswer.Figure(f.Low), TrialAnswer.Figure(f.High), TrialText.P(f.P));
            }

            factors.Write(terminal.Output, terminal.Width);
        }

        if (model.Anova.Count > 0)
        {
            page.Title("Analysis of variance, each after the ones above");
            var anova = new Table("term", ">df", ">sum of squares", ">F", ">p");
            foreach (var row in model.Anova)
            {
                anova.Add(SafeText.Of(row.Term), Figures.Whole(row.Df), TrialAnswer.Figure(row.SumOfSquares), TrialText.Figure(row.F), TrialText.P(row.P));
            }

            anova.Write(terminal.Output, terminal.Width);
        }

        if (report.Repeated is { } repeated)
        {
            page.Title("All readings, each pot with a level of its own");
            page.Fact("between pots", TrialAnswer.Figure(repeated.PotDeviation));
            page.Fact("from day to day", TrialAnswer.Figure(repeated.ResidualDeviation));
            foreach (var c in repeated.Comparisons)
            {
                page.Text($"{TrialText.Name(report.Trial, c.Feed)} against {TrialText.Name(report.Trial, c.Against)}: {TrialText.Figure(c.Estimate)} ({TrialText.Figure(c.Low)} to {TrialText.Figure(c.High)}), p {TrialText.P(c.P)}", 2);
            }
        }
    }

    private static string Model(FittedModel model) => model.Kind switch
    {
        "linear" => "linear",
        "negativeBinomial" => "negative binomial, since pots vary more than counting alone",
        _ => "Poisson: no spread of pots beyond that of counting was found",
    };

    private static string? Family(string family) => family switch
    {
        "tukey" => "all pairs together (Tukey)",
        "dunnett" => "all against the control together (Dunnett)",
        "holm" => "p stepped down (Holm), intervals shared out (Bonferroni)",
        _ => null,
    };
}
