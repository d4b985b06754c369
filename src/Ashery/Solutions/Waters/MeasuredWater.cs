using System.Globalization;
using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>Everything a report says, in the library's units, checked against itself.</summary>
internal sealed record MeasuredWater(WaterReport Report, WaterDraft Draft, IReadOnlyList<ReportedAmount> Lines)
{
    // Alkalinity is titrated to about pH 4.5: below it there is none (Standard Methods 2320, from memory).
    private const double EndPoint = 4.5;

    /// <summary>pH by which the inorganic carbon is found; null when not reported, or where acid rules.</summary>
    public double? PH => Report.PH is { } pH && pH >= EndPoint ? pH : null;

    public double PhCelsius => Report.Celsius ?? 25;

    public WaterEc? Ec { get; private init; }

    /// <summary>Dissolved solids, mg/L.</summary>
    public double? Solids { get; private init; }

    /// <summary>One of the ions that make up most of a water is known.</summary>
    public bool HasMajor => WaterDraft.Majors.Any(m => m is not ("potassium" or "nitrate") && Draft.Knows(m));

    public static Result<MeasuredWater> Read(WaterReport report)
    {
        var problems = new List<Problem>();
        var lines = new List<ReportedAmount>();
        foreach (var line in report.Lines)
        {
            var read = ReportedAmount.Read(line);
            problems.AddRange(read.Problems);
            if (read.Ok)
            {
                lines.Add(read.Value);
            }
        }

        WaterEc? ec = null;
        if (report.Ec is { } given)
        {
            problems.AddRange(WaterEc.Check(given, out var conductivity).Problems);
            ec = conductivity.Value > 0 ? conductivity : null;
        }

        PhAndWarmth(report, problems);
        Twice(lines, problems);
        if (report.Lines.Count == 0 && report.Ec is null && problems.Count == 0)
        {
            problems.Add(new("water", "The report is empty: no ion, no alkalinity, no conductivity.", "Give what the laboratory printed; conductivity alone gives a rough guess."));
        }

        var draft = new WaterDraft();
        if (problems.Count == 0)
        {
            Fill(draft, lines, report, problems);
        }

        var made = new MeasuredWater(report, draft, lines) { Ec = ec, Solids = lines.Find(static l => l.Quantity.Kind == WaterQuantityKind.Solids)?.Amount };
        if (problems.Count == 0 && !made.HasMajor && ec is null && made.Solids is null)
        {
            problems.Add(new("water", "None of the ions that make up a water is listed, and no conductivity.", "Give at least hardness or alkalinity, or the conductivity."));
        }

        return problems.Exists(static p => p.Severity == Severity.Error) ? Result.Fail<MeasuredWater>(problems) : Result.Of(made, problems);
    }

    private static void PhAndWarmth(WaterReport report, List<Problem> problems)
    {
        if (report.PH is { } pH && !(pH is >= 2 and <= 12))
        {
            problems.Add(new("pH", string.Create(CultureInfo.InvariantCulture, $"A pH of {pH:0.##} is outside 2 to 12, where any water for plants lies."), "Check the figure; most waters have 5 to 9."));
        }

        if (report.Celsius is { } celsius && !(celsius is >= Speciation.Coldest and <= Speciation.Warmest))
        {
            problems.Add(new("celsius", string.Create(CultureInfo.InvariantCulture, $"{celsius:0.#} °C is outside 0 to 40 °C."), "Give the temperature of the water when its pH was read, or leave it out."));
        }
    }

