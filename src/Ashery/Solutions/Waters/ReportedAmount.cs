using System.Globalization;
using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>A line of a report in the library's units.</summary>
/// <param name="Line">As typed.</param>
/// <param name="Quantity">What it counts.</param>
/// <param name="Basis">Formula it was taken as.</param>
/// <param name="Unit">Unit it was taken in.</param>
/// <param name="Amount">mol/L; of charge for alkalinity, of calcium and magnesium for hardness; mg/L for solids.</param>
internal sealed record ReportedAmount(WaterLine Line, WaterQuantity Quantity, string Basis, WaterUnit Unit, double Amount)
{
    // More than a mole of anything in a litre is no water: sea water holds about half a mole of chloride.
    private const double Most = 1;

    /// <summary>Reads one line, or says what is wrong with it.</summary>
    public static Result<ReportedAmount> Read(WaterLine line)
    {
        var field = string.IsNullOrWhiteSpace(line.Name) ? "name" : WaterNumber.Shown(line.Name);
        if (WaterQuantity.Named(line.Name) is not { } named)
        {
            return Result.Fail<ReportedAmount>(field, "This is nothing a water report is read for.", Names(line.Name));
        }

        if (WaterNumber.Check(line.Value, field) is { } wrong)
        {
            return Result.Fail<ReportedAmount>(wrong);
        }

        var unit = line.Unit is null ? (WaterUnit.All[0], null) : WaterUnit.Named(line.Unit);
        if (unit is not var (found, said))
        {
            return Result.Fail<ReportedAmount>(
                field, $"\"{WaterNumber.Shown(line.Unit!)}\" is not a unit of a water report.", $"Use one of {UnitsFor(named.Quantity)}; \"as N\" or \"as CaCO3\" may follow.");
        }

        return Take(line, named.Quantity, named.Basis, found, said, field);
    }

    /// <summary>The same line taken in another unit or as another formula; NaN where that makes no sense.</summary>
    public static double AmountIn(WaterQuantity quantity, double value, WaterUnit unit, string basis) => unit.Kind switch
    {
        _ when quantity.Kind == WaterQuantityKind.Solids => unit.Kind == WaterUnitKind.Mass ? value * unit.Factor : double.NaN,
        WaterUnitKind.Mass => value * unit.Factor / quantity.MassOf(basis) / 1000,
        WaterUnitKind.Molar => value * unit.Factor / 1000,
        WaterUnitKind.Charge => quantity.Charge > 0 ? value * unit.Factor / quantity.Charge / 1000 : double.NaN,
        _ => quantity.Degrees ? value * unit.Factor / quantity.MassOf("CaCO3") / 1000 : double.NaN,
    };

    private static Result<ReportedAmount> Take(WaterLine line, WaterQuantity quantity, string own, WaterUnit unit, string? said, string field)
    {
        // A name that says NO3-N and a unit that says NO3 cannot both be right.
        if (said is not null && own != quantity.Names[0].Basis && !string.Equals(said, own, StringComparison.OrdinalIgnoreCase))
        {
            return Result.Fail<ReportedAmount>(field, $"The name says {own}, the unit says {WaterNumber.Shown(said)}.", "Keep the one that the report prints.");
        }

        var basis = unit.Kind == WaterUnitKind.CalciumCarbonate ? "CaCO3" : said ?? own;
        var amount = AmountIn(quantity, line.Value, unit, basis);
        if (double.IsNaN(amount))
        {
            return Result.Fail<ReportedAmount>(field, Impossible(quantity, unit, basis), $"Use one of {UnitsFor(quantity)}.");
        }

        return quantity.Kind != WaterQuantityKind.Solids && amount > Most
            ? Result.Fail<ReportedAmount>(
                field,
                string.Create(CultureInfo.InvariantCulture, $"{line.Value:0.###} {unit.Id} is more than a mole in a litre; sea water holds half of that."),
                "Check the figure and its unit (µg/L are a thousandth of mg/L).")
            : Result.Of(new ReportedAmount(line, quantity, basis, unit, amount));
    }

    private static string Impossible(WaterQuantity quantity, WaterUnit unit, string basis) => unit.Kind switch
    {
        WaterUnitKind.CalciumCarbonate => $"{unit.Id} counts hardness or alkalinity; {quantity.Id} is neither.",
        WaterUnitKind.Charge => $"{unit.Id} of {quantity.Id} hangs on the pH, so that it cannot be read.",
        _ => $"{quantity.Id} is not reported as {WaterNumber.Shown(basis)}.",
    };

    private static string UnitsFor(WaterQuantity quantity)
    {
        var units = new List<string>();
        foreach (var unit in WaterUnit.All)
        {
            if (!double.IsNaN(AmountIn(quantity, 1, unit, quantity.Bases.Count > 0 ? quantity.Bases[0].Basis : "")))
            {
                units.Add(unit.Id);
            }
        }

        return string.Join(", ", units);
    }

    private static string Names(string name) =>
        name.Trim().ToUpperInvariant() is "EC" or "CONDUCTIVITY" or "PH"
            ? "pH and conductivity have places of their own."
            : $"Use one of {string.Join(", ", WaterQuantity.All.Select(static q => q.Symbol))}; leave out what is not listed.";
}
