using System.Globalization;
using Ashery.Nutrients;

namespace Ashery.Recipes;

/// <summary>Writes limits in the words of <see cref="LimitReader.Grammar"/>, so that a page can show and send them back.</summary>
public static class LimitWriter
{
    /// <summary>One clause each; empty when there are no limits.</summary>
    public static IReadOnlyList<string> Clauses(MixLimits limits)
    {
        var clauses = new List<string>();
        AddFraction(LimitFigure.Urea.Name, "<=", limits.UreaShareOfNitrogen);
        AddFraction(LimitFigure.Ammoniacal.Name, "<=", limits.AmmoniacalShareOfNitrogen);
        AddFraction(LimitFigure.Chloride.Name, "<=", limits.Chloride);
        AddNumber(LimitFigure.SaltIndex.Name, limits.SaltIndex);
        AddNumber(LimitFigure.Acidity.Name, limits.Acidity);
        AddNumber(LimitFigure.Cost.Name, limits.CostPerKg);
        AddFraction(LimitFigure.Strength.Name, ">=", limits.Strength);
        foreach (var content in limits.Contents)
        {
            var symbol = LabelBasis.Symbol(content.Nutrient);
            AddFraction(symbol, ">=", content.AtLeast);
            AddFraction(symbol == "Cl" ? "chloride" : symbol, "<=", content.AtMost);
        }

        foreach (var material in limits.Materials)
        {
            AddFraction($"material {material.MaterialId}", ">=", material.AtLeast);
            AddFraction($"material {material.MaterialId}", "<=", material.AtMost);
        }

        if (limits.Without.Count > 0)
        {
            clauses.Add($"without {string.Join(", ", limits.Without.Order(StringComparer.Ordinal))}");
        }

        if (limits.OrganicOnly)
        {
            clauses.Add("organic-only");
        }

        if (limits.SolubleOnly)
        {
            clauses.Add("soluble-only");
        }

        if (limits.Use is not BlendUse.DryStored)
        {
            clauses.Add(limits.Use is BlendUse.DryToday ? "use=dry-today" : "use=dissolved");
        }

        return clauses;

        void AddFraction(string name, string sign, double? fraction)
        {
            if (fraction is { } f)
            {
                clauses.Add($"{name}{sign}{Round(f * 100)}%");
            }
        }

        void AddNumber(string name, double? number)
        {
            if (number is { } n)
            {
                clauses.Add($"{name}<={Round(n)}");
            }
        }
    }

    // Twelve digits hide that 0.3 * 100 is not quite 30.
    private static string Round(double value) => value.ToString("0.############", CultureInfo.InvariantCulture);
}
