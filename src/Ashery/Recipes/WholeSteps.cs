using Ashery.Blending;

namespace Ashery.Recipes;

/// <summary>The best blends in whole steps of a scale or whole scoops.</summary>
internal static class WholeSteps
{
    public static Found Find(Kitchen kitchen, BlendRequest search)
    {
        var request = kitchen.Request;
        var batch = request.Batch!;
        var steps = kitchen.Model.Offers.Select(o => StepGrams(request.Measuring, o)).ToArray();
        var answer = WholeStepSearch.Find(new WholeStepRequest
        {
            Blend = search,
            StepGrams = steps,
            FromGrams = batch.From.Grams,
            ToGrams = batch.To.Grams,
        });
        var inScoops = request.Measuring is Measuring.ByScoop;
        var recipes = answer.Blends.Select(b => kitchen.Make(b.Blend, b.Grams, inScoops ? b.Steps : null)).ToList();
        return LikelySpread.Rank(kitchen, new Found(recipes, answer.Proved, answer.Gap), [.. answer.Blends.Select(static b => b.Blend)]);
    }

    private static double StepGrams(Measuring measuring, Materials.Offer offer) => measuring switch
    {
        Measuring.ByScale scale => scale.Step.Grams,
        Measuring.ByScoop scoop => ScoopMass.Of(scoop.Scoop, offer.Material)!.Value.Typical,
        _ => throw new ArgumentOutOfRangeException(nameof(measuring), "Free amounts have no step."),
    };
}
