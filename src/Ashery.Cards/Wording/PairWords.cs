using Ashery.Compatibility;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>Which pairs of the mix are not simply fine, and why.</summary>
internal static class PairWords
{
    /// <summary>One line a judgement: stops first, then limits; what nobody published in one line a use.</summary>
    public static IReadOnlyList<string> Lines(RecipeCardRequest request)
    {
        var names = request.Recipe.Parts.ToDictionary(p => p.Material.Id, p => p.Material.Name, StringComparer.Ordinal);
        var stops = new List<string>();
        var limits = new List<string>();
        var unknown = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var pair in request.Recipe.Pairs)
        {
            var both = $"{Name(names, pair.A)} with {Name(names, pair.B)}";
            foreach (var (how, judgement) in Uses(pair, request.Use))
            {
                if (judgement.Verdict == Verdict.Unknown)
                {
                    unknown.TryAdd(how, []);
                    unknown[how].Add(both);
                }
                else if (judgement.Verdict != Verdict.Fine)
                {
                    var limit = judgement.Limit is { Length: > 0 } l ? $" Limit: {l.TrimEnd('.')}." : "";
                    var isStop = judgement.Verdict == Verdict.Stop;
                    (isStop ? stops : limits).Add($"{both}, {how}: {(isStop ? "do not" : "limited")}. {judgement.Reason.TrimEnd('.')}.{limit}");
                }
            }
        }

        return [.. stops, .. limits, .. unknown.Select(u => $"Not known {u.Key}, nothing published says: {string.Join("; ", u.Value)}.")];
    }

    public static IEnumerable<string> Sources(RecipeCardRequest request) =>
        request.Recipe.Pairs.SelectMany(p => Uses(p, request.Use)).Where(u => u.Judgement.Verdict is Verdict.Limited or Verdict.Stop).Select(u => u.Judgement.Source);

    /// <summary>A dry mix may still be dissolved in the can, so the solution is always judged too.</summary>
    private static IEnumerable<(string How, Judgement Judgement)> Uses(PairVerdict pair, BlendUse use)
    {
        if (use == BlendUse.DryToday)
        {
            yield return ("mixed dry today", pair.DryToday);
        }
        else if (use == BlendUse.DryStored)
        {
            yield return ("mixed dry and stored", pair.DryStored);
        }

        yield return ("in concentrated solution", pair.InSolution);
    }

    private static string Name(Dictionary<string, string> names, string id) => names.GetValueOrDefault(id, id);
}
