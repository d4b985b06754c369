using Ashery.Blending;

namespace Ashery.Recipes;

/// <summary>The best blends in whole steps of a scale or whole scoops.</summary>
internal static class WholeSteps
{
    public static Found Find(Kitchen kitchen, BlendRequest search)
    {
        var request = kitchen.Request;
        var batch = request.Batch!;
        var steps = kitchen.Model.Offers.Select(o => StepGrams(request.Measuring, o)).ToList();
        var found = PlainSteps.WholeSteps(search, steps, batch.From.Grams, batch.To.Grams);
        var inScoops = request.Measuring is Measuring.ByScoop;
        return new Found([.. found.Select(b => kitchen.Make(b.Blend, b.Grams, inScoops ? b.Steps : null))], Proved: true, Gap: 0);
    }

    private static double StepGrams(Measuring measuring, Materials.Offer offer) => measuring switch
    {
        Measuring.ByScale scale => scale.Step.Grams,
        Measuring.ByScoop scoop => ScoopMass.Of(scoop.Scoop, offer.Material)!.Value.Typical,
        _ => throw new ArgumentOutOfRangeException(nameof(measuring), "Free amounts have no step."),
    };
}
