using System.Globalization;
using Ashery.Crops;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Pots;

/// <summary>
/// Trace elements: a part of what a season may bring, set by whichever element is nearest its cap, so that none passes it.
/// </summary>
internal static class TraceDosing
{
    public static Dose For(DoseRequest request)
    {
        var rules = request.Rules;
        var litres = request.Pot.Volume.Litres;
        var share = rules["trace-share"].IsOn ? rules["trace-share"]["share"] : 1;
        var stage = PlantAge.FactorOn(request.Pot, request.On, rules);
        List<string> reasons = [];
        List<Problem> notes = [];
        var wanted = double.PositiveInfinity;
        GrowingRule? binding = null;
        foreach (var (nutrient, ruleId) in DoseCaps.TraceCaps)
        {
            var content = request.Feed.Label[nutrient];
            var grams = content > 0 ? rules[ruleId]["milligramsPerLitre"] / 1000 * share * litres / content : double.PositiveInfinity;
            if (grams < wanted)
            {
                wanted = grams;
                binding = rules[ruleId];
            }
        }

        if (binding is null)
        {
            wanted = 0;
            notes.Add(new("feed " + request.Feed.Id, $"{request.Feed.Name} holds no trace element with a known cap.", "Check its label: Fe, Mn, Zn, Cu, B or Mo in percent."));
        }
        else
        {
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"{share:0.##} of a season's most, set by {binding.Id}: {binding.Statement}"));
        }

        wanted *= stage.Value;
        if (stage.Value < 1)
        {
            reasons.Add(stage.Words);
        }

        foreach (var factor in request.Factors.Where(static f => f.Value < 1))
        {
            wanted *= factor.Value;
            reasons.Add(factor.Words);
        }

        var most = DoseLimits.Smallest(request, reasons, wanted);
        var measured = Measuring.Take(request, Math.Min(wanted, most), most, "traceSteps");
        var n = measured.Grams * request.Feed.Label[Nutrient.N] / litres;
        return new Dose
        {
            PotId = request.Pot.Id,
            FeedId = request.Feed.Id,
            Grams = measured.Grams,
            WantedGrams = wanted,
            Method = measured.Method,
            Can = measured.Can,
            Predilution = measured.Predilution,
            LimeGrams = request.Feed.LimeEquivalent is { } lime ? lime * measured.Grams : null,
            NitrogenPerLitreMonth = n,
            NitrogenPerLitreSeason = n,
            RateBand = RateBands.Of(n),
            Reasons = [.. reasons, .. measured.Reasons],
            Notes = [.. notes, .. measured.Notes],
        };
    }
}
