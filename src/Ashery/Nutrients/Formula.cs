using System.Globalization;
using Ashery.Problems;

namespace Ashery.Nutrients;

/// <summary>
/// A chemical formula as a count of atoms: <c>(NH4)2SO4</c>, <c>MgSO4·7H2O</c>, <c>5Ca(NO3)2·NH4NO3·10H2O</c>.
/// A number at the start of a part between dots multiplies that part.
/// </summary>
public sealed class Formula
{
    private Formula(string text, Dictionary<string, double> atoms)
    {
        Text = text;
        Atoms = atoms;
        MolarMass = atoms.Sum(static a => a.Value * AtomicWeights.All[a.Key]);
    }

    public string Text { get; }

    /// <summary>Atoms by element symbol.</summary>
    public IReadOnlyDictionary<string, double> Atoms { get; }

    /// <summary>g/mol.</summary>
    public double MolarMass { get; }

    /// <summary>Mass fraction of an element, 0 to 1.</summary>
    public double Fraction(string element) =>
        Atoms.TryGetValue(element, out var count) ? count * AtomicWeights.All[element] / MolarMass : 0;

    /// <summary>Reads a formula; what cannot be read is named with its place.</summary>
    public static Result<Formula> Parse(string text)
    {
        var atoms = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var part in text.Split('·', '*'))
        {
            var at = 0;
            var times = Number(part, ref at);
            if (!Group(part, ref at, times, atoms, depth: 0) || at < part.Length)
            {
                return Result.Fail<Formula>("formula", $"'{text}' cannot be read near '{part[Math.Min(at, Math.Max(0, part.Length - 1))..]}'.",
                    "Write element symbols with counts, as in MgSO4·7H2O.");
            }
        }

        return Result.Of(new Formula(text, atoms));
    }

    // A run of elements and bracketed groups, each with its count; added to the sum times the factor of what encloses it.
    private static bool Group(string s, ref int at, double times, Dictionary<string, double> sum, int depth)
    {
        var start = at;
        while (at < s.Length && s[at] != ')')
        {
            var inner = new Dictionary<string, double>(StringComparer.Ordinal);
            if (s[at] == '(')
            {
                at++;
                if (depth > 8 || !Group(s, ref at, 1, inner, depth + 1) || at >= s.Length)
                {
                    return false;
                }

                at++;
            }
            else if (!Element(s, ref at, inner))
            {
                return false;
            }

            var count = Number(s, ref at) * times;
            foreach (var (element, n) in inner)
            {
                sum[element] = sum.GetValueOrDefault(element) + (n * count);
            }
        }

        return at > start && (at < s.Length) == (depth > 0);
    }

    private static bool Element(string s, ref int at, Dictionary<string, double> sum)
    {
        var length = at + 1 < s.Length && char.IsAsciiLetterLower(s[at + 1]) ? 2 : 1;
        var symbol = s.Substring(at, length);
        if (AtomicWeights.Find(symbol) is null)
        {
            return false;
        }

        at += length;
        sum[symbol] = 1;
        return true;
    }

    private static double Number(string s, ref int at)
    {
        var start = at;
        while (at < s.Length && char.IsAsciiDigit(s[at]))
        {
            at++;
        }

        return at == start ? 1 : double.Parse(s.AsSpan(start, at - start), NumberStyles.None, CultureInfo.InvariantCulture);
    }
}
