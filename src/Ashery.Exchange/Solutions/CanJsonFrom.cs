using Ashery.Cautions;
using Ashery.Exchange.Json;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Exchange.Solutions;

/// <summary>The shape of a can from the library's report.</summary>
public static class CanJsonFrom
{
    public static CanJson Report(CanReport report)
    {
        var state = report.State;
        var solution = state.Solution;
        return new(
            report.Request.WaterName,
            report.Request.Celsius,
            report.Request.Air == Air.Open ? "open" : "closed",
            Each(report.Request.Additions, static a => new CanAddedJson(a.Material.Id, a.Material.Name, a.Grams)),
            state.PH,
            state.Ec25,
            state.Ec,
            solution.IonicStrength,
            state.OsmoticPotential,
            state.Alkalinity,
            state.FreeAmmonia,
            SolutionMeasures.FreeAmmoniaFraction(solution),
            report.BeyondGoodRange,
            State(report.Closed),
            State(report.Open),
            State(report.Settled),
            new(report.Nutrients.Nitrate, report.Nutrients.Ammonium, report.Nutrients.Urea),
            Each(report.Nutrients.Rows, static n => new CanNutrientJson(n.Nutrient.ToString(), n.Total, n.FromWater, n.OnLabelBasis)),
            Named(report.Minerals, static m => m.Mineral.Id, static m => m.Index, static _ => true),
            Named(report.Minerals, static m => m.Mineral.Id, static m => m.Millimoles, static m => m.Millimoles > 0),
            Named(report.Minerals, static m => m.Mineral.Id, static m => m.Grams, static m => m.Millimoles > 0),
            Named(report.Minerals, static m => m.Mineral.Id, static m => m.MayMillimoles, static m => m.MayMillimoles > 0),
            Each(report.Salts, static s => new CanSaltJson(s.Formula, s.Name, s.Index)),
            Each(report.Limits, static l => new CanLimitJson(l.Addition.Material.Id, l.Limit is { } most && double.IsFinite(most) ? most : null, l.Undissolved)),
            Each(report.Order.Steps, static s => new CanStepJson(s.Addition.Material.Id, s.Reason, s.Nearest, double.IsFinite(s.Index) ? s.Index : null)),
            report.Order.Basis,
            new(report.Cold.Celsius, report.Cold.First),
            report.Warming,
            report.WaterMass,
            Each(solution.Species, static s => new CanSpeciesJson(s.Species.Id, s.Molality, s.Log10Activity)),
            new(solution.Certificate.Mass, solution.Certificate.Charge),
            Each(report.CautionIds, static id => CautionIndex.Default.Find(id)!.Words),
            report.Assumed,
            ProblemJson.From(report.Notes));
    }

    private static CanStateJson State(CanState state) => new(state.PH, state.Ec25, state.Ec, state.Alkalinity, state.FreeAmmonia);

    private static List<TOut> Each<TIn, TOut>(IReadOnlyList<TIn> items, Func<TIn, TOut> shape)
    {
        var shaped = new List<TOut>(items.Count);
        foreach (var item in items)
        {
            shaped.Add(shape(item));
        }

        return shaped;
    }

    private static Dictionary<string, double> Named(
        IReadOnlyList<MineralState> items, Func<MineralState, string> name, Func<MineralState, double> value, Func<MineralState, bool> wanted)
    {
        var named = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (wanted(item))
            {
                named.Add(name(item), value(item));
            }
        }

        return named;
    }
}
