using Ashery.Compatibility;
using Ashery.Recipes;

namespace Ashery.Cards.Wording;

/// <summary>Which pairs of the mix are not simply fine, and why.</summary>
internal static class PairWords
{
    /// <summary>One sentence a judgement: stops first, then limits, then what nobody published.</summary>
    public static IReadOnlyList<string> Lines(RecipeCardRequest request)
    {
        var names = request.Recipe.Parts.ToDictionary(p => p.Material.Id, p => p.Material.Name, StringComparer.Ordinal);
        var found = new List<(Verdict Verdict, string Line)>();
        foreach (var pair in request.Recipe.Pairs)
        {
            foreach (var (how, judgement) in Uses(pair, request.Use))
            {
                if (judgement.Verdict != Verdict.Fine)
                {
                    var limit = judgement.Limit is { Length: > 0 } l ? $" Limit: {l.TrimEnd('.')}." : "";
                    found.Add((judgement.Verdict, $"{Name(names, pair.A)} with {Name(names, pair.B)}, {how}: {Word(judgement.Verdict)}. {judgement.Reason.TrimEnd('.')}.{limit}"));
                }
            }
        }

        Verdict[] order = [Verdict.Stop, Verdict.Limited, Verdict.Unknown];
        return [.. order.SelectMany(v => found.Where(f => f.Verdict == v).Select(f => f.Line))];
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

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Stop => "do not",
        Verdict.Limited => "limited",
        Verdict.Unknown => "not known",
        _ => "fine",
    };

    private static string Name(Dictionary<string, string> names, string id) => names.GetValueOrDefault(id, id);
}