    // Nitrate as NO3 and again as NO3-N, alkalinity and again HCO3: which one counts is not ours to guess.
    private static void Twice(List<ReportedAmount> lines, List<Problem> problems)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (Same(lines[i].Quantity, lines[j].Quantity))
                {
                    problems.Add(new(
                        WaterNumber.Shown(lines[i].Line.Name),
                        $"{lines[i].Quantity.Id} is there twice: {Said(lines[j])} and {Said(lines[i])}.",
                        "Keep one of them; sheets often print the same thing in two ways."));
                    break;
                }
            }
        }
    }

    // Alkalinity takes in bicarbonate and carbonate; those two are given side by side.
    private static bool Same(WaterQuantity a, WaterQuantity b) => a == b
        || (a.Kind == WaterQuantityKind.Alkalinity && b.Kind == WaterQuantityKind.Alkalinity && (a.Id == "alkalinity" || b.Id == "alkalinity"));

    private static string Said(ReportedAmount line) =>
        string.Create(CultureInfo.InvariantCulture, $"{WaterNumber.Shown(line.Line.Name)} {line.Line.Value:0.###} {line.Unit.Id}");

    private static void Fill(WaterDraft draft, List<ReportedAmount> lines, WaterReport report, List<Problem> problems)
    {
        ReportedAmount? hardness = null;
        foreach (var line in lines)
        {
            switch (line.Quantity.Kind)
            {
                case WaterQuantityKind.Ion: Put(draft, line.Quantity.Component!, line.Amount, line); break;
                case WaterQuantityKind.Alkalinity: Put(draft, "alkalinity", draft.Alkalinity + line.Amount, line); break;
                case WaterQuantityKind.Hardness: hardness = line; break;
                default: break;
            }
        }

        if (report.PH is { } pH && pH < EndPoint)
        {
            if (draft.Alkalinity > 1e-5)
            {
                problems.Add(new(
                    "alkalinity", string.Create(CultureInfo.InvariantCulture, $"A water of pH {pH:0.##} has no alkalinity: it is titrated to about pH 4.5, and this one starts below."),
                    "Check the pH and the alkalinity; one of them is not of this water."));
            }
            else
            {
                draft.Set("alkalinity", -Math.Pow(10, -pH));
            }
        }

        if (hardness is not null)
        {
            Hardness(draft, hardness, problems);
        }
    }

    private static void Put(WaterDraft draft, string quantity, double moles, ReportedAmount line)
    {
        if (line.Line.Below)
        {
            draft.Estimate(quantity, new(moles / 2, 0, moles), "less than the laboratory can tell; half of that is taken");
        }
        else
        {
            draft.Set(quantity, moles);
        }
    }

    private static void Hardness(WaterDraft draft, ReportedAmount hardness, List<Problem> problems)
    {
        const double tolerance = 0.05, least = 2e-5;
        double calcium = draft.Amount("calcium"), magnesium = draft.Amount("magnesium"), rest = hardness.Amount - calcium - magnesium;
        if (rest < -Math.Max(least, tolerance * (calcium + magnesium)))
        {
            problems.Add(new(
                "hardness",
                string.Create(CultureInfo.InvariantCulture, $"A hardness of {hardness.Line.Value:0.##} {hardness.Unit.Id} ({hardness.Amount * 100087:0} mg/L CaCO3) is less than the calcium and magnesium listed, {(calcium + magnesium) * 100087:0} mg/L CaCO3."),
                "Check the units: calcium may be printed as CaCO3, the hardness in other degrees."));
        }
        else if (!draft.Knows("calcium") && !draft.Knows("magnesium"))
        {
            WaterCompletion.SplitHardness(draft, hardness.Amount);
        }
        else if (!draft.Knows("magnesium"))
        {
            draft.Set("magnesium", Math.Max(0, rest));
        }
        else if (!draft.Knows("calcium"))
        {
            draft.Set("calcium", Math.Max(0, rest));
        }
        else if (rest > Math.Max(10 * least, 2 * tolerance * hardness.Amount))
        {
            problems.Add(new(
                "hardness",
                string.Create(CultureInfo.InvariantCulture, $"The hardness is {rest * 100087:0} mg/L CaCO3 more than calcium and magnesium make."),
                "Calcium and magnesium are used as they stand; check which of the three is of another day.", Severity.Warning));
        }
    }
}
