using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>Would pouring plain water through help? Runs the pot with and without.</summary>
internal sealed class FitFlush(FitCheck check, FitDraws draws, DateOnly from, FitPast past)
{
    // A litre for each litre of medium, in one go; it must save two days over the limit at least (ours).
    private const double LitresPerLitre = 1, LeastSaved = 2;

    private static readonly int[] Before = [30, 14, 3];

    public FlushAdvice? Advise(int index, GardenPot pot, FitPotCourse course)
    {
        if (course.Measure.SaltDays < LeastSaved)
        {
            return null;
        }

        var first = 0;
        while (first < course.Days.Count - 1 && (first < past.Today || course.Days[first].OddsOverEc < FitWeights.Default.Risk))
        {
            first++;
        }

        var litres = Math.Round(LitresPerLitre * pot.Pot.Volume.Litres, 1);
        FlushAdvice? best = null;
        foreach (var earlier in Before)
        {
            var day = Math.Max(past.Today, first - earlier);
            var with = check.One(index, [.. course.Events, new FlushEvent(from.AddDays(day), litres)], draws, past.Today);
            var saved = course.Measure.SaltDays - with.Measure.SaltDays;
            if (saved >= LeastSaved && with.Measure.Score < course.Measure.Score && (best is null || with.Measure.SaltDays < best.SaltDaysAfter))
            {
                var more = with.Measure.LeachedN - course.Measure.LeachedN;
                best = new(from.AddDays(day), litres, course.Measure.SaltDays, with.Measure.SaltDays, more, FormattableString.Invariant(
                    $"Pour {litres:0.#} L of plain water through {pot.Pot.Name} on {from.AddDays(day):yyyy-MM-dd}: days over its EC limit fall from {course.Measure.SaltDays:0} to {with.Measure.SaltDays:0} in the mean of the made years, for {more * 1000:0} mg N a litre of medium washed out besides. Let it drain where no water is taken."));
            }
        }

        return best;
    }
}
