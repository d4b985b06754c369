using Ashery.Sources;

namespace Ashery.Solutions.Can;

/// <summary>How much dissolving cools or warms the water. Rows of data/solutions/heats.json.</summary>
internal static class HeatOfDissolving
{
    // kJ/(kg K) of water.
    private const double HeatCapacity = 4.18;

    private static readonly Lazy<Dictionary<string, double>> Heats = new(static () =>
    {
        var heats = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (formula, kilojoules) in DataRows.Read("data/solutions/heats.json", row => Tuple.Create(row.Text("formula"), row.Number("kJPerMol"))))
        {
            heats.Add(formula, kilojoules);
        }

        return heats;
    });

    /// <summary>°C; null when no heat of the materials is known. Those without a figure count as nothing.</summary>
    public static double? Of(IReadOnlyList<(CanAddition Addition, double Dissolved)> parts, double waterMass)
    {
        double? sum = null;
        foreach (var (addition, dissolved) in parts)
        {
            if (addition.Material.Salt is { } salt && Heats.Value.TryGetValue(salt.Formula, out var heat))
            {
                sum = (sum ?? 0) - (heat * dissolved * addition.Material.Purity / salt.MolarMass / (HeatCapacity * waterMass));
            }
        }

        return sum;
    }
}
