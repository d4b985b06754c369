using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>
/// A salt that crystallises, with the ion activity product of its saturated solution in pure water. The product is computed by the same
/// model from the published solubility, so that errors of the model at high strength are in both and cancel in good part; ions from other
/// salts then count as they should (common ions).
/// </summary>
internal sealed class SaturatedSalt
{
    private static readonly Lazy<List<SaturatedSalt>> Rows = new(All);
    private readonly Dictionary<double, double> products = [];
    private readonly Salt salt;

    private SaturatedSalt(Salt salt, string name)
    {
        this.salt = salt;
        Name = name;
        foreach (var (component, number) in salt.Gives)
        {
            Protons -= number * Chemistry.Default.Components[component].Charge;
        }
    }

    public string Name { get; }

    public string Formula => salt.Formula;

    public IReadOnlyList<(int Component, double Number)> Gives => salt.Gives;

    /// <summary>Protons the crystal holds a formula unit, which make it neutral.</summary>
    public double Protons { get; }

    /// <summary>Every salt with a published solubility, calcium sulfate left out: gypsum has a constant of its own.</summary>
    public static IReadOnlyList<SaturatedSalt> Known => Rows.Value;

    /// <summary>log10 of the ion activity product of the saturated solution; null outside the table.</summary>
    public double? LogProduct(double celsius)
    {
        lock (products)
        {
            if (!products.TryGetValue(celsius, out var product))
            {
                product = Compute(celsius);
                products.Add(celsius, product);
            }

            return double.IsNaN(product) ? null : product;
        }
    }

    private double Compute(double celsius)
    {
        if (SaltSolubility.Limit(salt, celsius) is not { } grams || double.IsInfinity(grams))
        {
            return double.NaN;
        }

        var solution = Speciation.Solve(new Dissolving(SolutionInput.Pure(celsius)).Add(salt, grams).Input());
        var sum = -Protons * solution.PH;
        foreach (var (component, number) in Gives)
        {
            sum += number * solution.Log10Activities[component];
        }

        return sum;
    }

    private static List<SaturatedSalt> All()
    {
        var found = new List<SaturatedSalt>();
        foreach (var (formula, name) in DataRows.Read("data/solutions/solubility.json", row => Tuple.Create(row.Text("formula"), row.Text("name"))))
        {
            if (formula != "CaSO4" && Bare(formula) is { } salt)
            {
                found.Add(new(salt, name));
            }
        }

        return found;
    }

    // The table is for the anhydrous salt; what it gives may be listed for a hydrate only.
    private static Salt? Bare(string formula)
    {
        if (Salt.TryFind(formula, out var same))
        {
            return same;
        }

        foreach (var hydrate in Salt.All)
        {
            if (hydrate.CrystalWater > 0 && hydrate.Formula.StartsWith(formula + "·", StringComparison.Ordinal))
            {
                return hydrate;
            }
        }

        return null;
    }
}
