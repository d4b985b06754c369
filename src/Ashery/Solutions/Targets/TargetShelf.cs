using Ashery.Materials;
using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>What of a shelf goes into the can.</summary>
public static class TargetShelf
{
    /// <summary>Offers of a search from those of a shelf; what does not dissolve clear is left out, with the reason as a note.</summary>
    public static (IReadOnlyList<TargetOffer> Offers, IReadOnlyList<Problem> LeftOut) Of(IReadOnlyList<Offer> shelf)
    {
        var offers = new List<TargetOffer>();
        var leftOut = new List<string>();
        foreach (var offer in shelf)
        {
            var made = MaterialInWater.OfBag(offer.Material);
            if (made.Ok && made.Value.Behaviour == WaterBehaviour.Clear && offer.Stock is not { Grams: <= 0 })
            {
                offers.Add(new(made.Value, offer.PricePerKg, offer.Stock?.Grams));
            }
            else
            {
                leftOut.Add(offer.Material.Name);
            }
        }

        return (offers, leftOut.Count == 0 ? [] :
        [
            new("shelf", $"Left out, since they do not dissolve clear or none is left: {string.Join(", ", leftOut)}.", "Name materials yourself to have others.", Severity.Note),
        ]);
    }
}
