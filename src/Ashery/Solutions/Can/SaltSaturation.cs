using System.Collections.Concurrent;

namespace Ashery.Solutions.Can;

/// <summary>
/// How near the salts of the solubility table are to crystallising from a mixture: the ion activity product of the mixture over that of the
/// salt's own saturated solution, both by the same model. Exact for a salt alone, right about a common ion; at the strength of
/// stock tanks an estimate, as all activities are there.
/// </summary>
public static class SaltSaturation
{
    private static readonly Lazy<List<(Salt Salt, string Name)>> Salts = new(Load);
    private static readonly ConcurrentDictionary<(string Formula, double Celsius), double> Products = new();

    /// <summary>Index of each salt all of whose ions are present, highest first. Calcium sulfate is left to gypsum.</summary>
    public static IReadOnlyList<SaltIndexOfCan> All(Solution solution)
    {
        var found = new List<SaltIndexOfCan>();
        foreach (var (salt, name) in Salts.Value)
        {
            var index = Of(solution, salt);
            if (!double.IsNegativeInfinity(index))
            {
                found.Add(new(salt.Formula, name, index));
            }
        }

        found.Sort(static (a, b) => a.Index != b.Index ? b.Index.CompareTo(a.Index) : string.CompareOrdinal(a.Formula, b.Formula));
        return found;
    }

    /// <summary>Index of one anhydrous salt; negative infinity when an ion of it is absent or the table does not reach the temperature.</summary>
    public static double Of(Solution solution, Salt salt)
    {
        foreach (var (component, _) in salt.Gives)
        {
            if (!(solution.Totals[component] > 0))
            {
                return double.NegativeInfinity;
            }
        }

        return Product(solution, salt) - Products.GetOrAdd((salt.Formula, solution.Celsius), static (key, s) => Saturated(s, key.Celsius), salt);
    }

    private static double Saturated(Salt salt, double celsius)
    {
        if (SaltSolubility.Saturated(salt.Formula, celsius) is not { } grams)
        {
            return double.PositiveInfinity;
        }

        return Product(Speciation.Solve(new Dissolving(SolutionInput.Pure(celsius)).Add(salt, grams).Input()), salt);
    }

    // The protons of an acid salt follow from its charge, as in KH2PO4: K+, PO4-3 and two of H+.
    private static double Product(Solution solution, Salt salt)
    {
        double sum = 0, charge = 0;
        foreach (var (component, number) in salt.Gives)
        {
            sum += number * solution.Log10Activities[component];
            charge += number * solution.Input.Chemistry.Components[component].Charge;
        }

        return sum + (charge * solution.PH);
    }

    private static List<(Salt, string)> Load()
    {
        var salts = new List<(Salt, string)>();
        foreach (var (formula, name) in SaltSolubility.Known)
        {
            if (formula != "CaSO4" && AnyOf(formula) is { } salt)
            {
                salts.Add((salt, name));
            }
        }

        return salts;
    }

    // A salt listed only as its hydrate gives the same ions without its water.
    private static Salt? AnyOf(string anhydrous)
    {
        if (Salt.TryFind(anhydrous, out var salt))
        {
            return salt;
        }

        foreach (var hydrate in Salt.All)
        {
            if (hydrate.Formula.StartsWith(anhydrous + "·", StringComparison.Ordinal) && hydrate.CrystalWater > 0)
            {
                return hydrate with { Formula = anhydrous, MolarMass = Nutrients.Formula.Parse(anhydrous).Value!.MolarMass, CrystalWater = 0 };
            }
        }

        return null;
    }
}
