using System.Globalization;

namespace Ashery.Solutions.Waters;

/// <summary>Slips of a unit or basis in one line that would explain a balance that does not close.</summary>
internal static class BalanceSuspects
{
    private const int Most = 2;

    public static IReadOnlyList<string> Find(WaterDraft draft, IReadOnlyList<ReportedAmount> lines)
    {
        var found = new List<(double Gap, string Words)>();
        foreach (var line in lines)
        {
            var component = line.Quantity.Component;
            var charge = component is null ? (line.Quantity.Kind == WaterQuantityKind.Alkalinity ? -1 : 0)
                : WaterReading.ChargeOf(Chemistry.Default.Components[Chemistry.Default.Known(component)]);
            if (charge == 0)
            {
                continue;
            }

            foreach (var (unit, basis) in Readings(line))
            {
                var amount = ReportedAmount.AmountIn(line.Quantity, line.Line.Value, unit, basis);
                var change = (amount - line.Amount) * charge;
                var gap = draft.Gap + change;
                if (Math.Abs(change) > 1e-6 && Math.Abs(gap * 1000) <= IonBalance.Allowance(Cations(draft, change), Anions(draft, change)))
                {
                    found.Add((Math.Abs(gap), string.Create(
                        CultureInfo.InvariantCulture, $"It closes when {line.Quantity.Id} {line.Line.Value:0.###} is read as {unit.Id}{(unit.Kind == WaterUnitKind.Mass ? " " + basis : "")} instead of {line.Unit.Id}{(line.Unit.Kind == WaterUnitKind.Mass ? " " + line.Basis : "")}.")));
                }
            }
        }

        found.Sort(static (a, b) => a.Gap.CompareTo(b.Gap));
        return [.. found.Take(Most).Select(static f => f.Words)];
    }

    // Units and bases a printer of reports mixes up; not a thousandfold, which shows by itself.
    private static IEnumerable<(WaterUnit Unit, string Basis)> Readings(ReportedAmount line)
    {
        foreach (var unit in WaterUnit.All)
        {
            if (unit.Id is not ("mg/L" or "mmol/L" or "meq/L" or "°dH" or "°fH"))
            {
                continue;
            }

            if (unit.Kind != WaterUnitKind.Mass)
            {
                if (unit != line.Unit && !double.IsNaN(ReportedAmount.AmountIn(line.Quantity, 1, unit, line.Basis)))
                {
                    yield return (unit, line.Basis);
                }

                continue;
            }

            foreach (var (basis, _) in line.Quantity.Bases)
            {
                if (unit != line.Unit || basis != line.Basis)
                {
                    yield return (unit, basis);
                }
            }
        }
    }

    private static double Cations(WaterDraft draft, double change) => Side(draft, positive: true) + (Math.Max(0, change) * 1000);

    private static double Anions(WaterDraft draft, double change) => Side(draft, positive: false) + (Math.Max(0, -change) * 1000);

    private static double Side(WaterDraft draft, bool positive)
    {
        var (cations, anions) = BalanceMaker.Sides(draft);
        var sum = 0.0;
        foreach (var ion in positive ? cations : anions)
        {
            sum += ion.Charge;
        }

        return sum;
    }
}
