using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>
/// Reads limits as a grower writes them on the command line or in a page's field. The grammar is
/// <see cref="Grammar"/>; <see cref="LimitWriter"/> writes limits back in the same words.
/// </summary>
public static class LimitReader
{
    /// <summary>The grammar, for help and documents.</summary>
    public const string Grammar =
        """
        limits    = limit { ";" limit }
        limit     = share | content | figure | material | without | flag | use
        share     = ( "urea" | "ammoniacal" ) "<=" amount        part of the nitrogen; ammoniacal is ammonium with urea
        content   = ( "chloride" | nutrient ) sign amount        part of the blend; P2O5 and K2O as a label prints them, P, K and the rest as elements
        figure    = "salt-index" "<=" number                     by weight, sodium nitrate = 100
                  | "acidity" "<=" number                        kg CaCO3 a kg of blend; positive acidifies
                  | "cost" "<=" number                           a kg of blend, in the currency of the prices
                  | "strength" ">=" amount                       N + P2O5 + K2O
        material  = "material" id sign amount                    part of the blend
        without   = "without" id { "," id }
        flag      = "organic-only" | "soluble-only"
        use       = "use" "=" ( "dry-today" | "dry-stored" | "dissolved" )
        sign      = "<=" | ">="                                  also written as < > or as one sign
        amount    = number ( "%" | "g/kg" | "mg/kg" | "ppm" )
        nutrient  = N, P2O5, K2O, P, K, Ca, CaO, Mg, MgO, S, SO3, Fe, Mn, Zn, Cu, B, Mo, Cl, Na
        """;

    /// <summary>Longest text worth reading.</summary>
    private const int LongestText = 2000;

    /// <summary>Limits from one text, apart by semicolons.</summary>
    public static Result<MixLimits> Parse(string? text) => Parse(text is null ? [] : [text]);

    /// <summary>Limits from several texts, such as a repeated <c>--limit</c>; each is given once.</summary>
    public static Result<MixLimits> Parse(IReadOnlyList<string> texts)
    {
        var draft = new LimitDraft();
        var problems = new List<Problem>();
        foreach (var text in texts)
        {
            if (text.Length > LongestText)
            {
                problems.Add(new Problem("limit", $"The text is longer than {LongestText} signs.", "Give limits one at a time."));
                continue;
            }

            foreach (var clause in text.Split([';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                if (LimitClause.Read(clause, draft) is { } problem)
                {
                    problems.Add(problem);
                }
            }
        }

        if (problems.Count == 0)
        {
            problems.AddRange(draft.Contradictions());
        }

        return problems.Count > 0 ? Result.Fail<MixLimits>(problems) : Result.Of(draft.ToLimits());
    }
}
