using System.Numerics;
using Ashery.Problems;

namespace Ashery.Solutions.Tanks;

/// <summary>
/// All splits of whole materials over the tanks, by branch and bound. A tank is clear at a ratio when all of it is and when each pair in it
/// would be: salts go in one after the other, and a tank that only a third salt keeps clear is not one to rely on. With that the lowest
/// limit of the pairs bounds a tank from above, exactly, and a branch is cut as soon as it is no better than the best split found.
/// </summary>
internal sealed class TankSearch
{
    // Of splits within one percent of each other the one with the more even load is taken.
    private const double AsGood = 0.99;

    private readonly TankRequest request;
    private readonly TankRatios ratios;
    private readonly int n;
    private readonly int[] order;
    private readonly Dictionary<int, bool> asAsked = [];
    private int[] best = [];
    private int[] byRules = [];
    private double bestLoad = double.PositiveInfinity;
    private double top;

    public TankSearch(TankRequest request)
    {
        this.request = request;
        ratios = new(request);
        n = request.Feed.Count;
        order = [.. Enumerable.Range(0, n).OrderBy(Freedom)];
        RatioInOne = ratios.RatioOf(ratios.Full((1 << n) - 1), TankSplit.MostRatio);
        Conflict = TooFew();
        if (Conflict is null)
        {
            Walk(0, new int[request.Tanks], 0, TankSplit.MostRatio);
            Shares = [.. (best.Length > 0 ? best : byRules).Where(static mask => mask != 0).Select(ratios.Full)];
            var (ratio, shares, divided) = new TankDivision(request, ratios).Of(Ratio, Shares);
            RatioDivided = divided ? ratio : null;

            // One more thing to weigh is asked of a grower only where the whole materials do not do.
            if (divided && Ratio * TankSplit.Margin < request.Ratio && WithTheRatioAsked(shares, ratio) > Ratio)
            {
                (Ratio, Shares, Divided) = (ratio, shares, true);
            }
        }
    }

    /// <summary>Why no split can be: a pair that nothing keeps apart. Null when there is one.</summary>
    public Problem? Conflict { get; }

    public double Ratio { get; private set; }

    public double RatioInOne { get; }

    /// <summary>Highest ratio with a material in two tanks; null where that gains nothing.</summary>
    public double? RatioDivided { get; }

    public TankRatios Ratios => ratios;

    public TankJudge Judge => ratios.Judge;

    /// <summary>By tank, the share of each material.</summary>
    public IReadOnlyList<double[]> Shares { get; private set; } = [];

    public int Judged { get; private set; }

    public bool Divided { get; private set; }

    /// <summary>Splits of n materials over at most k tanks that are all alike: Stirling numbers of the second kind, summed.</summary>
    public static double Splits(int n, int k)
    {
        var ways = new double[k + 1];
        ways[0] = 1;
        for (var i = 0; i < n; i++)
        {
            for (var j = k; j >= 1; j--)
            {
                ways[j] = (j * ways[j]) + ways[j - 1];
            }

            ways[0] = 0;
        }

        return ways.Sum();
    }

    // Materials with the most and hardest conflicts are placed first, so that hopeless branches end early.
    private double Freedom(int i)
    {
        var sum = 0.0;
        for (var j = 0; j < n; j++)
        {
            sum += Math.Log(1 + ratios.Pair(i, j));
        }

        return sum;
    }

    private void Walk(int at, int[] masks, int used, double bound)
    {
        if (bound < top * AsGood || (bound <= 0 && top > 0))
        {
            return;
        }

        if (at == n)
        {
            Leaf(masks, bound);
            return;
        }

        var i = order[at];
        for (var t = 0; t < Math.Min(used + 1, request.Tanks); t++)
        {
            var cap = Math.Min(bound, ratios.Pair(i, i));
            for (var rest = masks[t]; rest != 0; rest &= rest - 1)
            {
                cap = Math.Min(cap, ratios.Pair(i, BitOperations.TrailingZeroCount(rest)));
            }

            // A tank that the rules forbid is never an answer, not even where there is no better one.
            if (cap > 0 || (ratios.Pair(i, i) <= 0 && !ratios.Forbidden(i, masks[t])))
            {
                masks[t] |= 1 << i;
                Walk(at + 1, masks, Math.Max(used, t + 1), cap);
                masks[t] &= ~(1 << i);
            }
        }
    }

