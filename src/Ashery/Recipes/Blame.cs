using Ashery.Blending;

namespace Ashery.Recipes;

/// <summary>Names the limits that leave no blend at all, and finds the nearest blend without them.</summary>
internal static class Blame
{
    public static (string Why, Recipe? Nearest) Of(Kitchen kitchen)
    {
        var request = kitchen.Request with { Best = 1 };
        var wide = kitchen.For(request with { Limits = new MixLimits { Use = request.Limits.Use }, Batch = null, Measuring = new Measuring.Freely() });
        var nearest = wide.Best();
        if (nearest is null)
        {
            return (NothingWanted(kitchen), null);
        }

        var dropped = new List<string>();
        Recipe? first = null;
        foreach (var (name, without) in LimitVariants.Without(request))
        {
            if (kitchen.For(without).Best() is { } recipe)
            {
                dropped.Add($"\"{name}\"");
                first ??= recipe;
            }
        }

        return dropped.Count > 0
            ? ($"No blend of these materials keeps every limit; with {Say.Any(dropped)} dropped there is one.", first)
            : (Together(kitchen), nearest);
    }

    // No one limit is to blame: name some that cannot hold together.
    private static string Together(Kitchen kitchen)
    {
        var rows = MixRows.Of(kitchen.Request, kitchen.Model.Sieved);
        var search = kitchen.Model.Open(rows);
        var conflict = kitchen.Model.Sieved.Count > 0 ? BlendSearch.Conflict(search).Conflict : [];
        return conflict.Count > 0
            ? $"No blend of these materials keeps every limit, and dropping one is not enough; among them {Say.List([.. conflict.Select(r => search.Rows[r].Name)])} cannot hold together."
            : "No blend of these materials keeps every limit, and dropping one of them is not enough.";
    }

    private static string NothingWanted(Kitchen kitchen)
    {
        var wish = kitchen.Request.Wish;
        var wanted = Wanted.Of(wish);
        if (kitchen.Request.Offers.All(o => wanted.Held(o.Material.Label) <= 0))
        {
            return $"None of these materials holds any nutrient of {wish.Name}.";
        }

        return kitchen.Model.LeftOut.Count > 0
            ? $"No material can be used: {Say.List([.. kitchen.Model.LeftOut.Take(5).Select(static l => $"{l.Offer.Material.Id} ({l.Reason})")])}."
            : "No blend of these materials is safe to make for this use.";
    }
}
