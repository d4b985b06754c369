using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>What a grower should know about a can, worst first.</summary>
internal static class CanNotes
{
    public static IReadOnlyList<Problem> Of(CanReport report)
    {
        var notes = new List<Problem>();
        Range(report, notes);
        Undissolved(report, notes);
        Settling(report, notes);
        Ph(report, notes);
        Ammonia(report, notes);
        Chemistry(report, notes);

        // A stable sort: warnings first, each kind in the order above.
        return [.. notes.Where(static n => n.Severity == Severity.Warning), .. notes.Where(static n => n.Severity != Severity.Warning)];
    }

    private static void Range(CanReport report, List<Problem> notes)
    {
        if (report.BeyondGoodRange)
        {
            notes.Add(Warning("strength",
                FormattableString.Invariant($"The ionic strength of {report.State.Solution.IonicStrength:0.##} mol/kg is beyond {Solution.GoodRange} mol/kg, where the model is good: every figure is an order of magnitude, good for yes or no."),
                "Make a little and look before you make much."));
        }
    }

    private static void Undissolved(CanReport report, List<Problem> notes)
    {
        foreach (var limit in report.Limits)
        {
            if (limit.Undissolved <= 0.0005)
            {
                continue;
            }

            var name = limit.Addition.Material.Name;
            notes.Add(limit.Limit is { } most && limit.Addition.Grams > most
                ? Warning($"add {limit.Addition.Material.Id}",
                    FormattableString.Invariant($"{limit.Undissolved:0.#} g of {name} in a litre stay undissolved: at {report.Request.Celsius:0.#} °C {most:0} g dissolve alone. The figures are for what dissolves."),
                    "Take less, or warmer water.")
                : Warning($"add {limit.Addition.Material.Id}",
                    FormattableString.Invariant($"About {limit.Undissolved:0.##} g of {name} in a litre never dissolve."), "Let it settle and give the clear part."));
        }

        foreach (var salt in report.Salts)
        {
            if (salt.Index > 0)
            {
                notes.Add(Warning("salts", FormattableString.Invariant($"Together they are past the solubility of {salt.Name} at {report.Request.Celsius:0.#} °C: it crystallises out."),
                    "Use more water or split the feed over two tanks."));
            }
        }
    }

    private static void Settling(CanReport report, List<Problem> notes)
    {
        var may = new List<string>();
        foreach (var mineral in report.Minerals)
        {
            if (mineral.Millimoles > 0)
            {
                notes.Add(Warning(mineral.Mineral.Id,
                    FormattableString.Invariant($"{Named(mineral.Mineral)} {(mineral.Index >= CanLimit.Of("comesOut").Value ? "comes out" : "may come out")}, within hours: {Round(mineral.Grams)} g in a litre ({Round(mineral.Millimoles)} mmol) at equilibrium, saturation index {mineral.Index:0.0}."),
                    "Keep the two that make it in separate cans, or use more water."));
            }
            else if (mineral.Mineral.Slow && mineral.Index > 0)
            {
                may.Add(FormattableString.Invariant($"{mineral.Mineral.Id} ({mineral.Index:+0.0})"));
            }
        }

        if (may.Count > 0)
        {
            notes.Add(Note("slow solids", $"May come out over days, often does not: {string.Join(", ", may)}.", "Use the can within the day; look for a haze or a crust."));
        }
    }

    private static void Ph(CanReport report, List<Problem> notes)
    {
        foreach (var (state, when) in new[] { (report.Closed, "just made"), (report.Open, "after standing open") })
        {
            if (state.PH < CanLimit.Of("phLow").Value)
            {
                notes.Add(Warning("pH", FormattableString.Invariant($"pH {state.PH:0.0} {when}: {CanLimit.Of("phLow").What}."), "Use less acid or acid salt."));
            }
            else if (state.PH > CanLimit.Of("phHigh").Value)
            {
                notes.Add(Warning("pH", FormattableString.Invariant($"pH {state.PH:0.0} {when}: {CanLimit.Of("phHigh").What}."), "Use it fresh, or bring the alkalinity of the water down with acid first."));
            }
        }
    }

    private static void Ammonia(CanReport report, List<Problem> notes)
    {
        var limit = CanLimit.Of("freeAmmonia");
        var worst = Math.Max(report.Closed.FreeAmmonia, report.Open.FreeAmmonia);
        if (worst > limit.Value)
        {
            var when = report.Closed.FreeAmmonia > limit.Value ? "" : " once it stands open and its pH rises";
            notes.Add(Warning("ammonia",
                FormattableString.Invariant($"Free ammonia reaches {worst:0.#} mg/L of N{when}; {limit.What} at {limit.Value} mg/L."),
                "Lower the pH with acid, or take nitrate or less ammonium. Do not breathe over the can."));
        }
    }

    private static void Chemistry(CanReport report, List<Problem> notes)
    {
        var solution = report.State.Solution;
        if (solution.Total("iron") > 0)
        {
            notes.Add(Note("iron", "Iron not held by a chelate is reckoned as iron(II); air turns it to rust within hours, faster above pH 6.", "Use it at once in slightly acid water, or take a chelate."));
        }

        if (solution.Total("thiosulfate") > 0 && report.State.PH < CanLimit.Of("thiosulfatePh").Value)
        {
            notes.Add(Warning("thiosulfate", FormattableString.Invariant($"pH {report.State.PH:0.0}: {CanLimit.Of("thiosulfatePh").What}, a gas that hurts lungs."), "Keep thiosulfate away from acid."));
        }

        if (report.Warming is { } warming && Math.Abs(warming) >= CanLimit.Of("warming").Value)
        {
            notes.Add(Note("temperature", warming < 0
                    ? FormattableString.Invariant($"Dissolving cools the water by about {-warming:0} °C.")
                    : FormattableString.Invariant($"Dissolving warms the water by about {warming:0} °C."),
                warming < 0 ? "Start with lukewarm water; what does not dissolve at first does when it warms up again." : "Add it slowly, stirring, and let it cool before you close the can."));
        }
    }

    private static string Round(double amount) => amount.ToString(amount >= 10 ? "0" : amount >= 1 ? "0.0" : "0.00", System.Globalization.CultureInfo.InvariantCulture);

    private static string Named(Mineral mineral) => char.ToUpperInvariant(mineral.Id[0]) + mineral.Id[1..];

    private static Problem Warning(string field, string message, string wayOut) => new(field, message, wayOut, Severity.Warning);

    private static Problem Note(string field, string message, string wayOut) => new(field, message, wayOut, Severity.Note);
}
