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
    // Ratios are found to half a percent; of splits within one percent the one with the more even load is taken.
    private const double Precision = 1.005;
    private const double AsGood = 0.99;

    // A material in two tanks is one more thing to weigh: only for a twentieth more.
    private const double WorthDividing = 1.05;

    private static readonly int[] Quarters = [2, 1, 3];
    private readonly TankRequest request;
    private readonly TankJudge judge;
    private readonly int n;
    private readonly double[,] pairs;
    private readonly ApartRule?[,] rules;
    private readonly Dictionary<int, Known> tanks = [];
    private readonly int[] order;
    private int[] best = [];
    private double bestLoad = double.PositiveInfinity;
    private double top;

    public TankSearch(TankRequest request)
    {
        this.request = request;
        judge = new(request);
        n = request.Feed.Count;
        pairs = new double[n, n];
        rules = new ApartRule?[n, n];
        Pairs();
        order = [.. Enumerable.Range(0, n).OrderBy(Freedom)];
        RatioInOne = Whole((1 << n) - 1, TankSplit.MostRatio);
        Conflict = TooFew();
        if (Conflict is null)
        {
            Walk(0, new int[request.Tanks], 0, TankSplit.MostRatio);
            Shares = [.. best.Where(static mask => mask != 0).Select(Full)];
            if (Shares.Count == 0)
            {
                Shares = [Full((1 << n) - 1)];
            }

            Divide();
        }
    }

    /// <summary>Why no split can be: a pair that nothing keeps apart. Null when there is one.</summary>
    public Problem? Conflict { get; }

    public double Ratio { get; private set; }

    public double RatioInOne { get; }

    public TankJudge Judge => judge;

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

    /// <summary>Highest ratio at which these shares are clear, pairs counted.</summary>
    public double RatioOf(double[] shares, double cap)
    {
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n && cap > 0; j++)
            {
                if (shares[i] > 0 && shares[j] > 0)
                {
                    cap = rules[i, j] is not null ? 0
                        : shares[i] == 1 && shares[j] == 1 ? Math.Min(cap, pairs[i, j])
                        : Highest(Two(i, shares[i], j, shares[j]), cap);
                }
            }
        }

        return cap > 0 ? Highest(shares, cap) : 0;
    }

    private void Pairs()
    {
        for (var i = 0; i < n; i++)
        {
            pairs[i, i] = Highest(Full(1 << i), TankSplit.MostRatio);
        }

        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                rules[i, j] = rules[j, i] = ApartRule.Between(request.Feed[i].Material, request.Feed[j].Material);
                var cap = Math.Min(pairs[i, i], pairs[j, j]);
                pairs[i, j] = pairs[j, i] = rules[i, j] is not null || cap <= 0 ? 0 : Highest(Full((1 << i) | (1 << j)), cap);
            }
        }
    }

    // Materials with the most and hardest conflicts are placed first, so that hopeless branches end early.
    private double Freedom(int i)
    {
        var sum = 0.0;
        for (var j = 0; j < n; j++)
        {
            sum += Math.Log(1 + pairs[i, j]);
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
            var cap = Math.Min(bound, pairs[i, i]);
            for (var rest = masks[t]; rest != 0; rest &= rest - 1)
            {
                cap = Math.Min(cap, pairs[i, BitOperations.TrailingZeroCount(rest)]);
            }

            // A tank that the rules forbid is never an answer, not even where there is no better one.
            if (cap > 0 || (pairs[i, i] <= 0 && !Forbidden(i, masks[t])))
            {
                masks[t] |= 1 << i;
                Walk(at + 1, masks, Math.Max(used, t + 1), cap);
                masks[t] &= ~(1 << i);
            }
        }
    }

    private bool Forbidden(int i, int mask)
    {
        for (var rest = mask; rest != 0; rest &= rest - 1)
        {
            if (rules[i, BitOperations.TrailingZeroCount(rest)] is not null)
            {
                return true;
            }
        }

        return false;
    }

    private void Leaf(int[] masks, double bound)
    {
        // Neither more concentrated than the best nor as good and more even: no need to look closer.
        var load = Load(masks);
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

            bound = Whole(mask, bound, load < bestLoad ? top * AsGood : top / AsGood);
            if (bound <= 0)
            {
                return;
            }
        }

        if (best.Length == 0 || bound > top / AsGood || (bound >= top * AsGood && load < bestLoad))
        {
            best = [.. masks];
            bestLoad = load;
            Ratio = bound;
            top = Math.Max(top, bound);
        }
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

    // Highest ratio up to the cap at which the whole of a tank is clear; 0 as soon as it is known to be cloudy at the least that is wanted.
    private double Whole(int mask, double cap, double least = 0)
    {
        if (!tanks.TryGetValue(mask, out var known))
        {
            known = new();
            tanks.Add(mask, known);
        }

        if (known.Exact is { } exact && (exact < known.Cap || known.Cap >= cap))
        {
            return Math.Min(exact, cap);
        }

        if (known.Clear >= cap)
        {
            return cap;
        }

        var shares = Full(mask);
        if (least > 0 && (least >= known.Cloudy || (least > known.Clear && !Try(known, shares, least))))
        {
            return 0;
        }

        known.Exact = Highest(shares, cap);
        known.Cap = cap;
        known.Clear = Math.Max(known.Clear, known.Exact.Value);
        return known.Exact.Value;
    }

    private bool Try(Known known, double[] shares, double ratio)
    {
        var clear = judge.IsClear(shares, ratio);
        if (clear)
        {
            known.Clear = Math.Max(known.Clear, ratio);
        }
        else
        {
            known.Cloudy = Math.Min(known.Cloudy, ratio);
        }

        return clear;
    }

    // Halves from the cap down to a clear ratio, then bisects between it and the cloudy one above: strengths are not taken to be monotone,
    // since an acid stock may be clear where its dilution in hard water is not.
    private double Highest(double[] shares, double cap)
    {
        if (cap <= 0 || judge.IsClear(shares, cap))
        {
            return Math.Max(0, cap);
        }

        double high = cap, low = cap / 2;
        while (low >= 1 && !judge.IsClear(shares, low))
        {
            (high, low) = (low, low / 2);
        }

        if (low < 1)
        {
            return 0;
        }

        while (high / low > Precision)
        {
            var middle = Math.Sqrt(high * low);
            (low, high) = judge.IsClear(shares, middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    private Problem? TooFew()
    {
        for (var i = 0; i < n; i++)
        {
            for (var j = i + 1; j < n; j++)
            {
                if (rules[i, j] is { } rule && request.Tanks == 1)
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
            return true;
        }

        for (var t = 0; t < masks.Length; t++)
        {
            if (!Forbidden(i, masks[t]))
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

    // The tank that limits gives up a quarter, a half or three quarters of one material to another tank, as long as that raises the ratio.
    private void Divide()
    {
        for (var round = 0; round < 3 && request.MayDivide && request.Tanks > 1 && Ratio is > 0 and < TankSplit.MostRatio; round++)
        {
            var goal = Ratio * WorthDividing;
            double[][]? found = null;
            foreach (var moved in Moves())
            {
                if (moved.All(shares => judge.IsClear(shares, goal)) && moved.Min(shares => RatioOf(shares, TankSplit.MostRatio)) is var ratio && ratio > goal)
                {
                    (goal, found) = (ratio * 1.001, moved);
                }
            }

            if (found is null)
            {
                return;
            }

            (Ratio, Shares, Divided) = (goal / 1.001, found, true);
        }
    }

    private IEnumerable<double[][]> Moves()
    {
        var from = Enumerable.Range(0, Shares.Count).MinBy(t => RatioOf(Shares[t], TankSplit.MostRatio));
        for (var i = 0; i < n; i++)
        {
            // What is a trace of the tank does not limit it; what was moved before is not cut smaller.
            if (Shares[from][i] < 1 || request.Feed[i].GramsPerLitre < 0.02 * request.Feed.Max(static m => m.GramsPerLitre))
            {
                continue;
            }

            for (var to = 0; to < Math.Min(Shares.Count + 1, request.Tanks); to++)
            {
                for (var step = 0; to != from && step < Quarters.Length; step++)
                {
                    var moved = new double[Math.Max(Shares.Count, to + 1)][];
                    for (var t = 0; t < moved.Length; t++)
                    {
                        moved[t] = t < Shares.Count ? [.. Shares[t]] : new double[n];
                    }

                    moved[from][i] -= Quarters[step] / 4.0;
                    moved[to][i] += Quarters[step] / 4.0;
                    yield return moved;
                }
            }
        }
    }

    private double[] Full(int mask)
    {
        var shares = new double[n];
        for (var i = 0; i < n; i++)
        {
            shares[i] = (mask >> i) & 1;
        }

        return shares;
    }

    private double[] Two(int i, double shareI, int j, double shareJ)
    {
        var shares = new double[n];
        shares[i] = shareI;
        shares[j] = shareJ;
        return shares;
    }

    private sealed class Known
    {
        public double? Exact { get; set; }

        public double Cap { get; set; }

        public double Clear { get; set; }

        public double Cloudy { get; set; } = double.PositiveInfinity;
    }
}
