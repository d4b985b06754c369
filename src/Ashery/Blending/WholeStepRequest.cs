namespace Ashery.Blending;

/// <summary>A blend wanted in whole steps of a scale or whole scoops, for a batch between two masses.</summary>
public sealed record WholeStepRequest
{
    /// <summary>Columns, target, rows, pairs, count limit and number of blends, as in the free search.</summary>
    public required BlendRequest Blend { get; init; }

    /// <summary>Grams of one step of each column: the scale's resolution, or what one level scoop of it holds.</summary>
    public required IReadOnlyList<double> StepGrams { get; init; }

    /// <summary>Smallest batch, g.</summary>
    public required double FromGrams { get; init; }

    /// <summary>Largest batch, g; equal to <see cref="FromGrams"/> for an exact batch.</summary>
    public required double ToGrams { get; init; }

    /// <summary>How many count vectors may be looked at before the search stops and says so.</summary>
    public long WorkLimit { get; init; } = 2_000_000;
}

/// <summary>Blends in whole steps, best first.</summary>
/// <param name="Blends">Ordered by error, cost a kg of nutrient (unknown last), number of columns, number of steps, names.</param>
/// <param name="Proved">True when no other counts come before the last one shown.</param>
/// <param name="Gap">
/// How much lower the error of the best whole-step blend could still be, at most; 0 when proved.
/// </param>
public sealed record WholeStepAnswer(IReadOnlyList<WholeStepBlend> Blends, bool Proved, double Gap);

/// <summary>One blend in whole steps.</summary>
/// <param name="Blend">Its figures; mass fractions are those of the whole steps.</param>
/// <param name="Steps">Steps of each member, in the order of its members.</param>
/// <param name="Grams">Mass of the batch, g.</param>
public sealed record WholeStepBlend(Blend Blend, IReadOnlyList<int> Steps, double Grams);
