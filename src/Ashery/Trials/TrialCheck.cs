using Ashery.Problems;

namespace Ashery.Trials;

/// <summary>Says what is wrong with a trial before anything is drawn or reckoned.</summary>
internal static class TrialCheck
{
    public static List<Problem> Of(Trial trial)
    {
        var wrong = new List<Problem>();
        if (string.IsNullOrWhiteSpace(trial.Name))
        {
            wrong.Add(new("name", "The trial has no name.", "Call it something you will know next year."));
        }

        Treatments(trial, wrong);
        Wish(trial, wrong);
        if (trial.Looks is < 1 or > 10)
        {
            wrong.Add(new("looks", FormattableString.Invariant($"{trial.Looks} looks are not between 1 and 10."), "Say how often you mean to judge the trial, the end included, as in 1."));
        }

        if (trial.Pots.Count > Trial.MostPots || trial.Layout.Count > Trial.MostPots)
        {
            wrong.Add(new("pots", FormattableString.Invariant($"More than {Trial.MostPots} pots."), "Take fewer."));
        }

        Twice(trial.Pots.Select(static p => p.Id), "pots", wrong);
        Twice(trial.Layout.Select(static p => p.Pot), "layout", wrong);
        foreach (var place in trial.Layout)
        {
            if (trial.Find(place.Treatment) is null)
            {
                wrong.Add(new($"layout {place.Pot}", $"There is no feed \"{place.Treatment}\" in this trial.", "Use " + string.Join(", ", trial.Treatments.Select(static t => t.Id)) + "."));
                break;
            }
        }

        return wrong;
    }

    private static void Treatments(Trial trial, List<Problem> wrong)
    {
        var feeds = trial.Treatments;
        if (feeds.Count is < 2 or > Trial.MostTreatments)
        {
            wrong.Add(new("feeds", FormattableString.Invariant($"A trial of {feeds.Count} {(feeds.Count == 1 ? "feed" : "feeds")} cannot be: it is from 2 to {Trial.MostTreatments}."), "Name the feeds to compare, the usual one or plain water among them."));
        }

        Twice(feeds.Select(static t => t.Id), "feeds", wrong);
        if (feeds.Any(static t => string.IsNullOrWhiteSpace(t.Id) || string.IsNullOrWhiteSpace(t.Name)))
        {
            wrong.Add(new("feeds", "A feed has no name.", "Name each feed."));
        }

        if (feeds.Count(static t => t.IsControl) > 1)
        {
            wrong.Add(new("control", "Two feeds are marked as the control.", "Mark the one that the others are compared with."));
        }

        if (feeds.Count > 0 && feeds.Any(t => !t.Factors.Keys.Order(StringComparer.Ordinal).SequenceEqual(feeds[0].Factors.Keys.Order(StringComparer.Ordinal))))
        {
            wrong.Add(new("factors", "The feeds do not all name the same factors.", "Give each feed a level of every factor, or leave factors out."));
        }
        else if (feeds.Count > 0 && feeds[0].Factors.Count > 4)
        {
            wrong.Add(new("factors", "More than four factors.", "Take the ones that matter most."));
        }
    }

    private static void Wish(Trial trial, List<Problem> wrong)
    {
        var wish = trial.Wish;
        Within("mean", wish.Mean, 0.1, 10_000, "flowers a pot of the control, as in 20");
        Within("difference", Math.Abs(wish.Difference) * 100, 1, 900, "the difference to be seen in percent, as in 30");
        if (wish.Difference <= -1)
        {
            wrong.Add(new("difference", "A feed cannot take away more than all.", "Give less than 100 % for a loss, as in -30."));
        }

        Within("spread", wish.Spread * 100, trial.Measure.Kind == MeasureKind.Count ? 0 : 1, 300, "how much pots that are fed alike differ, in percent, as in 25");
        Within("power", wish.Power * 100, 50, 99.9, "the chance to see it in percent, as in 80");
        Within("alpha", wish.Alpha * 100, 0.1, 20, "the chance of a false alarm in percent, as in 5");

        void Within(string field, double value, double least, double most, string what)
        {
            if (!(value >= least - 1e-9 && value <= most + 1e-9))
            {
                wrong.Add(new(field, FormattableString.Invariant($"{value:0.###} is outside {least} to {most}."), $"Give {what}."));
            }
        }
    }

    private static void Twice(IEnumerable<string> ids, string field, List<Problem> wrong)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        if (ids.FirstOrDefault(id => !seen.Add(id)) is { } twice)
        {
            wrong.Add(new(field, $"\"{twice}\" stands there twice.", "Give each its own short name."));
        }
    }
}
