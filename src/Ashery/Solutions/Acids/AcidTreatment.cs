using Ashery.Problems;

namespace Ashery.Solutions.Acids;

/// <summary>How much acid brings a water to an alkalinity or a pH, and what becomes of it. A litre of water is taken as a kilogram.</summary>
public static class AcidTreatment
{
    private const int CurvePoints = 48;

    // mg CaCO3 a mole of charge: half of 100.087 g/mol.
    private const double CalciumCarbonate = 50043.5;

    // g/mol: N, P, S, and what half of P2O5 and SO4 weigh for each (standard atomic weights).
    private const double Nitrogen = 14.007, Phosphorus = 30.974, HalfPentoxide = 70.9715, Sulfur = 32.06, Sulfate = 96.056;

    /// <summary>The dose, the water before, just mixed and after standing, what it brings, and the cautions.</summary>
    public static Result<AcidReport> Find(AcidRequest request)
    {
        if (Refuse(request) is { } refused)
        {
            return Result.Fail<AcidReport>(refused);
        }

        var water = request.Water.Under(Air.Closed);
        var found = request.Target.PH is { } pH
            ? AcidDose.ToPh(water.Under(request.At), request.Bottle.Acid.Pure, pH)
            : AcidDose.ToAlkalinity(water, request.Bottle.Acid.Pure, request.Target.Alkalinity!.Value / CalciumCarbonate);
        if (!found.Ok)
        {
            return Result.Fail<AcidReport>(found.Problems);
        }

        var moles = found.Value.Moles;
        var amount = Amount(request, moles);
        var report = new AcidReport
        {
            Request = request,
            Amount = amount,
            Stock = request.InjectorRatio is { } ratio
                ? new(ratio, amount.GramsPerLitre * ratio, amount.MillilitresPerLitre * ratio, amount.PureGramsPerLitre * ratio / 1000)
                : null,
            Nutrients = Nutrients(request.Bottle.Acid, moles * 1000),
            Before = Stage(water),
            Mixed = Stage(With(water, request.Bottle.Acid.Pure, moles)),
            Standing = Stage(With(water, request.Bottle.Acid.Pure, moles).Under(Air.Open)),
            PhForTenth = (PhAt(request, moles * 0.9), PhAt(request, moles * 1.1)),
            Curve = Curve(water, request.Bottle, moles),
            Notes = [],
            Cautions = AcidAdvice.Cautions(request.Bottle.Acid),
        };
        return Result.Of(report with { Notes = AcidAdvice.Notes(report) });
    }

    private static Problem? Refuse(AcidRequest request)
    {
        if (request.Water.Celsius is not (>= Speciation.Coldest and <= Speciation.Warmest))
        {
            return new("celsius", FormattableString.Invariant($"{request.Water.Celsius:0.#} °C is outside 0 to 40 °C."), "Give the temperature of the water, as in 20.");
        }

        if (!(request.Litres > 0 && request.Litres <= 1e6))
        {
            return new("volume", FormattableString.Invariant($"{request.Litres} L is not a volume of water here."), "Give more than 0 and at most 1,000,000 L, as in 10.");
        }

        if (request.InjectorRatio is { } ratio && !(ratio >= 1 && ratio <= 2000))
        {
            return new("ratio", FormattableString.Invariant($"1:{ratio:0.##} is not the ratio of an injector."), "Write 1:10 to 1:2000, as in 1:100.");
        }

        return request.Target switch
        {
            { PH: null, Alkalinity: null } => new("to-ph", "No target is given.", "Give a pH, as in 5.8, or an alkalinity in mg/L as CaCO3, as in 60."),
            { PH: not null, Alkalinity: not null } => new("to-ph", "Both a pH and an alkalinity are given.", "Give one of the two; the other follows."),
            { Alkalinity: < 0 } target => new("to-alkalinity", FormattableString.Invariant($"{target.Alkalinity} mg/L is negative."), "Ask for 0 or more; 40 to 80 is usual for pots."),
            _ => null,
        };
    }

    internal static SolutionInput With(SolutionInput water, Salt acid, double moles)
    {
        var totals = water.Totals.ToArray();
        foreach (var (component, number) in acid.Gives)
        {
            totals[component] += number * moles;
        }

        return water.WithTotals(totals);
    }

    private static AcidAmount Amount(AcidRequest request, double molesPerLitre)
    {
        var pure = molesPerLitre * request.Bottle.Acid.Pure.MolarMass;
        return new(molesPerLitre, pure, request.Bottle.Grams(pure), request.Bottle.Millilitres(pure), request.Litres);
    }

    private static double PhAt(AcidRequest request, double moles) =>
        Speciation.Solve(With(request.Water, request.Bottle.Acid.Pure, moles).Under(request.Target.PH is null ? Air.Closed : request.At)).PH;

    private static AcidNutrients Nutrients(Acid acid, double millimoles) => acid.Pure.Formula switch
    {
        "HNO3" => new(millimoles * Nitrogen, 0, 0, 0, 0),
        "H3PO4" => new(0, millimoles * Phosphorus, millimoles * HalfPentoxide, 0, 0),
        "H2SO4" => new(0, 0, 0, millimoles * Sulfur, millimoles * Sulfate),
        _ => new(0, 0, 0, 0, 0),
    };

    private static AcidStage Stage(SolutionInput input)
    {
        var solution = Speciation.Solve(input);
        return new()
        {
            Solution = solution,
            EcAt25 = Conductivity.At25(solution),
            Alkalinity = SolutionMeasures.Alkalinity(solution) * CalciumCarbonate,
            Bicarbonate = CarbonateAlkalinity(solution) * CalciumCarbonate,
            Saturation = SaturationIndex.All(solution),
        };
    }

    // A species of carbonate takes up what its carbonate would need to become carbonic acid, less the protons it holds already.
    private static double CarbonateAlkalinity(Solution solution)
    {
        var carbonate = solution.Input.Chemistry.Known("carbonate");
        var sum = 0.0;
        foreach (var (species, molality, _) in solution.Species)
        {
            foreach (var (component, number) in species.Parts)
            {
                if (component == carbonate)
                {
                    sum += ((2 * number) - species.Protons) * molality;
                }
            }
        }

        return Math.Max(0, sum);
    }

    private static AcidCurvePoint[] Curve(SolutionInput water, AcidBottle bottle, double moles)
    {
        var points = new AcidCurvePoint[CurvePoints + 1];
        for (var i = 0; i < points.Length; i++)
        {
            var at = moles * 1.5 * i / CurvePoints;
            var input = With(water, bottle.Acid.Pure, at);
            points[i] = new(bottle.Grams(at * bottle.Acid.Pure.MolarMass), Speciation.Solve(input).PH, Speciation.Solve(input.Under(Air.Open)).PH);
        }

        return points;
    }
}
