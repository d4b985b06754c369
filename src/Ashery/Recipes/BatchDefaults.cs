using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Recipes;

/// <summary>Fills in a batch where whole steps need one, and says so.</summary>
internal static class BatchDefaults
{
    /// <summary>Steps of a scale when no batch is asked for: each then stands for about a per cent.</summary>
    private const int Steps = 100;

    /// <summary>Scoops when no batch is asked for.</summary>
    private const int Scoops = 16;

    /// <summary>How far an exact batch may be missed by whole scoops, either way.</summary>
    private const double ScoopTolerance = 0.1;

    public static MixRequest Apply(MixRequest request, List<Problem> notes)
    {
        switch (request.Measuring)
        {
            case Measuring.ByScale scale when request.Batch is null:
                var grams = scale.Step.Grams * Steps;
                notes.Add(new Problem("batch", $"No batch was asked for; {Say.Grams(grams)} is shown.", "Give one, as in --batch 120g.", Severity.Note));
                return request with { Batch = new BatchWindow(new Mass(grams), new Mass(grams)) };

            case Measuring.ByScoop scoop when request.Batch is null:
                var heaviest = request.Offers.Max(o => ScoopMass.Of(scoop.Scoop, o.Material)?.Typical ?? 0);
                if (heaviest <= 0)
                {
                    return request;
                }

                var most = heaviest * Scoops;
                notes.Add(new Problem(
                    "batch", $"No batch was asked for; up to {Say.Grams(Math.Round(most))}, about {Scoops} scoops, is shown.", "Give one, as in --batch 50g..80g.", Severity.Note));
                return request with { Batch = new BatchWindow(new Mass(most / Scoops), new Mass(most)) };

            case Measuring.ByScoop when request.Batch is { } batch && batch.From == batch.To:
                notes.Add(new Problem(
                    "batch",
                    $"Whole scoops seldom make {Say.Grams(batch.To.Grams)} exactly; a tenth more or less is allowed.",
                    "Give a window, as in --batch 50g..80g, to set it yourself.",
                    Severity.Note));
                return request with { Batch = new BatchWindow(batch.From * (1 - ScoopTolerance), batch.To * (1 + ScoopTolerance)) };

            default:
                return request;
        }
    }

    /// <summary>A batch that no number of steps makes.</summary>
    public static Problem? Impossible(MixRequest request)
    {
        if (request is not { Measuring: Measuring.ByScale { Step.Grams: var step }, Batch: { } batch })
        {
            return null;
        }

        // Whole steps within the window, forgiving the last binary digits of 0.1.
        var least = Math.Ceiling((batch.From.Grams / step) - 1e-9);
        var most = Math.Floor((batch.To.Grams / step) + 1e-9);
        return least <= most
            ? null
            : new Problem(
                "batch",
                $"No whole number of steps of {Say.Grams(step)} makes {Say.Grams(batch.From.Grams)}{(batch.From == batch.To ? string.Empty : $" to {Say.Grams(batch.To.Grams)}")}.",
                $"Ask for {Say.Grams(most * step)} or {Say.Grams(least * step)}, or use a finer scale.");
    }
}
