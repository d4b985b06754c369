namespace Ashery.Planning.Fit;

/// <summary>Makes doses smaller until the chance of passing the EC limit is small on every day, or until there is nothing left to take.</summary>
internal sealed class FitSalt(FitRounds rounds, FitCheck check, FitWeights weights, FitPast past)
{
    // Salt of a dose is about for some months.
    private const int Reach = 120, MostTurns = 6;

    // Odds are counted on other draws than those the plan is judged on, and the worst of 365 days is looked at: only this part of the risk is used up here.
    private const double Margin = 0.5;

    public List<FitVisit> Mend(
        List<FitVisit> fitted, FitDraws draws, Func<List<FitVisit>, YearPlan> build, FitDoses doses, double[] mostShare, IReadOnlyList<GardenPot> pots)
    {
        List<FitVisit> visits = [.. fitted.Select(static v => v.Copy())];
        Season(visits, doses, mostShare);
        var left = Enumerable.Range(0, pots.Count).ToList();
        for (var turn = 0; turn < MostTurns && left.Count > 0; turn++)
        {
            var courses = check.Of(build(visits), draws, past.Today, left);
            left.RemoveAll(p => courses[p].WorstOdds <= weights.Risk * Margin || !Lower(visits, p, courses[p].WorstDay));
            rounds.Space(visits);
        }

        visits.RemoveAll(v => v.IsEmpty && v.Day >= past.Today);
        rounds.Space(visits);
        return visits;
    }

    private bool Lower(List<FitVisit> visits, int pot, int worst)
    {
        var any = false;
        foreach (var visit in visits)
        {
            if (visit.Day >= past.Today && visit.Day <= worst && visit.Day > worst - Reach && visit.Levels[pot] > 0)
            {
                visit.Levels[pot] = FitLevels.At(FitLevels.IndexOf(visit.Levels[pot]) - 1);
                any = true;
            }
        }

        return any;
    }

    /// <summary>The year's nitrogen back within the published range, the last doses first.</summary>
    private void Season(List<FitVisit> visits, FitDoses doses, double[] mostShare)
    {
        for (var p = 0; p < mostShare.Length; p++)
        {
            for (var i = visits.Count - 1; i >= 0 && visits.Sum(v => doses.Of(p, v).Share) > mostShare[p] + 1e-9;)
            {
                if (visits[i].Day < past.Today || visits[i].Levels[p] <= 0)
                {
                    i--;
                    continue;
                }

                visits[i].Levels[p] = FitLevels.At(FitLevels.IndexOf(visits[i].Levels[p]) - 1);
            }
        }
    }
}
