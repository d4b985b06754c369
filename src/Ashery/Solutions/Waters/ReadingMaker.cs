using System.Globalization;
using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>Works out the figures of a water that has been completed.</summary>
internal static class ReadingMaker
{
    private const double CalciumCarbonate = 100087, Equivalent = 50043.5;

    public static WaterReading Make(MeasuredWater measured, IonBalance balance, (string Quantity, double Moles)? closing, IReadOnlyList<Problem> notes)
    {
        var draft = measured.Draft;
        var report = measured.Report;
        var bare = new SourceWater(report.Id, report.Name, draft.Totals, measured.PH, measured.PhCelsius);
        var solution = Speciation.Solve(bare.ToInput());
        double? ec = measured.Ec is { } m
            ? m.Value * (m.Celsius == 25 ? 1 : Conductivity.Of(solution) / Conductivity.Of(Speciation.Solve(bare.ToInput(m.Celsius))))
            : null;
        var water = new SourceWater(report.Id, report.Name, draft.Totals, measured.PH, measured.PhCelsius)
        {
            MeasuredEc = ec,
            Estimated = [.. draft.Estimates.Select(static e => e.Quantity)],
        };
        var spread = new WaterSpread(draft);
        var computed = spread.Of(d => WaterEc.Of(d, measured.PH, measured.PhCelsius, 25));
        double calcium = draft.Amount("calcium"), magnesium = draft.Amount("magnesium");
        return new()
        {
            Report = report,
            Water = water,
            Solution = solution,
            Balance = balance,
            Sides = BalanceMaker.Sides(draft),
            Estimates = draft.Estimates,
            Closing = closing,
            ComputedEc = computed,
            EcWords = ec is { } value ? EcWords(value, computed, measured) : null,
            Hardness = spread.Of(static d => (d.Amount("calcium") + d.Amount("magnesium")) * CalciumCarbonate),
            Alkalinity = spread.Of(static d => d.Alkalinity * Equivalent),
            Sar = calcium + magnesium > 0 ? spread.Of(Sar) : null,
            AdjustedSar = calcium > 0 ? AdjustedSar.Of(draft.Amount("sodium"), calcium, magnesium, draft.Alkalinity, solution.IonicStrength) : null,
            ResidualAlkalinity = (draft.Alkalinity - draft.Equivalents("calcium") - draft.Equivalents("magnesium")) * 1000,
            Solids = RiverWater.Solids(draft),
            PhWords = report.PH is null ? "No pH is given: the water is taken in balance with the carbon dioxide of the air." : null,
            Notes = notes,
        };
    }

    // Na/sqrt((Ca + Mg)/2) in meq/L is Na/sqrt(Ca + Mg) in mmol/L.
    private static double Sar(WaterDraft draft) =>
        draft.Amount("sodium") * 1000 / Math.Sqrt(Math.Max(1e-9, draft.Amount("calcium") + draft.Amount("magnesium")) * 1000);

    private static string EcWords(double measured, WaterRange computed, MeasuredWater water)
    {
        var at = water.Ec is { Celsius: not 25 } ec ? string.Create(CultureInfo.InvariantCulture, $" (from {ec.Value:0.###} at {ec.Celsius:0} °C)") : string.Empty;
        var both = string.Create(CultureInfo.InvariantCulture, $"Measured {measured:0.###} mS/cm at 25 °C{at}, {computed.Typical:0.###} from the ions: ");
        var off = 100 * ((computed.Typical / measured) - 1);
        return Math.Abs(off) <= WaterCheck.Of("ec.agrees") ? both + string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(off):0.#} % apart, they agree.")
            : off < 0 ? both + string.Create(CultureInfo.InvariantCulture, $"{-off:0} % of it is not accounted for; the report leaves ions out or prints some too low.")
            : both + string.Create(CultureInfo.InvariantCulture, $"the ions would conduct {off:0} % more; one is printed too high, or the conductivity is of another day.");
    }
}
