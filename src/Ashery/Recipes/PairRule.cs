using Ashery.Compatibility;
using Ashery.Materials;

namespace Ashery.Recipes;

/// <summary>Which of the three judgements of a pair decides for a use.</summary>
public static class PairRule
{
    /// <summary>The judgement that counts for what becomes of the blend.</summary>
    public static Judgement For(PairVerdict pair, BlendUse use) => use switch
    {
        BlendUse.DryToday => pair.DryToday,
        BlendUse.Dissolved => pair.InSolution,
        _ => pair.DryStored,
    };

    /// <summary>
    /// True when the two may not be in one blend. A stored dry blend is also mixed dry, so a stop on the day stops it too.
    /// </summary>
    public static bool Forbids(PairVerdict pair, BlendUse use) =>
        For(pair, use).Verdict is Verdict.Stop || (use is BlendUse.DryStored && pair.DryToday.Verdict is Verdict.Stop);

    /// <summary>The same for two materials, asking the chart only what the use asks: a whole shelf has thousands of pairs.</summary>
    public static bool Forbids(Material a, Material b, BlendUse use, CompatibilityChart chart)
    {
        if (use is BlendUse.Dissolved)
        {
            return Forbids(chart.Judge(a, b), use);
        }

        var (today, stored) = chart.JudgeDry(a, b);
        return today.Verdict is Verdict.Stop || (use is BlendUse.DryStored && stored.Verdict is Verdict.Stop);
    }

    /// <summary>The use in words.</summary>
    public static string Words(BlendUse use) => use switch
    {
        BlendUse.DryToday => "dry today",
        BlendUse.Dissolved => "in solution",
        _ => "dry and stored",
    };
}
