using Ashery.Blending.Amounts;
using Ashery.Problems;

namespace Ashery.Solutions.Targets;

/// <summary>Why a target cannot be met.</summary>
internal static class TargetBlame
{
    /// <summary>The limits that leave no amounts.</summary>
    public static Problem Limits(TargetModel model)
    {
        var request = model.Request;
        var named = new List<string>();
        foreach (var wish in request.Target.Wishes)
        {
            var without = request with { Target = request.Target with { Wishes = [.. request.Target.Wishes.Where(w => w != wish)], Ec = null, PH = null } };
            if (!wish.IsAim && AmountSearch.Find(new TargetModel(without).Search(1, 0)).Blends.Count > 0)
            {
                named.Add(wish.Words);
            }
        }

        return new("target", named.Count > 0
                ? $"No amounts of these materials keep every limit; without {string.Join(" or ", named)} there are some."
                : "No amounts of these materials keep every limit, and leaving out one of them is not enough.",
            "The recipe shown is the nearest without limits.", Severity.Warning);
    }

    /// <summary>The recipe without any limit.</summary>
    public static TargetRecipe? WithoutLimits(TargetModel model)
    {
        var open = new TargetModel(model.Request with
        {
            Target = model.Request.Target with { Wishes = [.. model.Request.Target.Wishes.Where(w => w.IsAim)] },
            Offers = [.. model.Request.Offers.Select(o => o with { StockGrams = null, MostGramsPerLitre = null })],
        });
        var tuning = new TargetTuning(open);
        return tuning.Run() is { } state && TargetRecipes.Make(model, [.. state.Blend.Members], state.Blend, state, tuning) is { Ok: true } made ? made.Value : null;
    }

    /// <summary>Why one nutrient is missed, and what to do.</summary>
    public static (string Why, string WayOut) Why(TargetModel model, TargetState state, TargetRow row)
    {
        var request = model.Request;
        if (row.Total > row.High && model.Fixed(row.Item, state.Dose) > row.High)
        {
            return ($"{request.Agent?.Material.Name} brings it for the pH.", "Take another acid, a higher pH or a water with less alkalinity.");
        }

        if (row.Total < row.Low && request.Offers.All(o => row.Item.Content(o.Material) <= 0))
        {
            return ("None of the materials holds any.", $"Add one that holds {row.Item.Name}.");
        }

        var wide = AmountSearch.Find(model.Search(state.Strength, state.Dose) with { AtMost = Math.Max(1, request.Offers.Count) });
        if (wide.Blends.Count > 0 && wide.Blends[0].Error < state.Blend.Error - 0.005)
        {
            return (FormattableString.Invariant($"With {wide.Blends[0].Members.Count} materials the error would be {wide.Blends[0].Error * 100:0.0} % instead of {state.Blend.Error * 100:0.0} %."),
                FormattableString.Invariant($"Allow {wide.Blends[0].Members.Count} materials."));
        }

        return row.Total > row.High
            ? ("It comes along with the others.", $"Add a material that brings them without {row.Item.Name}.")
            : ("More of it would bring too much of the others.", $"Add a material that holds {row.Item.Name} with less besides.");
    }
}
