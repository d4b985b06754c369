using System.Numerics;

namespace Ashery.Solutions.Tanks;

/// <summary>Highest ratios at which tanks are clear: of materials alone, in pairs, and of whole tanks, each looked for once.</summary>
internal sealed class TankRatios
{
    // Ratios are found to half a percent.
    private const double Precision = 1.005;

    private readonly TankRequest request;
    private readonly int n;
    private readonly double[,] pairs;
    private readonly ApartRule?[,] rules;
    private readonly Dictionary<int, Known> tanks = [];

    public TankRatios(TankRequest request)
    {
        this.request = request;
        Judge = new(request);
        n = request.Feed.Count;
        pairs = new double[n, n];
        rules = new ApartRule?[n, n];
        Pairs();
    }

    public TankJudge Judge { get; }

    /// <summary>The rule that keeps two materials apart, or null.</summary>
    public ApartRule? Rule(int i, int j) => rules[i, j];

    /// <summary>Highest ratio of two materials in one tank; of one alone where they are the same; 0 when they never share one.</summary>
    public double Pair(int i, int j) => pairs[i, j];

    /// <summary>True when a rule keeps a material out of a tank.</summary>
    public bool Forbidden(int i, int mask)
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

    /// <summary>
    /// Highest ratio up to a cap at which all tanks are clear at once. Each may be clear higher up and yet not there, so that each is asked
    /// again until none lowers it.
    /// </summary>
    public double Common(IReadOnlyList<double[]> tanks, double cap)
    {
        for (var before = double.NaN; cap > 0 && cap != before;)
        {
            before = cap;
            foreach (var tank in tanks)
            {
                cap = Highest(tank, cap);
            }
        }

        return cap;
    }

    /// <summary>Highest ratio up to the cap at which the whole of a tank is clear; 0 when there is none down to the least that is wanted.</summary>
    public double Whole(int mask, double cap, double least = 0)
    {
        // The highest up to a higher cap is the highest up to this one where it is not above it.
        if (tanks.TryGetValue(mask, out var known) && cap <= known.Cap && known.Ratio <= cap && (known.Ratio > 0 || least >= known.Least))
        {
            return known.Ratio >= least ? known.Ratio : 0;
        }

        var ratio = Highest(Full(mask), cap, least);
        tanks[mask] = new(cap, least, ratio);
        return ratio;
    }

    // Halves from the cap down to a clear ratio, at last the least that is wanted, then bisects between it and the cloudy one above: strengths
    // are not taken to be monotone, since an acid stock may be clear where its dilution in hard water is not.
    private double Highest(double[] shares, double cap, double least = 1)
    {
        if (cap <= 0 || Judge.IsClear(shares, cap))
        {
            return Math.Max(0, cap);
        }

        least = Math.Max(1, least);
        double high = cap, low = Math.Max(least, cap / 2);
        while (low < high && !Judge.IsClear(shares, low))
        {
            (high, low) = (low, Math.Max(least, low / 2));
        }

        if (low >= high)
        {
            return 0;
        }

        while (high / low > Precision)
        {
            var middle = Math.Sqrt(high * low);
            (low, high) = Judge.IsClear(shares, middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>The shares of a tank that holds these materials whole.</summary>
    public double[] Full(int mask)
    {
        var shares = new double[n];
        for (var i = 0; i < n; i++)
        {
            shares[i] = (mask >> i) & 1;
        }

        return shares;
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

    private double[] Two(int i, double shareI, int j, double shareJ)
    {
        var shares = new double[n];
        shares[i] = shareI;
        shares[j] = shareJ;
        return shares;
    }

    private readonly record struct Known(double Cap, double Least, double Ratio);
}
