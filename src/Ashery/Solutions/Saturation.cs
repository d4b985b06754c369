namespace Ashery.Solutions;

/// <summary>How near a solid is to coming out of solution.</summary>
/// <param name="Mineral">Which.</param>
/// <param name="Index">log10 of the ion activity product over the solubility product: above 0 it may come out.</param>
public readonly record struct SaturationIndex(Mineral Mineral, double Index)
{
    /// <summary>Index of every solid all of whose parts are present.</summary>
    public static IReadOnlyList<SaturationIndex> All(Solution solution)
    {
        var indices = new List<SaturationIndex>();
        foreach (var mineral in solution.Input.Chemistry.Minerals)
        {
            if (Of(solution, mineral) is var index && !double.IsNegativeInfinity(index))
            {
                indices.Add(new(mineral, index));
            }
        }

        return indices;
    }

    /// <summary>Index of one solid; negative infinity when a part of it is absent.</summary>
    public static double Of(Solution solution, Mineral mineral)
    {
        var sum = (mineral.Water * Math.Log10(solution.WaterActivity)) - (mineral.Protons * solution.PH) - mineral.LogSolubility(solution.Celsius);
        foreach (var (component, number) in mineral.Parts)
        {
            sum += number * solution.Log10Activities[component];
        }

        return sum;
    }
}
