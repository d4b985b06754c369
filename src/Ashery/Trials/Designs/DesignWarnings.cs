namespace Ashery.Trials.Designs;

/// <summary>What a planned trial cannot do, said before a pot is fed.</summary>
internal static class DesignWarnings
{
    public static IReadOnlyList<TrialWarning> Of(TrialPlan plan)
    {
        var warnings = new List<TrialWarning>();
        var trial = plan.Trial;
        if (trial.Pots.Count > 0 && plan.PotsLaidOut == 0)
        {
            warnings.Add(new("too-few-pots", FormattableString.Invariant($"{trial.Pots.Count} {(trial.Pots.Count == 1 ? "pot makes" : "pots make")} no block of {trial.Treatments.Count} feeds: nothing can be laid out."), Stops: true));
        }
        else if (plan.PotsLaidOut == 1)
        {
            warnings.Add(new("one-pot", "One pot a feed proves nothing: two pots that are fed alike differ too, and here nobody can tell how much. Take at least two pots a feed, better the number named.", Stops: true));
        }
        else if (plan is { PotsLaidOut: > 1, PowerHere: { } power } && power < trial.Wish.Power)
        {
            warnings.Add(new("weak", FormattableString.Invariant($"With {plan.PotsLaidOut} pots a feed the difference you wish to see would show in {power * 100:0} of 100 such trials, not in {trial.Wish.Power * 100:0}. A trial that shows nothing would then prove nothing.")));
        }

        if (plan.PotsNeeded is null)
        {
            warnings.Add(new("too-many", FormattableString.Invariant($"Even {TrialDesign.MostPotsAFeed} pots a feed would be too few. Look for a larger difference, or for pots that differ less.")));
        }

        if (plan.Spare.Count > 0)
        {
            warnings.Add(new("spare", "Left out, since they fill no block: " + string.Join(", ", plan.Spare.Select(static p => p.Id)) + "."));
        }

        var mixed = MixedBlocks(trial);
        if (mixed.Count > 0)
        {
            warnings.Add(new("mixed-block", "Pots of different places or sizes stand in block " + string.Join(", ", mixed.Select(static b => b.ToString(System.Globalization.CultureInfo.InvariantCulture))) + ". What the place does to them is not told apart from the feed there as well as elsewhere."));
        }

        if (trial.Looks > 1)
        {
            warnings.Add(new("looks", "Looking early costs: the limits of each look are stricter than that of a single one, and the chances above hold for the last."));
        }

        return warnings;
    }

    // A third more or less in volume is another size.
    private static List<int> MixedBlocks(Trial trial)
    {
        var pots = trial.Pots.ToDictionary(static p => p.Id, StringComparer.Ordinal);
        var mixed = new List<int>();
        foreach (var block in trial.Layout.GroupBy(static p => p.Block))
        {
            var of = block.Select(p => pots.GetValueOrDefault(p.Pot)).OfType<TrialPot>().ToList();
            var litres = of.Select(static p => p.Litres).OfType<double>().ToList();
            if (of.Select(static p => p.Place).Distinct(StringComparer.Ordinal).Count() > 1 || (litres.Count > 1 && litres.Max() > 1.34 * litres.Min()))
            {
                mixed.Add(block.Key);
            }
        }

        return mixed;
    }
}
