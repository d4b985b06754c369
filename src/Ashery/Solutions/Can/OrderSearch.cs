using System.Numerics;

namespace Ashery.Solutions.Can;

/// <summary>
/// The order of dissolving that keeps every step on the way furthest from a quick solid: the least worst index over all orders, found over
/// the sets of what is in already. Between equals the common order counts: acids, sulfates and phosphates with the rest, calcium, trace elements.
/// </summary>
internal sealed class OrderSearch
{
    private const int MostSearched = 7;
    private readonly SolutionInput water;
    private readonly double celsius;
    private readonly Air air;
    private readonly IReadOnlyList<(CanAddition Addition, double Dissolved)> parts;
    private readonly (double Index, string? Solid)[] at;
    private readonly double alkalinity;

    private OrderSearch(CanRequest request, IReadOnlyList<(CanAddition Addition, double Dissolved)> parts)
    {
        water = request.Water;
        celsius = request.Celsius;
        air = request.Air;
        this.parts = parts;
        at = new (double, string?)[parts.Count > MostSearched ? 0 : 1 << parts.Count];
        alkalinity = SolutionMeasures.Alkalinity(Speciation.Solve(water.At(celsius).Under(air)));
    }

    public static DissolvingOrder Find(CanRequest request, IReadOnlyList<(CanAddition Addition, double Dissolved)> parts)
    {
        if (parts.Count == 1)
        {
            return new([new(parts[0].Addition, "Stir until it is gone.")], double.NegativeInfinity, "One material: no order.");
        }

        var search = new OrderSearch(request, parts);
        return parts.Count > MostSearched ? search.Common() : search.Searched();
    }

    private DissolvingOrder Searched()
    {
        var full = at.Length - 1;
        for (var set = 0; set <= full; set++)
        {
            at[set] = Worst(set);
        }

        // Least worst index still to come from a set, the finished can left out: the same for all orders.
        var rest = new double[at.Length];
        for (var set = full; set >= 0; set--)
        {
            rest[set] = set == full ? double.NegativeInfinity : double.PositiveInfinity;
            for (var i = 0; i < parts.Count && set != full; i++)
            {
                if ((set & (1 << i)) == 0)
                {
                    var next = set | (1 << i);
                    rest[set] = Math.Min(rest[set], Math.Max(next == full ? double.NegativeInfinity : Cost(next), rest[next]));
                }
            }
        }

        var steps = new List<DissolvingStep>();
        var worst = double.NegativeInfinity;
        for (var set = 0; set != full;)
        {
            var best = -1;
            for (var i = 0; i < parts.Count; i++)
            {
                var next = set | (1 << i);
                if (next != set && Math.Max(next == full ? double.NegativeInfinity : Cost(next), rest[next]) <= rest[set] + 1e-9 && (best < 0 || Before(i, best)))
                {
                    best = i;
                }
            }

            set |= 1 << best;
            if (set != full)
            {
                worst = Math.Max(worst, at[set].Index);
            }

            steps.Add(Step(best, at[set]));
        }

        return new(steps, worst, rest[0] > 0
            ? "In every order something may come out before the last step; in this one it is least. Among equals the common order is taken: acid, then the rest, calcium, trace elements."
            : "Nothing comes out before the last step. Among the orders of which that is true the common one is taken: acid, then the rest, calcium, trace elements.");
    }

    private DissolvingOrder Common()
    {
        var order = new int[parts.Count];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) => Before(a, b) ? -1 : Before(b, a) ? 1 : 0);
        var steps = new List<DissolvingStep>();
        var worst = double.NegativeInfinity;
        var contents = new CanContents(water);
        for (var k = 0; k < order.Length; k++)
        {
            contents.Add(parts[order[k]].Addition.Material, parts[order[k]].Dissolved);
            var after = Worst(contents);
            worst = k < order.Length - 1 ? Math.Max(worst, after.Index) : worst;
            steps.Add(Step(order[k], after));
        }

        return new(steps, worst, "Common practice: acid, then the rest, calcium, trace elements. With so many materials the orders were not compared.");
    }

    // Undersaturated is good enough, a hundredth no reason to change the common order.
    private double Cost(int set) => Math.Max(0, Math.Round(at[set].Index, 2));

    private (double Index, string? Solid) Worst(int set)
    {
        var contents = new CanContents(water);
        for (var left = set; left != 0; left &= left - 1)
        {
            var i = BitOperations.TrailingZeroCount(left);
            contents.Add(parts[i].Addition.Material, parts[i].Dissolved);
        }

        return Worst(contents);
    }

    private (double Index, string? Solid) Worst(CanContents contents)
    {
        var (most, name) = (double.NegativeInfinity, (string?)null);
        foreach (var index in SaturationIndex.All(Speciation.Solve(contents.Input(celsius, air))))
        {
            if ((!index.Mineral.Slow || index.Mineral.Id == "calcite") && index.Index > most)
            {
                (most, name) = (index.Index, index.Mineral.Id);
            }
        }

        return (most, name);
    }

    private bool Before(int a, int b)
    {
        var (ra, rb) = (Rank(parts[a].Addition.Material), Rank(parts[b].Addition.Material));
        return ra != rb ? ra < rb : parts[a].Dissolved != parts[b].Dissolved ? parts[a].Dissolved > parts[b].Dissolved
            : string.CompareOrdinal(parts[a].Addition.Material.Id, parts[b].Addition.Material.Id) < 0;
    }

    private static int Rank(MaterialInWater material) =>
        IsAcid(material) ? 0 : Has(material, "calcium") ? 3 : IsTrace(material) ? 4 : Has(material, "carbonate") ? 2 : 1;

    private DissolvingStep Step(int i, (double Index, string? Solid) after)
    {
        var material = parts[i].Addition.Material;
        var why = Rank(material) switch
        {
            0 when alkalinity > 1e-4 => "Acid first, slowly into the water: it turns the water's hydrogen carbonate into gas before calcium and phosphate meet it.",
            0 => "Acid first, slowly into the water, never water into acid.",
            3 => "Calcium late, when sulfate and phosphate are spread through the whole can.",
            4 => "Trace elements last, when the pH has settled.",
            2 => "A carbonate after the salts, slowly: it raises the pH.",
            _ => "Stir until it is gone.",
        };
        return new(parts[i].Addition, why) { Nearest = after.Solid, Index = after.Index };
    }

    private static bool IsAcid(MaterialInWater material)
    {
        // What holds more acid than its salts can: protons over those that alkalinity counts as neutral.
        var protons = 0.0;
        foreach (var (component, moles) in material.Gives)
        {
            var c = Chemistry.Default.Components[component];
            protons -= (c.AlkalinityProtons + c.Charge) * moles;
        }

        return protons > 1e-3;
    }

    private static bool IsTrace(MaterialInWater material)
    {
        foreach (var (component, _) in material.Gives)
        {
            var id = Chemistry.Default.Components[component].Id;
            if (id.StartsWith("Fe", StringComparison.Ordinal) || id.StartsWith("Mn", StringComparison.Ordinal) || id.StartsWith("Zn", StringComparison.Ordinal)
                || id.StartsWith("Cu", StringComparison.Ordinal) || id.StartsWith("Mo", StringComparison.Ordinal) || id == "H3BO3")
            {
                return true;
            }
        }

        return false;
    }

    private static bool Has(MaterialInWater material, string component)
    {
        foreach (var (c, _) in material.Gives)
        {
            if (Chemistry.Default.Components[c].Name == component)
            {
                return true;
            }
        }

        return false;
    }
}
