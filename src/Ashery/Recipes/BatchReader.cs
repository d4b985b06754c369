using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>Reads a batch (<c>120g</c>, <c>50g..80g</c>, <c>0.5kg</c>) and the step of a scale (<c>1g</c>).</summary>
public static class BatchReader
{
    /// <summary>An exact batch, or a window between two masses.</summary>
    public static Result<BatchWindow> Parse(string? text)
    {
        var window = QuantityReader.MassWindow(text ?? string.Empty, "batch");
        return window.Ok ? Result.Of(new BatchWindow(window.Value.From, window.Value.To)) : Result.Fail<BatchWindow>(window.Problems);
    }

    /// <summary>One step of a scale.</summary>
    public static Result<Mass> ParseStep(string? text) => QuantityReader.Mass(text ?? string.Empty, "step", "1g");
}