    private void Leaf(int[] masks, double bound)
    {
        // What is to be clear above the ratio asked is to be clear there too, which does not follow.
        if (bound > request.Ratio && !masks.All(ClearAsAsked))
        {
            bound = request.Ratio;
        }

        // Neither more concentrated than the best nor as good and more even: no need to look closer.
        var load = Load(masks);
        if (bound < top * AsGood)
        {
            return;
        }

        if (best.Length > 0 && bound <= top / AsGood && load >= bestLoad)
        {
            return;
        }

        Judged++;
        foreach (var mask in masks)
        {
            // First the question that ends most of them: is it as good as the best there is?
            if (mask == 0 || bound <= 0)
            {
                continue;
            }

            bound = ratios.Whole(mask, bound, load < bestLoad ? top * AsGood : top / AsGood);
            if (bound <= 0)
            {
                return;
            }
        }

        if (bound > 0 && Wanted())
        {
            bound = ratios.Common([.. masks.Where(static mask => mask != 0).Select(ratios.Full)], bound);
        }

        if (best.Length == 0 || Wanted())
        {
            best = [.. masks];
            bestLoad = load;
            Ratio = bound;
            top = Math.Max(top, bound);
        }

        bool Wanted() => bound > top / AsGood || (bound >= top * AsGood && load < bestLoad);
    }

    private bool ClearAsAsked(int mask)
    {
        if (!asAsked.TryGetValue(mask, out var clear))
        {
            asAsked[mask] = clear = mask == 0 || Judge.IsClear(ratios.Full(mask), request.Ratio);
        }

        return clear;
    }

    // Highest ratio at which all tanks are clear at once. Where it is above the ratio asked they are to be clear there too, which does not
    // follow; else it is the highest below.
    private double WithTheRatioAsked(IReadOnlyList<double[]> tanks, double cap)
    {
        var common = ratios.Common(tanks, cap);
        return common > request.Ratio && ratios.Common(tanks, request.Ratio) is var asked && asked < request.Ratio ? asked : common;
    }

    // Sum of the squares of the grams by tank: least when even.
    private double Load(int[] masks)
    {
        var sum = 0.0;
        foreach (var mask in masks)
        {
            var grams = 0.0;
            for (var rest = mask; rest != 0; rest &= rest - 1)
            {
                grams += request.Feed[BitOperations.TrailingZeroCount(rest)].GramsPerLitre;
            }

            sum += grams * grams;
        }

        return sum;
    }

    private Problem? TooFew()
    {
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                if (ratios.Rule(i, j) is { } rule && request.Tanks == 1)
                {
                    return new("tanks", $"{request.Feed[i].Material.Name} and {request.Feed[j].Material.Name} never share a tank. {rule.Reason}", rule.WayOut);
                }
            }
        }

        // Three or more that the rules keep apart from each other need as many tanks; found by trying all.
        return Rules(0, new int[request.Tanks]) ? null
            : new("tanks", FormattableString.Invariant($"The materials cannot be kept apart in {request.Tanks} tanks: acids, chelates, carbonates and calcium each have partners they must not meet."), "Take one tank more, or leave one of them out of the stocks.");
    }

    private bool Rules(int i, int[] masks)
    {
        if (i == n)
        {
            // Shown where no split is clear at any strength.
            byRules = [.. masks];
            return true;
        }

        for (var t = 0; t < masks.Length; t++)
        {
            if (!ratios.Forbidden(i, masks[t]))
            {
                masks[t] |= 1 << i;
                if (Rules(i + 1, masks))
                {
                    masks[t] &= ~(1 << i);
                    return true;
                }

                masks[t] &= ~(1 << i);
            }
        }

        return false;
    }
}
