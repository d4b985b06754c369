using Ashery.Blending.Amounts;
using Google.OrTools.LinearSolver;

namespace Ashery.Solvers;

/// <summary>Amounts beside a fixed column as linear programmes for GLOP: all columns at once, or every allowed set in turn.</summary>
internal static class AmountRival
{
    /// <summary>Least error with these columns; infinite when the rows cannot be kept.</summary>
    public static double Error(AmountRequest request, IReadOnlyList<int> columns)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var masses = columns.Select(i => solver.MakeNumVar(0, double.PositiveInfinity, request.Columns[i].Name)).ToArray();
        var objective = solver.Objective();
        objective.SetMinimization();
        for (var j = 0; j < request.Target.Count; j++)
        {
            // above - below = sum_i a_ij m_i/t_j + w_j/t_j - 1
            var above = solver.MakeNumVar(0, double.PositiveInfinity, "above");
            var below = solver.MakeNumVar(0, double.PositiveInfinity, "below");
            var lacking = 1 - (request.Fixed[j] / request.Target[j]);
            var row = solver.MakeConstraint(lacking, lacking);
            row.SetCoefficient(above, -1);
            row.SetCoefficient(below, 1);
            for (var k = 0; k < masses.Length; k++)
            {
                row.SetCoefficient(masses[k], request.Columns[columns[k]].Content[j] / request.Target[j]);
            }

            objective.SetCoefficient(above, 1.0 / request.Target.Count);
            objective.SetCoefficient(below, 1.0 / request.Target.Count);
        }

        foreach (var limit in request.Rows)
        {
            var row = solver.MakeConstraint(double.NegativeInfinity, -limit.Constant);
            for (var k = 0; k < masses.Length; k++)
            {
                row.SetCoefficient(masses[k], limit.Coefficients[columns[k]]);
            }
        }

        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? objective.Value() : double.PositiveInfinity;
    }

    /// <summary>Least error over every set of at most so many columns without a forbidden pair.</summary>
    public static double Best(AmountRequest request)
    {
        var best = double.PositiveInfinity;
        for (var set = 0; set < 1 << request.Columns.Count; set++)
        {
            if (int.PopCount(set) <= request.AtMost && request.ForbiddenPairs.All(p => ((set >> p.A) & (set >> p.B) & 1) == 0))
            {
                best = Math.Min(best, Error(request, [.. Enumerable.Range(0, request.Columns.Count).Where(i => ((set >> i) & 1) != 0)]));
            }
        }

        return best;
    }
}
