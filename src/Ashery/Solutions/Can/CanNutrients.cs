using Ashery.Nutrients;

namespace Ashery.Solutions.Can;

/// <summary>Nutrients in solution, those of the water among them: mg/L as elements.</summary>
/// <param name="Nitrate">N as nitrate.</param>
/// <param name="Ammonium">N as ammonium, free ammonia included.</param>
/// <param name="Urea">N as urea.</param>
/// <param name="Rows">Each nutrient present, in column order.</param>
public sealed record CanNutrients(double Nitrate, double Ammonium, double Urea, IReadOnlyList<CanNutrient> Rows)
{
    /// <summary>mg/L of a nutrient as the element; 0 when absent.</summary>
    public double this[Nutrient nutrient]
    {
        get
        {
            foreach (var row in Rows)
            {
                if (row.Nutrient == nutrient)
                {
                    return row.Total;
                }
            }

            return 0;
        }
    }
}

/// <summary>One nutrient.</summary>
/// <param name="Nutrient">Which.</param>
/// <param name="Total">mg/L as the element.</param>
/// <param name="FromWater">mg/L of it that the water brought.</param>
/// <param name="OnLabelBasis">mg/L as growers say it, P2O5 and K2O; the same as the total elsewhere.</param>
public sealed record CanNutrient(Nutrient Nutrient, double Total, double FromWater, double OnLabelBasis);
