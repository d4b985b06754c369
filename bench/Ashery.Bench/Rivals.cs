using Ashery.Blending;
using Ashery.Solvers;

namespace Ashery.Bench;

/// <summary>The three general solvers on the same formulation.</summary>
internal static class Rivals
{
    public static readonly string[] Names = ["SCIP", "HIGHS", "CBC"];

    /// <summary>Each solver once on a small problem, so that libraries are loaded and warm.</summary>
    public static void Warm(BlendRequest request)
    {
        foreach (var name in Names)
        {
            for (var run = 0; run < 3; run++)
            {
                One(request, name, 5_000);
            }
        }
    }

    /// <summary>Time to prove the best blend, ms, whether it was proved within the limit, and its error.</summary>
    public static (double Milliseconds, bool Proved, double? Error) One(BlendRequest request, string name, int limit)
    {
        using var quiet = new Quiet();
        using var rival = new MixedIntegerRival(request, name, milliseconds: limit);
        var error = rival.Solve();
        return (rival.Spent.TotalMilliseconds, rival.Proved, error);
    }

    /// <summary>Time to find so many blends, each proved and then cut off, and their errors.</summary>
    public static (double Milliseconds, List<double> Errors) Several(BlendRequest request, string name, int count)
    {
        using var quiet = new Quiet();
        using var rival = new MixedIntegerRival(request, name);
        var errors = new List<double>();
        while (errors.Count < count && rival.Solve() is { } error)
        {
            errors.Add(error);
            rival.CutOff();
        }

        return (rival.Spent.TotalMilliseconds, errors);
    }
}
