using System.Diagnostics;
using Ashery.Blending;
using Google.OrTools.LinearSolver;

namespace Ashery.Solvers;

/// <summary>
/// The blend problem as a mixed-integer programme for a general solver: shares y, deviations above and below, one binary
/// for each column. The formulation is the library's own: the same scaling, the same side rows, the same pairs.
/// </summary>
public sealed class MixedIntegerRival : IDisposable
{
    private readonly Solver solver;
    private readonly Variable[] share;
    private readonly Variable[] used;
    private readonly MPSolverParameters parameters = new();
    private readonly bool timed;

    public MixedIntegerRival(BlendRequest request, string name, double gap = 1e-4, int milliseconds = 0)
    {
        solver = Solver.CreateSolver(name) ?? throw new InvalidOperationException("The solver " + name + " is missing.");
        solver.SetNumThreads(1);
        timed = milliseconds > 0;
        if (timed)
        {
            solver.SetTimeLimit(milliseconds);
        }

        parameters.SetDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, gap);
        var m = request.Columns.Count;
        var d = request.Target.Count;
        var target = request.Target.Select(t => t / request.Target.Sum()).ToArray();
        var total = request.Columns.Select(c => c.Content.Sum()).ToArray();
        var scale = total.Select(t => t > 0 ? t : 1).ToArray();
        share = [.. Enumerable.Range(0, m).Select(_ => solver.MakeNumVar(0, double.PositiveInfinity, string.Empty))];
        used = [.. Enumerable.Range(0, m).Select(_ => solver.MakeBoolVar(string.Empty))];
        var objective = solver.Objective();
        objective.SetMinimization();
        for (var j = 0; j < d; j++)
        {
            var row = solver.MakeConstraint(1, 1);
            for (var i = 0; i < m; i++)
            {
                row.SetCoefficient(share[i], request.Columns[i].Content[j] / scale[i] / target[j]);
            }

            foreach (var sign in new[] { 1, -1 })
            {
                var deviation = solver.MakeNumVar(0, double.PositiveInfinity, string.Empty);
                row.SetCoefficient(deviation, sign);
                objective.SetCoefficient(deviation, 1.0 / d);
            }
        }

        var sum = solver.MakeConstraint(1, 1);
        var count = solver.MakeConstraint(0, request.AtMost);
        for (var i = 0; i < m; i++)
        {
            sum.SetCoefficient(share[i], total[i] > 0 ? 1 : 0);
            count.SetCoefficient(used[i], 1);
            var link = solver.MakeConstraint(double.NegativeInfinity, 0);
            link.SetCoefficient(share[i], 1);
            link.SetCoefficient(used[i], -1);
        }

        foreach (var limit in request.Rows)
        {
            var coefficients = limit.Coefficients.Select((g, i) => g / scale[i]).ToArray();
            var largest = coefficients.Max(Math.Abs);
            var row = solver.MakeConstraint(double.NegativeInfinity, 0);
            for (var i = 0; i < m && largest > 0; i++)
            {
                row.SetCoefficient(share[i], coefficients[i] / largest);
            }
        }

        foreach (var (a, b) in request.ForbiddenPairs)
        {
            var pair = solver.MakeConstraint(0, 1);
            pair.SetCoefficient(used[a], 1);
            pair.SetCoefficient(used[b], 1);
        }
    }

    /// <summary>Time spent in the solver, model building left out.</summary>
    public TimeSpan Spent { get; private set; }

    /// <summary>True when the last answer is proved; false when time ran out before.</summary>
    public bool Proved { get; private set; }

    /// <summary>Solves; the error of the best blend found, or null when there is none.</summary>
    public double? Solve()
    {
        var watch = Stopwatch.StartNew();
        var status = solver.Solve(parameters);
        Spent += watch.Elapsed;
        Proved = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE;
        return status switch
        {
            Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE => solver.Objective().Value(),
            Solver.ResultStatus.INFEASIBLE or Solver.ResultStatus.NOT_SOLVED => null,
            _ when timed => null,
            _ => throw new InvalidOperationException("The solver ended with " + status + "."),
        };
    }

    /// <summary>Members of the last solution.</summary>
    public int[] Members() => [.. Enumerable.Range(0, share.Length).Where(i => share[i].SolutionValue() > 1e-6)];

    /// <summary>Forbids the last solution's columns to be together again.</summary>
    public void CutOff()
    {
        var members = Members();
        var cut = solver.MakeConstraint(double.NegativeInfinity, members.Length - 1);
        foreach (var i in members)
        {
            cut.SetCoefficient(used[i], 1);
        }
    }

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }
}
