using Ashery.Feeds;

namespace Ashery.Planning.Fit;

/// <summary>Why each round moved: the fitted year is run once more with that round as it was, and what would be worse is told.</summary>
internal sealed class FitReasons(PlanContext context, FitSearch search, FitDraws weather, FitWeights weights, FitPast past)
{
    private const double MuchRain = 25;
    private const int RainDays = 7;

    public List<RoundChange> Of(List<FitVisit> before, List<FitVisit> fitted, FitDoses doses, int pots)
    {
        var olds = before.Where(v => v.Day >= past.Today).Select(old => (Old: old, Mine: fitted.Find(v => v.BesideDay == old.Day && v.Kind == old.Kind))).ToList();
        var added = fitted.Where(v => v.BesideDay is null && v.Day >= past.Today).ToList();
        var changed = olds.Where(o => !AsItWas(o.Old, o.Mine)).ToList();
        List<List<FitVisit>> years = [fitted, .. changed.Select(o => Undone(fitted, o.Old, o.Mine)), .. added.Select(v => fitted.Where(f => f != v).Select(static f => f.Copy()).ToList())];
        var measures = search.Sums(years);
        var (now, next) = (measures[0], 1);
        List<RoundChange> changes = [];
        foreach (var (old, mine) in olds)
        {
            var ratio = Ratio(old, mine);
            var words = AsItWas(old, mine) ? "As it was." : $"{What(old, mine, ratio)}: {Why(now, measures[next++], fitted, old, mine)}";
            changes.Add(new(old.Kind, Date(old.Day), mine is null ? null : Date(mine.Day), mine is null ? 0 : ratio, words));
        }

        foreach (var visit in added)
        {
            changes.Add(new(visit.Kind, null, Date(visit.Day), null, $"Added: {Why(now, measures[next++], fitted, null, visit)}"));
        }

        return [.. changes.OrderBy(static c => c.Fitted ?? c.Before).ThenBy(static c => c.Kind)];

        bool AsItWas(FitVisit old, FitVisit? mine) => mine is not null && mine.Day == old.Day && Math.Abs(Ratio(old, mine) - 1) < 0.1;
        double Ratio(FitVisit old, FitVisit? mine) => Nitrogen(old) is var wanted && mine is not null && wanted > 0 ? Nitrogen(mine) / wanted : 0;
        double Nitrogen(FitVisit visit) => Enumerable.Range(0, pots).Sum(p => doses.Of(p, visit).Nitrogen);
    }

    /// <summary>The fitted year with one round as it was before.</summary>
    private static List<FitVisit> Undone(List<FitVisit> fitted, FitVisit old, FitVisit? mine)
    {
        List<FitVisit> visits = [.. fitted.Where(v => v != mine && v.Day != old.Day).Select(static v => v.Copy()), old.Copy()];
        visits.Sort(static (a, b) => a.Day.CompareTo(b.Day));
        return visits;
    }

    private string What(FitVisit old, FitVisit? mine, double ratio)
    {
        if (mine is null)
        {
            return "Left out";
        }

        var dose = ratio switch
        {
            < 0.4 => FormattableString.Invariant($"{ratio * 100:0} % of the dose"),
            < 0.6 => "halved",
            < 0.9 => FormattableString.Invariant($"{ratio * 100:0} % of the dose"),
            > 1.1 => FormattableString.Invariant($"{ratio:0.0} times the dose"),
            _ => null,
        };
        var date = mine.Day == old.Day ? null : FormattableString.Invariant($"Moved from {Date(old.Day):d MMMM} to {Date(mine.Day):d MMMM}");
        return date is null ? char.ToUpperInvariant(dose![0]) + dose[1..] : dose is null ? date : $"{date}, {dose}";
    }

    /// <summary>What would be worse, the dearest thing first.</summary>
    private string Why(FitMeasure now, FitMeasure other, List<FitVisit> fitted, FitVisit? old, FitVisit? mine)
    {
        (double Worth, Func<string> Words)[] worse =
        [
            (other.HungryDays - now.HungryDays + other.LostDays - now.LostDays, () => Hungry(now, other, mine is null)),
            (other.StrongDays - now.StrongDays, () => FormattableString.Invariant($"else pore water would be stronger than the crops' liquid feed on {Days(other.StrongDays - now.StrongDays)} more")),
            (weights.Salt * (other.SaltDays - now.SaltDays), () => FormattableString.Invariant($"else the average pot would be over its EC limit on {Days(other.SaltDays - now.SaltDays)} more")),
            (weights.Leached * (other.LeachedN - now.LeachedN), () => Washed(now, other, old)),
            (weights.Given * (other.GivenN - now.GivenN), () => Lasts(now, other, fitted, old ?? mine)),
        ];
        var best = worse.MaxBy(static w => w.Worth);
        return best.Worth > 0.05 ? best.Words() + "."
            : mine is null ? "the pots fare as well without it, and a round is saved."
            : "small gains in several things; the pots would fare nearly as well as before.";
    }

    private static string Hungry(FitMeasure now, FitMeasure other, bool leftOut)
    {
        double hungry = other.HungryDays - now.HungryDays, lost = other.LostDays - now.LostDays;
        var first = leftOut && other.ReleasedN < now.ReleasedN ? "while it rots it would tie up nitrogen, and " : "else ";
        return (hungry > 0.05, lost > 0.05) switch
        {
            (true, true) => $"{first}the average pot would be short of nitrogen on {Days(hungry)} more and lose {Days(lost)} of growth",
            (true, false) => $"{first}the average pot would be short of nitrogen on {Days(hungry)} more",
            _ => $"{first}the average pot would lose {Days(lost)} of growth",
        };
    }

    private string Washed(FitMeasure now, FitMeasure other, FitVisit? old)
    {
        var more = FormattableString.Invariant($"else {(other.LeachedN - now.LeachedN) * 1000:0} mg N a litre of medium more would be washed out");
        if (old is null)
        {
            return more;
        }

        var wet = 0;
        for (var d = 0; d < weather.Count; d++)
        {
            wet += weather.Rain(d, old.Day, old.Day + RainDays) >= MuchRain ? 1 : 0;
        }

        var of10 = (int)Math.Round(10.0 * wet / Math.Max(1, weather.Count));
        return of10 >= 3
            ? FormattableString.Invariant($"in {of10} of 10 made years {MuchRain:0} mm or more of rain falls in the week after {Date(old.Day):d MMMM}; {more}")
            : more;
    }

    /// <summary>Less is given because the rest lasts; if organic feed carries it, that is said.</summary>
    private string Lasts(FitMeasure now, FitMeasure other, List<FitVisit> fitted, FitVisit? visit)
    {
        var saved = FormattableString.Invariant($"{(other.GivenN - now.GivenN) * 1000:0} mg N a litre of medium are saved without a loss");
        if (visit is null)
        {
            return saved;
        }

        var organic = context.Turns.LastOrDefault(t => t.Kind == FeedKind.Organic && t.Day.DayNumber - context.From.DayNumber < visit.Day);
        return organic is not null && search.Released(fitted, visit.Day) is > 0.5 and var share
            ? FormattableString.Invariant($"{share * 100:0} % of what the pots take up in those weeks is still being released by the organic feed given before; {saved}")
            : saved;
    }

    private DateOnly Date(int day) => context.From.AddDays(day);

    private static string Days(double days) => days is > 0.95 and < 1.05 ? "1 day" : days < 10 ? FormattableString.Invariant($"{days:0.0} days") : FormattableString.Invariant($"{days:0} days");
}
