using Ashery.Blending.Amounts;
using Ashery.Problems;
using Ashery.Solutions.Acids;

namespace Ashery.Solutions.Targets;

/// <summary>Says how well the target is met, and what stands in the way.</summary>
internal static class TargetVerdict
{
    // Our own choice: within a fiftieth is met, beyond a tenth is not.
    private const double Near = 0.02, Far = 0.1;

    public static TargetAnswer Of(TargetModel model, TargetState? state, List<TargetRecipe> recipes, bool proved, List<Problem> notes)
    {
        var request = model.Request;
        var excess = Excess(model);
        Problem? outOfReach = null;
        if (state is null)
        {
            outOfReach = TargetBlame.Limits(model);
            if (TargetBlame.WithoutLimits(model) is { } nearest)
            {
                recipes.Add(nearest);
            }
        }

        foreach (var e in excess)
        {
            notes.Add(new(e.Item.Symbol,
                FormattableString.Invariant($"The water alone brings {e.Water:0.#} mg/L {e.Item.Symbol}; {e.Most:0.#} is the most that is wished."),
                FormattableString.Invariant($"Replace {Math.Ceiling(e.Replace * 100):0} % of the water by rain or demineralised water, or wish for more."), Severity.Warning));
        }

        if (state is not null && recipes.Count > 0)
        {
            var misses = Misses(model, state, recipes[0], excess, notes);
            outOfReach = Untuned(request, state, recipes[0]) ?? misses;
            notes.AddRange(recipes[0].Can.Notes);
            if (recipes[0].Parts.Any(p => p.IsAgent) && request.Agent?.Bottle is { } bottle)
            {
                AcidAdvice.Law(bottle, notes);
            }
        }

        if (request.Target.Ec is not null && recipes.Count > 0 && recipes[0].Tuned)
        {
            notes.Add(new("ec", FormattableString.Invariant($"The wished amounts are taken as proportions; the EC asks for {recipes[0].Strength:0.00} times as much of each."), "Leave the EC out to have the amounts as written.", Severity.Note));
        }

        return new()
        {
            Request = request,
            Recipes = recipes,
            Proved = proved,
            Bound = state?.Answer.Bound is { } bound ? Math.Max(0, (double)bound) : null,
            WaterExceeds = excess,
            OutOfReach = outOfReach,
            Problems = notes,
            Assumed = [.. Assumed(request, recipes)],
        };
    }

    private static List<WaterExcess> Excess(TargetModel model)
    {
        var excess = new List<WaterExcess>();
        foreach (var wish in model.Request.Target.Wishes)
        {
            var water = model.Fixed(wish.Item, 0);

            // With an EC the aims are proportions and no figure of the water passes them.
            if (!wish.OfNitrogen && water > wish.High * 1.001 && !(wish.IsAim && model.Request.Target.Ec is not null))
            {
                excess.Add(new(wish.Item, water, wish.High));
            }
        }

        return excess;
    }

    private static Problem? Misses(TargetModel model, TargetState state, TargetRecipe first, List<WaterExcess> excess, List<Problem> notes)
    {
        var far = new List<string>();
        foreach (var row in first.Rows)
        {
            if (Math.Abs(row.Deviation) <= Near)
            {
                continue;
            }

            var words = FormattableString.Invariant($"{row.Total:0.#} mg/L {row.Item.Symbol} where {Wished(row)} is wished ({row.Deviation * 100:+0;-0} %)");
            if (Math.Abs(row.Deviation) > Far)
            {
                far.Add(words);
            }

            if (!excess.Exists(e => e.Item == row.Item))
            {
                var (why, wayOut) = TargetBlame.Why(model, state, row);
                notes.Add(new(row.Item.Symbol, words + ". " + why, wayOut, Severity.Warning));
            }
        }

        return far.Count == 0 ? null : new("target", $"Out of reach: {string.Join("; ", far)}. The recipe shown is the nearest.", "See the reasons below.", Severity.Warning);
    }

    private static string Wished(TargetRow row) => row.Deviation < 0 ? FormattableString.Invariant($"{row.Low:0.#}") : FormattableString.Invariant($"{row.High:0.#}");

    private static Problem? Untuned(TargetRequest request, TargetState state, TargetRecipe first)
    {
        if (first.Tuned)
        {
            return null;
        }

        // Whole steps move EC and pH a little; before rounding they were met.
        if (request.StepGrams is not null && TargetTuning.IsTuned(request.Target, state.Ec, state.Solution.PH))
        {
            return null;
        }

        if (request.Target.PH is { } pH && Math.Abs(first.PH - pH) > TargetTuning.NearPh)
        {
            return new("ph", state.Dose > 0
                    ? FormattableString.Invariant($"pH {pH:0.0#} cannot be had with {request.Agent!.Material.Name} within the limits; it is {first.PH:0.0#}.")
                    : FormattableString.Invariant($"Without {request.Agent!.Material.Name} the pH is {first.PH:0.0#} already, and it only moves it farther from {pH:0.0#}."),
                request.Agent.Acidity > 0 && state.Dose <= 0 ? "Leave the acid out, or raise the pH with potassium bicarbonate." : "Take another acid or base, or other limits.", Severity.Warning);
        }

        return new("ec", first.Ec25 > request.Target.Ec
                ? FormattableString.Invariant($"EC {request.Target.Ec:0.0#} mS/cm is less than water{(request.Agent is null ? "" : " and acid")} and limits alone come to, {first.Ec25:0.0#}.")
                : FormattableString.Invariant($"EC {request.Target.Ec:0.0#} mS/cm cannot be reached within the limits; it is {first.Ec25:0.0#}."),
            "Ask for another EC, or change the limits or the water.", Severity.Warning);
    }

    private static IEnumerable<string> Assumed(TargetRequest request, List<TargetRecipe> recipes)
    {
        yield return "Amounts are for a litre of water added, taken as a kilogram; crystal water makes a feed weaker by less than a thousandth.";
        foreach (var part in recipes.Count > 0 ? recipes[0].Parts : [])
        {
            foreach (var said in part.Material.Assumed)
            {
                yield return said;
            }
        }

        if (request.Offers.Any(o => o.PricePerKg is null) && request.Offers.Any(o => o.PricePerKg is not null))
        {
            yield return "A price is missing, so that the fewest grams and not the cost decide between equals.";
        }
    }
}
