using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>What a feed becomes in the can: dissolved, in equilibrium, and what may come out of it.</summary>
public static class CanMaker
{
    /// <summary>Most of one material that is taken, g per kg of added water.</summary>
    public const double MostGrams = 3000;

    /// <summary>The can of a request, or what stands in its way.</summary>
    public static Result<CanReport> Make(CanRequest request)
    {
        var wrong = CanCheck.Of(request);
        return wrong.Count > 0 ? Result.Fail<CanReport>(wrong) : Result.Of(Report(request));
    }

    /// <summary>Only the solution of a request, everything that can dissolve dissolved: for searches that need no more.</summary>
    public static Result<Solution> Dissolve(CanRequest request)
    {
        var wrong = CanCheck.Of(request);
        return wrong.Count > 0 ? Result.Fail<Solution>(wrong) : Result.Of(Speciation.Solve(Fill(request, out _).Input(request.Celsius, request.Air)));
    }

    private static CanContents Fill(CanRequest request, out SaltLimit[] limits)
    {
        limits = new SaltLimit[request.Additions.Count];
        var contents = new CanContents(request.Water);
        for (var i = 0; i < limits.Length; i++)
        {
            limits[i] = SaltLimits.Of(request.Additions[i], request.Celsius);
            contents.Add(request.Additions[i].Material, SaltLimits.Dissolved(limits[i]));
        }

        return contents;
    }

    private static CanReport Report(CanRequest request)
    {
        var contents = Fill(request, out var limits);
        var parts = new (CanAddition, double)[limits.Length];
        for (var i = 0; i < limits.Length; i++)
        {
            parts[i] = (limits[i].Addition, SaltLimits.Dissolved(limits[i]));
        }

        var input = contents.Input(request.Celsius, request.Air);
        var closed = CanState.Of(Speciation.Solve(input.Under(Air.Closed)));
        var open = CanState.Of(Speciation.Solve(input.Under(Air.Open)));
        var state = request.Air == Air.Open ? open : closed;
        var settled = Settle(state, input);
        var report = new CanReport
        {
            Request = request,
            WaterMass = contents.WaterMass,
            State = state,
            Closed = closed,
            Open = open,
            Nutrients = Nutrients(state.Solution, request.Water, contents.WaterMass),
            Minerals = Minerals(state.Solution, settled, input, contents.WaterMass),
            Settled = settled is null ? state : CanState.Of(settled.After),
            Limits = limits,
            Salts = SaltSaturation.All(state.Solution),
            Order = OrderSearch.Find(request, parts),
            Cold = Saturated(limits) is { } salt ? new(null, salt, request.Celsius) : ColdSearch.Find(input),
            Warming = HeatOfDissolving.Of(parts, contents.WaterMass),
            CautionIds = [],
            Notes = [],
            Assumed = Assumed(request),
        };
        return report with { CautionIds = CanCautions.Of(report), Notes = CanNotes.Of(report) };
    }

    // What lies undissolved on the bottom is already past its limit.
    private static string? Saturated(SaltLimit[] limits)
    {
        foreach (var limit in limits)
        {
            if (SaltLimits.Dissolved(limit) < limit.Addition.Grams)
            {
                return limit.Addition.Material.Name;
            }
        }

        return null;
    }

    private static Settled? Settle(CanState state, SolutionInput input)
    {
        foreach (var index in SaturationIndex.All(state.Solution))
        {
            if (!index.Mineral.Slow && index.Index > 0)
            {
                return Precipitation.Settle(input);
            }
        }

        return null;
    }

    private static List<MineralState> Minerals(Solution solution, Settled? settled, SolutionInput input, double waterMass)
    {
        var minerals = new List<MineralState>();
        foreach (var index in SaturationIndex.All(solution))
        {
            // Amounts come per kg of all water; a kg of added water holds that much more of it.
            var moles = (settled?.Amount(index.Mineral.Id) ?? 0) * waterMass;
            var may = index.Mineral.Slow && index.Index > 0 ? Precipitation.Settle(input, [index.Mineral]).Amount(index.Mineral.Id) * waterMass : 0;
            var molarMass = Formula.Parse(index.Mineral.Formula).Value!.MolarMass;
            minerals.Add(new(index.Mineral, index.Index, moles * 1000, moles * molarMass, may * 1000, may * molarMass));
        }

        minerals.Sort(static (a, b) => a.Index != b.Index ? b.Index.CompareTo(a.Index) : string.CompareOrdinal(a.Mineral.Id, b.Mineral.Id));
        return minerals;
    }

    private static CanNutrients Nutrients(Solution solution, SolutionInput water, double waterMass)
    {
        var totals = new double[solution.Totals.Count];
        for (var c = 0; c < totals.Length; c++)
        {
            totals[c] = solution.Totals[c];
        }

        // g/kg to mg/L.
        var rows = new List<CanNutrient>();
        for (var n = Nutrient.N; n <= Nutrient.Na; n++)
        {
            var total = IonNutrients.GramsOf(n, totals) * 1000;
            if (total > 0)
            {
                rows.Add(new(n, total, IonNutrients.GramsOf(n, water.Totals) * 1000 / waterMass, total / LabelBasis.ElementPerLabel(n)));
            }
        }

        var nitrogen = IonNutrients.Weight(Nutrient.N) * 1000;
        return new(solution.Total("nitrate") * nitrogen, solution.Total("ammonium") * nitrogen, solution.Total("urea") * 2 * nitrogen, rows);
    }

    private static List<string> Assumed(CanRequest request)
    {
        var assumed = new List<string>();
        foreach (var addition in request.Additions)
        {
            assumed.AddRange(addition.Material.Assumed);
        }

        assumed.Add("A litre of water is taken as a kilogram.");
        if (request.Additions.Count > 1)
        {
            assumed.Add("The solubility of each material is that of it alone in pure water.");
        }

        return assumed;
    }
}
