namespace Ashery.Trials.Chances;

/// <summary>Holm (1979): p values of a family, stepped down so that the family errs no more often than one test alone.</summary>
internal static class Holm
{
    /// <summary>In the order given; what is not a number stays out of the family.</summary>
    public static double[] Adjust(IReadOnlyList<double> p)
    {
        var order = Enumerable.Range(0, p.Count).Where(i => !double.IsNaN(p[i])).OrderBy(i => p[i]).ToList();
        var adjusted = p.ToArray();
        var highest = 0.0;
        for (var rank = 0; rank < order.Count; rank++)
        {
            highest = Math.Max(highest, Math.Min(1, (order.Count - rank) * p[order[rank]]));
            adjusted[order[rank]] = highest;
        }

        return adjusted;
    }
}
