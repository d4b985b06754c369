namespace Ashery.RootZone.Draws;

/// <summary>Quantiles of sorted draws, straight between order statistics (definition 7 of Hyndman and Fan 1996, The American Statistician 50:361-365; from memory).</summary>
internal static class Quantiles
{
    public static DayBand Band(ReadOnlySpan<float> sorted) => new(At(sorted, 0.05), At(sorted, 0.25), At(sorted, 0.5), At(sorted, 0.75), At(sorted, 0.95));

    public static double At(ReadOnlySpan<float> sorted, double share)
    {
        var at = share * (sorted.Length - 1);
        var i = (int)at;
        var low = (double)sorted[i];
        return i + 1 < sorted.Length ? low + ((at - i) * (sorted[i + 1] - low)) : low;
    }
}
