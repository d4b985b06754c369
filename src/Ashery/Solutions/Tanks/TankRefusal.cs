using Ashery.Problems;

namespace Ashery.Solutions.Tanks;

/// <summary>What a request for tanks can get wrong.</summary>
internal static class TankRefusal
{
    public static IReadOnlyList<Problem> Of(TankRequest request)
    {
        var wrong = new List<Problem>();
        if (request.Feed.Count == 0)
        {
            wrong.Add(new("add", "No material is named.", "Name each with its grams in a litre of feed, as in potassium-nitrate=0.5."));
        }

        if (request.Feed.Count > TankSplit.MostMaterials)
        {
            wrong.Add(new("add", FormattableString.Invariant($"{request.Feed.Count} materials are more than the {TankSplit.MostMaterials} whose every split is looked through."), "Weigh the trace elements together as one mix, and give that apart."));
        }

        foreach (var (material, grams) in request.Feed)
        {
            if (!(grams > 0 && grams <= 50))
            {
                wrong.Add(new(
                    $"add {material.Id}", FormattableString.Invariant($"{grams} g/L is not an amount in a feed: it is above 0 and at most 50 g a litre."),
                    "Give grams in a litre of the feed that reaches the pots, not of the stock."));
            }
        }

        foreach (var twice in request.Feed.GroupBy(static m => m.Material.Id, StringComparer.Ordinal).Where(static g => g.Count() > 1))
        {
            wrong.Add(new($"add {twice.Key}", $"{twice.Key} is named twice.", "Add the grams up and name it once."));
        }

        if (!(request.Ratio >= 1 && request.Ratio <= TankSplit.MostRatio))
        {
            wrong.Add(new("ratio", FormattableString.Invariant($"1:{request.Ratio:0.##} is not the ratio of an injector."), FormattableString.Invariant($"Write 1:1 to 1:{TankSplit.MostRatio:0}, as in 1:100.")));
        }

        if (request.Tanks is < 1 or > TankSplit.MostTanks)
        {
            wrong.Add(new("tanks", FormattableString.Invariant($"{request.Tanks} tanks cannot be planned for."), FormattableString.Invariant($"Give 1 to {TankSplit.MostTanks}.")));
        }

        if (!(request.Coldest >= Speciation.Coldest && request.Coldest <= Speciation.Warmest))
        {
            wrong.Add(new("coldest", FormattableString.Invariant($"{request.Coldest:0.#} °C is outside 0 to 40 °C."), "Give the coldest night the tanks see, as in 5."));
        }

        return wrong;
    }
}
