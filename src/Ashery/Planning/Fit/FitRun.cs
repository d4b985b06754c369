using Ashery.Crops;
using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.Planning.Fit;

/// <summary>One fit from request to answer.</summary>
internal sealed class FitRun
{
    // Draws and horizons of the passes, days: chosen so that a garden of 18 pots is done in seconds. Effects of a dose fade within some ten weeks.
    private const int FastDraws = 4, FineDraws = 8, TrialDraws = 60;
    private const int FastHorizon = 50, FineHorizon = 70, LastHorizon = 90;

    // Numbers of the first weather of each set, so that no two share one.
    private const int FineFirst = 1000, TrialFirst = 2000, JudgeFirst = 10_000;

    private readonly FitRequest request;
    private readonly IProgress<FitProgress>? progress;
    private readonly PlanContext context;
    private readonly DrawnWeather weather;
    private readonly ParallelOptions parallel;
    private readonly List<GardenPot> pots;
    private readonly bool[][] grows;
    private readonly FitRounds rounds;
    private readonly FitDoses doses;
    private readonly FitPast past;
    private readonly FitCheck check;
    private readonly double[] mostShare;

    public FitRun(FitRequest request, DrawnWeather weather, IProgress<FitProgress>? progress, CancellationToken cancellation)
    {
        (this.request, this.weather, this.progress) = (request, weather, progress);
        context = new PlanContext(request.Garden, request.From);
        parallel = new() { MaxDegreeOfParallelism = request.Threads > 0 ? request.Threads : Environment.ProcessorCount, CancellationToken = cancellation };
        pots = [.. context.Pots.Select(p => GardenPot.Of(request.Garden, p.Pot, p.Crop, context.Rules, request.From, request.Assumptions))];
        grows = [.. context.Pots.Select(p => FitGrowing.Of(context, p.Crop))];
        rounds = new(context, pots.Count);
        var feeds = new FeedEvents(request.Garden);
        doses = new(context, feeds, pots);
        past = request.Replan is { } replan ? new(replan.Today.DayNumber - request.From.DayNumber) : FitPast.None;
        check = new(context, pots, feeds, request.Weights, grows, parallel);
        mostShare = [.. context.Pots.Select(static p => FeederRates.Default.SeasonNitrogen(p.Crop).Range.High * p.Pot.Volume.Litres)];
    }

    public FittedYear Find()
    {
        var before = Before();
        var (fitted, search) = Search(before);
        Say("Trying it", 0.7);
        var trial = Draws(TrialDraws, TrialFirst, 2);
        var beside = Build(before, static _ => null);
        var besideTrial = Measure(check.Of(beside, trial, past.Today), before);
        var plan = new FitSalt(rounds, check, request.Weights, past).Mend(fitted, trial, v => Build(v, static _ => null), doses, mostShare, pots);
        var gained = Measure(check.Of(Build(plan, static _ => null), trial, past.Today), plan).Score < besideTrial.Score;
        plan = gained ? plan : before;

        Say("Judging it on other years", 0.8);
        var judge = Draws(request.Draws, JudgeFirst, 3);
        var reasons = new FitReasons(context, search, judge, request.Weights, past);
        var changes = gained ? reasons.Of(before, plan, doses, pots.Count) : [];
        var words = changes.Where(static c => c.Fitted is not null).ToDictionary(static c => c.Fitted!.Value, static c => c.Words);
        var done = Build(plan, v => words.GetValueOrDefault(request.From.AddDays(v.Day)));
        var courses = check.Of(done, judge, past.Today);
        var besides = gained ? check.Of(beside, judge, past.Today) : courses;
        var flush = new FitFlush(check, judge, request.From, past);
        var advice = new FlushAdvice?[pots.Count];
        Say("Looking whether a flush helps", 0.95);
        Parallel.For(0, pots.Count, parallel, i => advice[i] = flush.Advise(i, pots[i], courses[i]));
        Say("Done", 1);
        return new()
        {
            Request = request,
            Since = request.From.AddDays(past.Today),
            Plan = done,
            Beside = beside,
            Fitted = Measure(courses, plan),
            BesideMeasure = Measure(besides, before),
            Pots = [.. pots.Select((p, i) => new FittedPot(p.Pot.Name, courses[i], besides[i], p.Assumed, advice[i]))],
            Changes = changes,
            Gained = gained,
            PotDays = search.PotDays,
            Weights = request.Weights,
            Visits = plan,
            Problems = [.. done.Problems, .. Notes(gained), .. weather.Notes],
        };
    }

