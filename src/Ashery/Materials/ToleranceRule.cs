using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>A law's rule on how far an analysis may miss the label.</summary>
/// <param name="Id">Key: <c>us</c>, <c>ec2003</c>, <c>eu2019-mineral</c>, <c>eu2019-organic</c>.</param>
/// <param name="Name">As people call it.</param>
/// <param name="Note">What to know before relying on it.</param>
/// <param name="Allowances">Rows by nutrient.</param>
/// <param name="Sums">Limit on the shortfalls of N, P2O5 and K2O together; null when there is none.</param>
/// <param name="Index">Limit on the overall index; null when there is none.</param>
public sealed record ToleranceRule(
    string Id, string Name, string Note, IReadOnlyList<Allowance> Allowances, SumLimit? Sums, IndexLimit? Index)
{
    /// <summary>The row that judges this nutrient at this declared content (percent) in this material; null when the rule is silent.</summary>
    public Allowance? For(Nutrient nutrient, double declared, string? materialId)
    {
        Allowance? best = null;
        foreach (var row in Allowances)
        {
            var named = row.Materials.Count > 0;
            if (!row.Nutrients.Contains(nutrient) || declared <= row.Above || (named && (materialId is null || !row.Materials.Contains(materialId))))
            {
                continue;
            }

            // Named rows before general ones, then the highest threshold passed.
            if (best is null || (named, row.Above).CompareTo((best.Materials.Count > 0, best.Above)) > 0)
            {
                best = row;
            }
        }

        return best;
    }
}

/// <summary>One row: points + share x declared, at most so much; or a table read between its lines. All in percent by weight.</summary>
public sealed record Allowance
{
    public required IReadOnlyList<Nutrient> Nutrients { get; init; }

    public IReadOnlyList<string> Materials { get; init; } = [];

    /// <summary>Declared content above which the row applies.</summary>
    public double Above { get; init; } = -1;

    public double Points { get; init; }

    public double Share { get; init; }

    public double AtMost { get; init; } = double.PositiveInfinity;

    /// <summary>The same for an excess; null when an excess is not judged.</summary>
    public double? ExcessShare { get; init; }

    public double ExcessAtMost { get; init; } = double.PositiveInfinity;

    /// <summary>Reckoned on the oxide.</summary>
    public bool OnOxide { get; init; }

    public IReadOnlyList<double> Guarantee { get; init; } = [];

    public IReadOnlyList<double> Allowed { get; init; } = [];

    public required string SourceId { get; init; }

    public required Provenance Provenance { get; init; }

    /// <summary>Points by which the analysis may fall short.</summary>
    public double Shortfall(double declared) => Guarantee.Count > 0 ? Between(declared) : Math.Min(AtMost, Points + (Share * declared));

    /// <summary>Points by which it may pass the label; null when an excess is not judged.</summary>
    public double? Excess(double declared) => ExcessShare is { } share ? Math.Min(ExcessAtMost, share * declared) : null;

    // Straight lines between the guarantees of the table; its ends hold beyond them.
    private double Between(double declared)
    {
        if (declared <= Guarantee[0])
        {
            return Allowed[0];
        }

        for (var i = 1; i < Guarantee.Count; i++)
        {
            if (declared <= Guarantee[i])
            {
                var t = (declared - Guarantee[i - 1]) / (Guarantee[i] - Guarantee[i - 1]);
                return Allowed[i - 1] + (t * (Allowed[i] - Allowed[i - 1]));
            }
        }

        return Allowed[^1];
    }
}

/// <summary>Most that the shortfalls of two or of three primary nutrients may add up to, in points.</summary>
public sealed record SumLimit(double Two, double Three, string SourceId, Provenance Provenance);

/// <summary>Least overall index: found value over declared value, percent, each nutrient at its weight.</summary>
public sealed record IndexLimit(double Percent, double WeightN, double WeightP, double WeightK, string SourceId, Provenance Provenance, string Note);
