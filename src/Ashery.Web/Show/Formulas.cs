using System.Text;

namespace Ashery.Web.Show;

/// <summary>Formulas as books print them: <c>Mg(SO4)2-2</c> is Mg(SO₄)₂²⁻, <c>CaHCO3+</c> is CaHCO₃⁺.</summary>
public static class Formulas
{
    private const string Low = "₀₁₂₃₄₅₆₇₈₉";
    private const string High = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    public static string Of(string formula)
    {
        var sign = formula.LastIndexOfAny(['+', '-']);
        var isCharge = sign > 0 && formula.AsSpan(sign + 1).IndexOfAnyExceptInRange('0', '9') < 0;
        var end = isCharge ? sign : formula.Length;
        var text = new StringBuilder(formula.Length);
        for (var i = 0; i < end; i++)
        {
            text.Append(char.IsAsciiDigit(formula[i]) ? Low[formula[i] - '0'] : formula[i]);
        }

        if (!isCharge)
        {
            return text.ToString();
        }

        foreach (var digit in formula.AsSpan(sign + 1))
        {
            text.Append(High[digit - '0']);
        }

        return text.Append(formula[sign] == '+' ? '⁺' : '⁻').ToString();
    }
}
