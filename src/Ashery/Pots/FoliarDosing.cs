using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Pots;

/// <summary>A spray: its strength by the rule for magnesium and the ceiling of each salt in it, its amount by the size of the pot.</summary>
internal static class FoliarDosing
{
    // Mg in magnesium sulfate heptahydrate: 24.305 / 246.47 (atomic weights). The rule's strength is in g of that salt.
    private const double MagnesiumInEpsom = 24.305 / 246.47;

    private static readonly (string MaterialPrefix, string RuleId)[] Ceilings =
    [
        ("epsom-salt", "spray-epsom"), ("urea", "spray-urea"), ("potassium-nitrate", "spray-potassium-nitrate"),
        ("calcium-chloride", "spray-calcium-chloride"), ("iron-", "spray-iron-chelate"), ("zinc-", "spray-zinc-manganese"),
        ("manganese-", "spray-zinc-manganese"), ("borax", "spray-borax"), ("boric", "spray-borax"), ("sodium-tetraborate", "spray-borax"),
        ("disodium-octaborate", "spray-borax"),
    ];

    public static Dose For(DoseRequest request)
    {
        var rule = request.Rules["foliar-magnesium"];
        var magnesium = request.Feed.Label[Nutrient.Mg];
        List<string> reasons = [rule.Statement];
        List<Problem> notes = [];
        var strength = magnesium > 0 ? rule["gramsPerLitre"] * MagnesiumInEpsom / magnesium : rule["gramsPerLitre"];
        foreach (var (material, share) in request.Feed.Parts)
        {
            foreach (var (prefix, ruleId) in Ceilings)
            {
                if (!material.StartsWith(prefix, StringComparison.Ordinal) || !request.Rules[ruleId].IsOn)
                {
                    continue;
                }

                var most = request.Rules[ruleId]["gramsPerLitre"] / share;
                if (ruleId == "spray-borax")
                {
                    most = 0;
                    notes.Add(new("feed " + request.Feed.Id, request.Rules[ruleId].Statement, "Leave borates out of leaf sprays; drench them, weighed and diluted."));
                }

                if (most < strength)
                {
                    strength = most;
                    reasons.Add(request.Rules[ruleId].Statement);
                }
            }
        }

        var stage = PlantAge.StageOn(request.Pot, request.On, request.Rules);
        var millilitres = stage == PlantStage.Dormant ? 0 : Math.Min(1000, rule["millilitresPerLitreOfPot"] * request.Pot.Volume.Litres);
        var grams = strength * millilitres / 1000;
        foreach (var factor in request.Factors.Where(static f => f.Value < 1))
        {
            grams *= factor.Value;
            strength *= factor.Value;
            reasons.Add(factor.Words);
        }

        var n = request.Feed.Label[Nutrient.N] * grams / request.Pot.Volume.Litres;
        return new Dose
        {
            PotId = request.Pot.Id,
            FeedId = request.Feed.Id,
            Grams = grams,
            WantedGrams = grams,
            Method = DoseMethod.Spray,
            Spray = grams > 0 ? new(strength, millilitres) : null,
            LimeGrams = request.Feed.LimeEquivalent is { } lime ? lime * grams : null,
            NitrogenPerLitreMonth = n,
            NitrogenPerLitreSeason = n,
            RateBand = RateBands.Of(n),
            Reasons = reasons,
            Notes = notes,
        };
    }
}
