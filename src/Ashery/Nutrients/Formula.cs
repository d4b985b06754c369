using System.Globalization;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Nutrients;

/// <summary>
/// A chemical formula as a count of atoms: <c>(NH4)2SO4</c>, <c>MgSO4·7H2O</c>, <c>5Ca(NO3)2·NH4NO3·10H2O</c>.
/// A number at the start of a part between dots multiplies that part.
/// </summary>
public sealed class Formula
{
    private const int DeepestBrackets = 8;

    // Atoms by index in the table of weights.
    private readonly double[] atoms;

    private Formula(string text, double[] atoms)
    {
        Text = text;
        this.atoms = atoms;
        for (var i = 0; i < atoms.Length; i++)
        {
            MolarMass += atoms[i] * AtomicWeights.All[i].GramsPerMole;
        }
    }

    public string Text { get; }

    /// <summary>g/mol.</summary>
    public double MolarMass { get; }

    /// <summary>Atoms of an element in one formula unit.</summary>
    public double Count(string element) => AtomicWeights.IndexOf(element) is var i and >= 0 ? atoms[i] : 0;

    /// <summary>Mass fraction of an element, 0 to 1.</summary>
    public double Fraction(string element) =>
        AtomicWeights.IndexOf(element) is var i and >= 0 ? atoms[i] * AtomicWeights.All[i].GramsPerMole / MolarMass : 0;

    /// <summary>Reads a formula; what cannot be read is named with its place.</summary>
    public static Result<Formula> Parse(string text)
    {
        var sum = new double[AtomicWeights.All.Count];
        foreach (var part in text.Split('·', '*'))
        {
            var at = 0;
            var times = Number(part, ref at);
            if (!Group(part, ref at, times, sum, depth: 0))
            {
                var near = part.Length == 0 ? text : part[Math.Min(at, part.Length - 1)..];
                return Result.Fail<Formula>("formula", $"'{NumberReader.Shown(text)}' cannot be read near '{NumberReader.Shown(near)}'.",
                    "Write element symbols with counts, as in MgSO4·7H2O.");
            }
        }

        return Result.Of(new Formula(text, sum));
    }

    // A run of elements and bracketed groups, each with its count; added to the sum times the factor of what encloses it.
    private static bool Group(string s, ref int at, double times, double[] sum, int depth)
    {
        var start = at;
        while (at < s.Length && s[at] != ')')
        {
            if (s[at] == '(')
            {
                at++;
                var inner = new double[sum.Length];
                if (depth >= DeepestBrackets || !Group(s, ref at, 1, inner, depth + 1))
                {
                    return false;
                }

                at++;
                var count = Number(s, ref at) * times;
                for (var i = 0; i < sum.Length; i++)
                {
                    sum[i] += inner[i] * count;
                }
            }
            else
            {
                var element = Element(s, ref at);
                if (element < 0)
                {
                    return false;
                }

                sum[element] += Number(s, ref at) * times;
            }
        }

        // A bracketed group must end at its bracket, the outermost at the end of the text; neither may be empty.
        return at > start && (at < s.Length) == (depth > 0);
    }

    private static int Element(string s, ref int at)
    {
        var length = at + 1 < s.Length && char.IsAsciiLetterLower(s[at + 1]) ? 2 : 1;
        var element = AtomicWeights.IndexOf(s.AsSpan(at, length));
        at += element < 0 ? 0 : length;
        return element;
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
