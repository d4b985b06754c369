namespace Ashery.Solutions.Can;

/// <summary>
/// How near the salts of the solubility table are to crystallising from a mixture: the ion activity product of the mixture over that of the
/// salt's own saturated solution, both by the same model. Exact for a salt alone, right about a common ion; at the strength of
/// stock tanks an estimate, as all activities are there.
/// </summary>
public static class SaltSaturation
{
    /// <summary>Index of each salt all of whose ions are present, highest first. Calcium sulfate is left to gypsum.</summary>
    public static IReadOnlyList<SaltIndexOfCan> All(Solution solution)
    {
        var found = new List<SaltIndexOfCan>();
        foreach (var salt in SaturatedSalt.Known)
        {
            var index = Of(solution, salt);
            if (!double.IsNegativeInfinity(index))
            {
                found.Add(new(Bare(salt.Formula), salt.Name, index));
            }
        }

        found.Sort(static (a, b) => a.Index != b.Index ? b.Index.CompareTo(a.Index) : string.CompareOrdinal(a.Formula, b.Formula));
        return found;
    }

    /// <summary>Index of one salt; negative infinity when an ion of it is absent or the table does not reach the temperature.</summary>
    internal static double Of(Solution solution, SaturatedSalt salt)
    {
        var sum = -salt.Protons * solution.PH;
        foreach (var (component, number) in salt.Gives)
        {
            if (!(solution.Totals[component] > 0))
            {
                return double.NegativeInfinity;
            }

            sum += number * solution.Log10Activities[component];
        }

        return salt.LogProduct(solution.Celsius) is { } product ? sum - product : double.NegativeInfinity;
    }

    private static string Bare(string formula) =>
        formula.EndsWith("H2O", StringComparison.Ordinal) && formula.LastIndexOf('·') is var dot and > 0 ? formula[..dot] : formula;
}
