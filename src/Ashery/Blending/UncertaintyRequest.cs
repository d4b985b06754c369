namespace Ashery.Blending;

/// <summary>Blends whose contents and amounts are only known within ranges.</summary>
public sealed record UncertaintyRequest
{
    /// <summary>Typical contents and target.</summary>
    public required BlendRequest Blend { get; init; }

    /// <summary>The blends to look at, as found.</summary>
    public required IReadOnlyList<Blend> Blends { get; init; }

    /// <summary>Range of each content, [column][nutrient]; its typical value is the triangle's mode.</summary>
    public required IReadOnlyList<IReadOnlyList<ContentRange>> Contents { get; init; }

    /// <summary>Largest relative error of an amount of each column: 0.1 when a scoop may be a tenth off either way.</summary>
    public required IReadOnlyList<double> AmountError { get; init; }

    public int Draws { get; init; } = 10_000;

    public int Seed { get; init; } = 1;
}

/// <summary>Lowest, typical and highest mass fraction.</summary>
public readonly record struct ContentRange(double Min, double Typical, double Max);

/// <summary>What the ranges do to each blend.</summary>
/// <param name="Blends">In the order of the request.</param>
/// <param name="ByPercentile95">Indices of the blends, ranked by their 95th percentile of error.</param>
public sealed record UncertaintyAnswer(IReadOnlyList<BlendUncertainty> Blends, IReadOnlyList<int> ByPercentile95);

/// <summary>The spread of one blend.</summary>
/// <param name="Median">Median ratio error over the draws.</param>
/// <param name="Percentile95">95th percentile of the ratio error.</param>
/// <param name="WorstCase">Largest ratio error anywhere in the ranges, exact (not a draw).</param>
/// <param name="ContentLow">5th percentile of each nutrient's mass fraction.</param>
/// <param name="ContentHigh">95th percentile of each nutrient's mass fraction.</param>
public sealed record BlendUncertainty(
    double Median, double Percentile95, double WorstCase, IReadOnlyList<double> ContentLow, IReadOnlyList<double> ContentHigh);
