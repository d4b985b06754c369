using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>One nutrient judged: percent by weight on the label basis, points allowed.</summary>
/// <param name="Nutrient">Which.</param>
/// <param name="Declared">On the label.</param>
/// <param name="Found">By the analysis.</param>
/// <param name="Shortfall">Declared less found; negative for an excess.</param>
/// <param name="Allowed">Points it may fall short, on the label basis; null when the rule is silent on this nutrient.</param>
/// <param name="AllowedExcess">Points it may pass the label; null when an excess is not judged.</param>
/// <param name="Passes">True within the allowance, or when the rule is silent.</param>
/// <param name="SourceId">Of the row that judged it.</param>
/// <param name="Provenance">Of that row.</param>
public sealed record ToleranceLine(
    Nutrient Nutrient, double Declared, double Found, double Shortfall, double? Allowed, double? AllowedExcess, bool Passes, string? SourceId, Provenance? Provenance);

/// <summary>An analysis judged against its label.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Lines">The declared nutrients.</param>
/// <param name="ShortfallSum">Shortfalls of N, P2O5 and K2O together, points.</param>
/// <param name="SumAllowed">Most they may add up to; null when the rule has no such limit or one nutrient only is declared.</param>
/// <param name="OverallIndex">Found value over declared value, percent; null when the rule has none.</param>
/// <param name="Passes">True when every limit of the rule is kept.</param>
public sealed record ToleranceResult(
    ToleranceRule Rule, IReadOnlyList<ToleranceLine> Lines, double ShortfallSum, double? SumAllowed, double? OverallIndex, bool Passes);

/// <summary>Judges an analysis by the tolerances of a law. What the rule says nothing of passes.</summary>
public static class LabelTolerance
{
    private const double Dust = 1e-9;

    /// <summary>Judges what was found against what the label declares.</summary>
    /// <param name="found">The analysis.</param>
    /// <param name="declared">The label.</param>
    /// <param name="rule">One of <see cref="ToleranceRules.All"/>.</param>
    /// <param name="materialId">Catalogue id of a straight fertiliser, which some rules treat apart; null for a compound.</param>
    public static ToleranceResult Check(LabelAnalysis found, LabelAnalysis declared, ToleranceRule rule, string? materialId = null)
    {
        var lines = new List<ToleranceLine>();
        var (sum, primaries) = (0.0, 0);
        foreach (var n in declared.Present)
        {
            var line = Line(n, declared.Percent(n), found.Percent(n), rule.For(n, declared.Percent(n), materialId));
            lines.Add(line);
            if (n is Nutrient.N or Nutrient.P or Nutrient.K)
            {
                primaries++;
                sum += Math.Max(0, line.Shortfall);
            }
        }

        double? sumAllowed = primaries switch { 2 => rule.Sums?.Two, 3 => rule.Sums?.Three, _ => null };
        var index = rule.Index is { } limit ? Index(found, declared, limit) : null;
        var passes = lines.TrueForAll(static l => l.Passes)
            && (sumAllowed is null || sum <= sumAllowed + Dust)
            && (index is null || index >= rule.Index!.Percent - Dust);
        return new ToleranceResult(rule, lines, sum, sumAllowed, index, passes);
    }

    private static ToleranceLine Line(Nutrient n, double declared, double found, Allowance? row)
    {
        var shortfall = declared - found;
        if (row is null)
        {
            return new ToleranceLine(n, declared, found, shortfall, null, null, Passes: true, null, null);
        }

        // Rules on the oxide allow points of oxide; the label basis here is the element.
        var factor = row.OnOxide ? ElementInOxide(n) : 1;
        var allowed = row.Shortfall(declared / factor) * factor;
        var excess = row.Excess(declared / factor) * factor;
        var passes = shortfall <= allowed + Dust && (excess is null || -shortfall <= excess + Dust);
        return new ToleranceLine(n, declared, found, shortfall, allowed, excess, passes, row.SourceId, row.Provenance);
    }

    private static double ElementInOxide(Nutrient n) => n switch
    {
        Nutrient.Ca => LabelBasis.CalciumInCaO,
        Nutrient.Mg => LabelBasis.MagnesiumInMgO,
        Nutrient.S => LabelBasis.SulfurInSO3,
        Nutrient.Na => LabelItems.ToLabelBasis(LabelItem.Na2O),
        _ => 1,
    };

    private static double? Index(LabelAnalysis found, LabelAnalysis declared, IndexLimit limit)
    {
        double Value(LabelAnalysis a) => (limit.WeightN * a[Nutrient.N]) + (limit.WeightP * a[Nutrient.P]) + (limit.WeightK * a[Nutrient.K]);
        var promised = Value(declared);
        return promised > 0 ? Value(found) / promised * 100 : null;
    }
}
