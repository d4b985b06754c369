using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>For each warning of the first blend, the best blend that avoids it.</summary>
internal static class Alternatives
{
    /// <summary>How many more materials than asked for an alternative may use before there is said to be none.</summary>
    private const int MoreMaterials = 2;

    /// <summary>Alternatives by the warning's field; a warning that no blend avoids is said among <paramref name="notes"/>.</summary>
    public static IReadOnlyDictionary<string, Recipe> Of(Kitchen kitchen, Recipe first, List<Problem> notes)
    {
        var instead = new Dictionary<string, Recipe>(StringComparer.Ordinal);
        foreach (var note in first.Notes.Where(static n => n.Severity is Severity.Warning))
        {
            if (Avoiding(note.Field, kitchen.Request) is not { } request)
            {
                continue;
            }

            if (Best(kitchen, request, first) is { } recipe)
            {
                instead[note.Field] = recipe;
            }
            else
            {
                notes.Add(new Problem(note.Field, "No blend of these materials avoids this warning.", Sources(note.Field), Severity.Note));
            }
        }

        return instead;
    }

    private static string Sources(string field) => field switch
    {
        RecipeNotes.ChlorideField => "Add a potassium source without chloride, such as potassium-sulfate.",
        RecipeNotes.AmmoniacalField => "Add a nitrate, such as potassium-nitrate.",
        RecipeNotes.CalciumField => "Add a calcium source, such as gypsum, or give calcium nitrate apart.",
        _ => "Add a magnesium source, such as kieserite or epsom-salt.",
    };

    private static MixRequest? Avoiding(string field, MixRequest request)
    {
        var limits = request.Limits;
        return field switch
        {
            RecipeNotes.ChlorideField => request with { Limits = limits with { Chloride = WarningThresholds.Chloride } },
            RecipeNotes.AmmoniacalField => request with { Limits = limits with { AmmoniacalShareOfNitrogen = WarningThresholds.BalancedAmmoniacal } },
            RecipeNotes.CalciumField => request with { Limits = limits with { PerNitrogen = [.. limits.PerNitrogen, Enough(Nutrient.Ca)] } },
            RecipeNotes.MagnesiumField => request with { Limits = limits with { PerNitrogen = [.. limits.PerNitrogen, Enough(Nutrient.Mg)] } },
            _ => null,
        };
    }

    private static NitrogenShareLimit Enough(Nutrient nutrient) => new(nutrient, WarningThresholds.PerNitrogen(nutrient));

    // The count asked for first; a grower would rather add a material than go without, so a few more after that.
    private static Recipe? Best(Kitchen kitchen, MixRequest request, Recipe first)
    {
        var most = Math.Min(request.AtMost + MoreMaterials, RequestCheck.MostMaterials);
        for (var atMost = request.AtMost; atMost <= most; atMost++)
        {
            var other = kitchen.For(request with { AtMost = atMost, Best = 1, Draws = 0, Rank = RankBy.TypicalAnalysis });
            // In free amounts first: that is quick, and whole steps only come where there is something to step to.
            if (other.Best() is { } free && Reach.IsUseful(free, first, request.Wish)
                && other.Measured() is { Recipes: [var best, ..] } && Reach.IsUseful(best, first, request.Wish))
            {
                return best;
            }

            if (other.Model.Offers.Count <= atMost)
            {
                break;
            }
        }

        return null;
    }
}
