using System.Globalization;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Pots;

/// <summary>A dose as it can be taken: in steps of the scale, in half scoops, by the can or from a pre-dilution.</summary>
internal sealed record Measured(
    double Grams, DoseMethod Method, double? Scoops, CanDose? Can, Predilution? Predilution, IReadOnlyList<string> Reasons, IReadOnlyList<Problem> Notes);

/// <summary>Rounds a dose to what can be weighed or scooped, never above the cap.</summary>
internal static class Measuring
{
    // Lets 2.9999999999 g count as three whole grams.
    private const double Slack = 1e-9;

    public static Measured Take(DoseRequest request, double target, double most, string stepsParameter)
    {
        if (target <= 0)
        {
            return new(0, DoseMethod.TopDress, null, null, null, [], []);
        }

        var feed = request.Feed;
        var stage = PlantAge.StageOn(request.Pot, request.On, request.Rules);
        var tender = stage is PlantStage.Seedling or PlantStage.Liner;
        var byCan = feed.Dissolves && (tender || feed.Kind == FeedKind.TraceElements || (feed.Kind == FeedKind.Mineral && request.Rules["mineral-way"].Choice == "can"));
        var leastSteps = request.Rules["weighable"].IsOn ? request.Rules["weighable"][stepsParameter] : 1;
        if (byCan && Can(request, target, most, leastSteps) is { } can)
        {
            return can;
        }

        return Scooped(request, target, most) ?? Weighed(request, target, most, leastSteps);
    }

    private static Measured? Scooped(DoseRequest request, double target, double most)
    {
        // Trace elements never go by the spoon (rule weigh-trace): the margin between need and harm is narrower than a scoop's spread.
        if (request.Scoop is not { } scoop || request.Feed.Kind == FeedKind.TraceElements || GramsOf(scoop, request.Feed) is not { } grams)
        {
            return null;
        }

        var halves = Math.Floor((target / grams * 2) + 0.5);
        if (halves * grams / 2 > most * (1 + Slack))
        {
            halves--;
        }

        return halves < 1
            ? null
            : new(halves * grams / 2, DoseMethod.TopDress, halves / 2, AsCan(request, halves * grams / 2), null, [string.Create(CultureInfo.InvariantCulture, $"A {scoop.Name} of this feed holds {grams:0.##} g.")], []);
    }

    /// <summary>g in a level scoop: the grower's own weighing first, else by bulk density.</summary>
    private static double? GramsOf(Scoop scoop, Feed feed)
    {
        if (scoop.Calibrations.TryGetValue(feed.Id, out var own) && own.Typical > 0)
        {
            return own.Typical;
        }

        if (feed.Parts.Count == 1 && scoop.Calibrations.TryGetValue(feed.Parts.Keys.First(), out var single) && single.Typical > 0)
        {
            return single.Typical;
        }

        return feed.BulkDensity is { } density and > 0 ? density * scoop.Volume.Millilitres : null;
    }

    private static Measured Weighed(DoseRequest request, double target, double most, double leastSteps)
    {
        var step = HandyStep(target, request.ScaleStep);
        var steps = Math.Floor((target / step) + 0.5);
        if (steps * step > most * (1 + Slack))
        {
            steps--;
        }

        var grams = Tidy(steps * step);
        if (grams >= leastSteps * request.ScaleStep * (1 - Slack) && steps >= 1)
        {
            return new(grams, DoseMethod.TopDress, null, AsCan(request, grams), null, [], []);
        }

        if (request.Feed.Dissolves)
        {
            var least = request.ScaleStep * request.Rules["weighable"]["traceSteps"];
            var bottle = Dilution.For(target, target, least);
            return new(Tidy(bottle.Grams * bottle.MillilitresPerPot / bottle.WaterMillilitres), DoseMethod.Can, null, null, bottle, [string.Create(CultureInfo.InvariantCulture, $"{target:0.####} g is too little for a scale of {request.ScaleStep:0.###} g: give it from a pre-dilution.")], []);
        }

        return steps >= 1
            ? new(grams, DoseMethod.TopDress, null, null, null, [], [Small(request, target, "The dose is rough.", Severity.Note)])
            : new(0, DoseMethod.TopDress, null, null, null, [], [Small(request, target, "Nothing is planned.", Severity.Warning)]);
    }

    /// <summary>
    /// The step of the scale, or a larger one of 1, 2, 5, 10 ... steps that changes the dose by a twentieth at most: handier figures, and
    /// pots of nearly the same size come out the same.
    /// </summary>
    internal static double HandyStep(double target, double scaleStep)
    {
        var step = scaleStep;
        for (var decade = scaleStep; ; decade *= 10)
        {
            foreach (var digit in (ReadOnlySpan<int>)[1, 2, 5])
            {
                if (decade * digit > target / 10)
                {
                    return step;
                }

                step = decade * digit;
            }
        }
    }

    private static Problem Small(DoseRequest request, double target, string then, Severity severity) => new(
        "dose " + request.Pot.Id,
        string.Create(CultureInfo.InvariantCulture, $"{target:0.###} g of {request.Feed.Name} is below what a scale of {request.ScaleStep:0.###} g can weigh. {then}"),
        "Use a finer scale, or give twice as much half as often.",
        severity);

    private static Measured? Can(DoseRequest request, double target, double most, double leastSteps)
    {
        var can = AsCan(request, target)!;
        var step = request.ScaleStep;
        var steps = Math.Floor((can.GramsPer10Litres / step) + 0.5);
        var gramsAStep = step / 10 * can.LitresPerPot * can.Waterings;
        if (steps * gramsAStep > most * (1 + Slack))
        {
            steps--;
        }

        return steps < leastSteps
            ? null
            : new(Tidy(steps * gramsAStep), DoseMethod.Can, null, can with { GramsPer10Litres = Tidy(steps * step) }, null, [], []);
    }

    /// <summary>Takes off what binary fractions left in the last places: 0.1 g three times is 0.3 g.</summary>
    private static double Tidy(double grams) => Math.Round(grams, 9);

    /// <summary>The same grams by the can, over as many waterings as keep it within the crop's liquid rate; null when the feed does not dissolve.</summary>
    private static CanDose? AsCan(DoseRequest request, double grams)
    {
        if (!request.Feed.Dissolves)
        {
            return null;
        }

        var litres = request.Pot.Volume.Litres * request.Rules["can-volume"]["litresPerLitre"];
        var milligramsPerLitre = grams * request.Feed.Label[Nutrient.N] * 1000 / litres;
        var ceiling = FeederRates.Default.LiquidNitrogen(request.Crop).Range.High;
        var waterings = Math.Max(1, (int)Math.Ceiling((milligramsPerLitre / ceiling) - Slack));
        return new(grams / waterings / litres * 10, litres, waterings);
    }
}
