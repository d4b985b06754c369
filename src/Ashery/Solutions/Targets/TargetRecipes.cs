using Ashery.Blending.Amounts;
using Ashery.Problems;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>From amounts to what the grower gets: grams, shares by nutrient, and the can.</summary>
internal static class TargetRecipes
{
    public static Result<TargetRecipe> Make(TargetModel model, int[] members, AmountBlend blend, TargetState state, TargetTuning tuning)
    {
        var request = model.Request;
        var parts = new List<TargetPart>();
        for (var k = 0; k < members.Length; k++)
        {
            var grams = blend.Masses[k] * request.Litres;
            parts.Add(new(request.Offers[members[k]].Material, blend.Masses[k], grams, null, false, request.StepGrams is { } step ? (int)Math.Round(grams / step) : null));
        }

        parts.Sort(static (a, b) => b.GramsPerLitre.CompareTo(a.GramsPerLitre));
        if (request.Agent is { } agent && state.Dose > 0)
        {
            parts.Add(new(agent.Material, state.Dose, state.Dose * request.Litres, agent.Millilitres(state.Dose * request.Litres), true));
        }

        if (parts.Count == 0)
        {
            return Result.Fail<TargetRecipe>("target", "The water alone comes nearest: nothing of these materials brings it nearer to the target.",
                "Take a softer water, other materials or a stronger target.");
        }

        var can = TargetSearch.Can(request, Together(parts));
        var dissolved = CanMaker.Dissolve(can);
        if (!dissolved.Ok)
        {
            return Result.Fail<TargetRecipe>(dissolved.Problems);
        }

        var becomes = CanState.Of(dissolved.Value);
        return Result.Of(new TargetRecipe
        {
            Parts = parts,
            Rows = Rows(request, parts, state.Strength),
            Error = blend.Error,
            LargestDeviation = blend.LargestDeviation,
            Strength = state.Strength,
            State = becomes,
            Made = new(() => CanMaker.Make(can).Value!),
            Tuned = TargetTuning.IsTuned(request.Target, becomes.Ec25, becomes.PH),
            Solutions = tuning.Solutions,
            AcidCautions = parts.Exists(p => p.IsAgent) && request.Agent?.Bottle is { } bottle ? AcidAdvice.Cautions(bottle.Acid) : [],
            CostPerLitre = Cost(request, members, blend.Masses),
        });
    }

    // A material may be an offer and the agent too; the can takes each once.
    private static List<(MaterialInWater Material, double Grams)> Together(List<TargetPart> parts)
    {
        var together = new List<(MaterialInWater Material, double Grams)>();
        foreach (var part in parts)
        {
            var at = together.FindIndex(t => t.Material.Id == part.Material.Id);
            if (at >= 0)
            {
                together[at] = (part.Material, together[at].Grams + part.GramsPerLitre);
            }
            else
            {
                together.Add((part.Material, part.GramsPerLitre));
            }
        }

        return together;
    }

    private static List<TargetRow> Rows(TargetRequest request, List<TargetPart> parts, double strength)
    {
        var rows = new List<TargetRow>();
        double[] nitrogen = [];
        foreach (var item in TargetItem.All)
        {
            var water = 1000 * item.Grams(request.Water.Totals);
            var byPart = parts.Select(p => 1000 * p.GramsPerLitre * item.Content(p.Material)).ToArray();
            var total = water + byPart.Sum();
            nitrogen = item.Symbol == "N" ? [total] : nitrogen;
            var wish = request.Target.Wishes.FirstOrDefault(w => w.Item == item);
            if (wish is not null || total > 0)
            {
                var scale = wish is { IsAim: true } ? strength : wish is { OfNitrogen: true } ? nitrogen[0] : 1;
                rows.Add(new(item, wish, wish is null ? 0 : wish.Low * scale, wish is null ? double.PositiveInfinity : wish.High * scale, water, byPart, total));
            }
        }

        return rows;
    }

    private static double? Cost(TargetRequest request, int[] members, IReadOnlyList<double> masses)
    {
        double? cost = 0;
        for (var k = 0; k < members.Length; k++)
        {
            cost += request.Offers[members[k]].PricePerKg / 1000 * masses[k];
        }

        return cost;
    }
}
