using System.Globalization;

namespace Ashery.Solutions.Waters;

/// <summary>Draws up the balance of what was reported and says what it means.</summary>
internal static class BalanceMaker
{
    private static readonly string[] CationQuantities = ["calcium", "magnesium", "sodium", "potassium"];
    private static readonly string[] AnionQuantities = ["alkalinity", "sulfate", "chloride"];

    /// <summary>The balance before anything is put in.</summary>
    public static IonBalance Of(WaterDraft draft, IReadOnlyList<ReportedAmount> lines)
    {
        var (cations, anions) = Sides(draft);
        double cationSum = Sum(cations), anionSum = Sum(anions);
        var gap = cationSum - anionSum;
        var allowed = IonBalance.Allowance(cationSum, anionSum);
        var missing = (gap > 0 ? AnionQuantities : CationQuantities[..3]).Where(q => !draft.Knows(q)).ToList();
        var percent = cationSum + anionSum > 0 ? Math.Abs(100 * gap / (cationSum + anionSum)) : 0;
        var verdict = Math.Abs(gap) <= allowed ? BalanceVerdict.Closes
            : missing.Count > 0 ? BalanceVerdict.ClosedByEstimate
            : percent > WaterCheck.Of("balance.wrong") && Math.Abs(gap) > 1 ? BalanceVerdict.Wrong
            : BalanceVerdict.Off;
        var suspects = verdict is BalanceVerdict.Off or BalanceVerdict.Wrong ? BalanceSuspects.Find(draft, lines) : [];
        return new()
        {
            Cations = cations,
            Anions = anions,
            CationSum = cationSum,
            AnionSum = anionSum,
            Verdict = verdict,
            Words = Words(verdict, cationSum, anionSum, percent, missing, suspects, gap > 0 ? anions : cations),
            Suspects = suspects,
        };
    }

    /// <summary>The two sides with what was put in marked, for a picture.</summary>
    public static (List<BalanceIon> Cations, List<BalanceIon> Anions) Sides(WaterDraft draft)
    {
        List<BalanceIon> cations = [], anions = [];
        foreach (var quantity in WaterQuantity.All)
        {
            var id = quantity.Component ?? (quantity.Id == "alkalinity" ? "alkalinity" : null);
            if (id is null)
            {
                continue;
            }

            var charge = quantity.Component is null ? -draft.Alkalinity
                : WaterReading.ChargeOf(Chemistry.Default.Components[Chemistry.Default.Known(id)]) * draft.Amount(id);
            if (charge != 0)
            {
                // Acid water: what is less than no alkalinity is free acid, a cation.
                (charge > 0 ? cations : anions).Add(new(id, charge > 0 && quantity.Component is null ? "H" : quantity.Symbol, Math.Abs(charge) * 1000, draft.Estimates.Exists(e => e.Quantity == id)));
            }
        }

        cations.Sort(static (a, b) => b.Charge.CompareTo(a.Charge));
        anions.Sort(static (a, b) => b.Charge.CompareTo(a.Charge));
        return (cations, anions);
    }

    private static string List(List<string> names) =>
        names.Count < 2 ? string.Concat(names) : string.Join(", ", names.Take(names.Count - 1)) + " and " + names[^1];

    private static double Sum(List<BalanceIon> side)
    {
        var sum = 0.0;
        foreach (var ion in side)
        {
            sum += ion.Charge;
        }

        return sum;
    }

    private static string Words(
        BalanceVerdict verdict, double cations, double anions, double percent, List<string> missing, IReadOnlyList<string> suspects, List<BalanceIon> lighter)
    {
        var (heavy, light) = cations > anions ? ("cations", "anions") : ("anions", "cations");
        var sums = string.Create(CultureInfo.InvariantCulture, $"Cations {cations:0.00}, anions {anions:0.00} meq/L");
        return verdict switch
        {
            BalanceVerdict.Closes => string.Create(CultureInfo.InvariantCulture, $"{sums}: {percent:0.#} % apart, within what laboratories allow."),
            BalanceVerdict.ClosedByEstimate => $"{sums}. The {light} are short because the report leaves out {List(missing)}; that is taken to close the balance.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{sums}: {percent:0} % apart, more than the 2 to 5 % that laboratories allow. The {heavy} are heavy, or something is missing among the {light}. ")
                + (suspects.Count > 0 ? string.Join(" ", suspects)
                    : lighter.Count > 0 ? $"No single slip of a unit closes it; look first at {lighter[0].Quantity}, the largest of the {light}, and for an ion that is not listed."
                    : $"No {light[..^1]} is listed at all."),
        };
    }
}
