namespace Ashery.Solutions.Tanks;

/// <summary>Judges a tank: what is in a kilogram of its water at a ratio, and what is nearest to coming out of it.</summary>
internal sealed class TankJudge
{
    // L a mole of an uncharged substance adds: urea, 44 mL/mol (from memory), the only one that comes in quantity.
    private const double NeutralVolume = 0.044;

    // kg of water in a litre below which nothing is a solution any more.
    private const double LeastWater = 0.35;

    // mol/kg of what another tank holds, so that all tanks are solved with one set of equations; too little to change any index that counts.
    private const double Trace = 1e-12;

    private readonly TankRequest request;
    private readonly TankProbe[] probes;
    private readonly double[]?[] limits;
    private readonly double[] totals;
    private readonly bool[] inFeed;

    public TankJudge(TankRequest request)
    {
        this.request = request;
        probes = request.Warmest > request.Coldest
            ? [new(request.Water.Chemistry, request.Coldest), new(request.Water.Chemistry, request.Warmest)]
            : [new(request.Water.Chemistry, request.Coldest)];
        totals = new double[request.Water.Totals.Length];
        inFeed = new bool[totals.Length];
        foreach (var (component, _) in request.Feed.SelectMany(static m => m.Material.Gives))
        {
            inFeed[component] = true;
        }

        limits = new double[request.Feed.Count][];
        for (var i = 0; i < limits.Length; i++)
        {
            limits[i] = [.. probes.Select(probe => Limit(request.Feed[i].Material, probe.Celsius) ?? double.PositiveInfinity)];
        }
    }

    public int Count => probes.Sum(static probe => probe.Count);

    /// <summary>g of product a litre of water takes up alone; null where no table says.</summary>
    public static double? Limit(Can.MaterialInWater material, double celsius)
    {
        if (material.Salt is { } salt && SaltSolubility.Limit(salt, celsius) is { } grams)
        {
            return grams / material.Purity;
        }

        var points = material.Solubility;
        if (points.Count == 0 || celsius < points[0].Celsius || celsius > points[^1].Celsius)
        {
            return null;
        }

        var k = 1;
        while (k < points.Count - 1 && celsius > points[k].Celsius)
        {
            k++;
        }

        return points.Count == 1 ? points[0].GramsPerKgWater
            : points[k - 1].GramsPerKgWater + ((points[k].GramsPerKgWater - points[k - 1].GramsPerKgWater) * (celsius - points[k - 1].Celsius) / (points[k].Celsius - points[k - 1].Celsius));
    }

    /// <summary>The worst index of a tank with these shares at a ratio, over both temperatures; above 0 it is not clear.</summary>
    public TankMargin Worst(ReadOnlySpan<double> shares, double ratio)
    {
        var water = Fill(shares, ratio, out var added);
        if (water < LeastWater)
        {
            return new("more salt than a litre holds", request.Coldest, 1);
        }

        var worst = new TankMargin("nothing", request.Coldest, double.NegativeInfinity);
        for (var p = 0; p < probes.Length; p++)
        {
            for (var i = 0; i < shares.Length; i++)
            {
                // A salt alone against its table, as an index: log10 of what is asked over what dissolves.
                if (shares[i] > 0 && Math.Log10(shares[i] * request.Feed[i].GramsPerLitre * ratio / added / limits[i]![p]) is var alone && alone > worst.Index)
                {
                    worst = new(request.Feed[i].Material.Name, probes[p].Celsius, alone);
                }
            }

            var (index, name) = probes[p].Worst(totals);
            if (index > worst.Index)
            {
                worst = new(name!, probes[p].Celsius, index);
            }
        }

        return worst;
    }

    /// <summary>Whether a tank is clear at a ratio at both temperatures; the cheapest reasons against are asked first.</summary>
    public bool IsClear(ReadOnlySpan<double> shares, double ratio)
    {
        var water = Fill(shares, ratio, out var added);
        if (water < LeastWater)
        {
            return false;
        }

        for (var i = 0; i < shares.Length; i++)
        {
            if (shares[i] > 0)
            {
                var grams = shares[i] * request.Feed[i].GramsPerLitre * ratio / added;
                foreach (var limit in limits[i]!)
                {
                    if (grams > limit)
                    {
                        return false;
                    }
                }
            }
        }

        foreach (var probe in probes)
        {
            if (probe.Worst(totals).Index > 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Everything that may come out, each at the temperature where it is nearest, the nearest first.</summary>
    public IReadOnlyList<TankMargin> Margins(ReadOnlySpan<double> shares, double ratio)
    {
        if (Fill(shares, ratio, out _) < LeastWater)
        {
            return [Worst(shares, ratio)];
        }

        var nearest = new Dictionary<string, TankMargin>(StringComparer.Ordinal);
        foreach (var probe in probes)
        {
            foreach (var margin in probe.All(totals))
            {
                if (!nearest.TryGetValue(margin.Name, out var other) || margin.Index > other.Index)
                {
                    nearest[margin.Name] = margin;
                }
            }
        }

        return [.. nearest.Values.OrderByDescending(static m => m.Index).ThenBy(static m => m.Name, StringComparer.Ordinal)];
    }

    /// <summary>The stock itself at a temperature.</summary>
    public (Solution Solution, double Water) Stock(ReadOnlySpan<double> shares, double ratio, double celsius)
    {
        var water = Fill(shares, ratio, out _);
        return (Speciation.Solve(request.Water.WithTotals(totals).At(celsius).Under(Air.Closed)), water);
    }

    // A litre of stock made up to the mark: what the salts do not fill is water, that of crystals and bottles included. The water's own ions
    // come with the water that is poured. Returns kg of all water, and kg poured.
    private double Fill(ReadOnlySpan<double> shares, double ratio, out double poured)
    {
        Array.Clear(totals);
        double charge = 0, neutral = 0, brought = 0;
        var components = request.Water.Chemistry.Components;
        for (var i = 0; i < shares.Length; i++)
        {
            if (!(shares[i] > 0))
            {
                continue;
            }

            var grams = shares[i] * request.Feed[i].GramsPerLitre * ratio;
            var material = request.Feed[i].Material;
            brought += material.Water * grams / 1000;
            foreach (var (component, moles) in material.Gives)
            {
                totals[component] += moles * grams;
                var z = components[component].Charge;
                charge += z < 0 && components[component].AlkalinityProtons > 0 ? moles * grams : Math.Max(0, -z) * moles * grams;
                neutral += z == 0 ? moles * grams : 0;
            }
        }

        var all = 1 - (WaterProperties.EquivalentVolume * charge) - (NeutralVolume * neutral);
        poured = Math.Max(1e-3, all - brought);
        if (all >= LeastWater)
        {
            for (var c = 0; c < totals.Length; c++)
            {
                totals[c] = inFeed[c] ? Math.Max(Trace, (totals[c] + (request.Water.Totals[c] * poured)) / all) : request.Water.Totals[c] * poured / all;
            }
        }

        return all;
    }
}