    /// <summary>The rounds to begin from: the rule of thumb's, or the plan that was followed with what was missed left out.</summary>
    private List<FitVisit> Before()
    {
        List<FitVisit> visits;
        if (request.Replan is { } replan)
        {
            var missed = replan.Missed.Where(d => d < replan.Today).Select(d => d.DayNumber - request.From.DayNumber).ToHashSet();
            visits = [.. replan.Before.Visits.Where(v => !missed.Contains(v.Day)).Select(static v => v.AsBefore())];
        }
        else
        {
            visits = rounds.OfRuleOfThumb();
        }

        // A pot that gets nothing on a day, whatever the level, has no part in that round; a round without pots is none.
        foreach (var visit in visits.Where(v => v.Day >= past.Today))
        {
            for (var p = 0; p < pots.Count; p++)
            {
                visit.Levels[p] = doses.Of(p, visit).Events.Length > 0 ? visit.Levels[p] : 0;
            }
        }

        visits.RemoveAll(static v => v.IsEmpty);
        return visits;
    }

    private (List<FitVisit> Visits, FitSearch Search) Search(List<FitVisit> before)
    {
        var fast = SearchIn(Draws(FastDraws, 0, 0));
        List<FitVisit> visits = [.. before.Select(static v => v.Copy())];
        visits = fast.Pass(visits, FastHorizon, dates: false, add: false, s => Say("First plan", 0.1 * s));
        progress?.Report(new("First plan", 0.1, Build(visits, static _ => null)));
        var fine = SearchIn(Draws(FineDraws, FineFirst, 1));
        var best = Better(fine, before, visits);
        visits = fine.Pass(Copies(best), FineHorizon, dates: true, add: true, s => Say("Dates and doses", 0.1 + (0.25 * s)));
        best = Better(fine, best, visits);
        visits = fine.Pass(Copies(best), FineHorizon, dates: true, add: false, s => Say("Dates and doses again", 0.35 + (0.2 * s)));
        best = Better(fine, best, visits);
        visits = fine.Pass(Copies(best), LastHorizon, dates: false, add: false, s => Say("Doses", 0.55 + (0.15 * s)));
        return (Better(fine, best, visits), fine);
    }

    private static List<FitVisit> Copies(List<FitVisit> visits) => [.. visits.Select(static v => v.Copy())];

    private static List<FitVisit> Better(FitSearch search, List<FitVisit> old, List<FitVisit> now) => search.Score(now) < search.Score(old) - 1e-9 ? now : old;

    private FitSearch SearchIn(FitDraws draws)
    {
        var courses = new FitCourse[pots.Count];
        Parallel.For(0, pots.Count, parallel, p => courses[p] = draws.Course(pots[p].Pot.Id, pots[p].Scenario, request.Weights, FitLimits.Of(pots[p].Crop), grows[p]));
        return new(rounds, doses, courses, request.Weights, mostShare, past) { Parallel = parallel };
    }

    private FitDraws Draws(int count, int first, int design) => new(weather, request.From, rounds.Days + FitGrowing.Tail, count, first, request.Seed, design);

    private YearPlan Build(List<FitVisit> visits, Func<FitVisit, string?> words) => FitBuilder.Plan(context, doses, visits, words, Kept());

    /// <summary>Days about today of the plan that was followed stay free of leaf feeds, so that those before today stand as they stood.</summary>
    private IEnumerable<DateOnly> Kept() => request.Replan is { } replan
        ? replan.Before.Plan.Feeds.Where(f => f.Date < replan.Today.AddDays(3) && f.Kind is Feeds.FeedKind.Mineral or Feeds.FeedKind.Organic).Select(static f => f.Date)
        : [];

    private FitMeasure Measure(FitPotCourse[] courses, List<FitVisit> visits) =>
        FitMeasure.Mean([.. courses.Select(static c => c.Measure)], visits.Count(v => v.Day >= past.Today), request.Weights.Round);

    private static IEnumerable<Problem> Notes(bool gained)
    {
        if (!gained)
        {
            yield return new("fit", "Nothing better than the plan beside it was found: it stands.", "Loosen a season rule, keep another feed, or change the interval.", Severity.Note);
        }

        yield return new("model", "Days, bands and odds are those of the model, not of your pots.", "Measure EC and pH of what runs out below now and then, and compare.", Severity.Note);
    }

    private void Say(string stage, double share)
    {
        parallel.CancellationToken.ThrowIfCancellationRequested();
        progress?.Report(new(stage, share));
    }
}
