using Ashery.Blending;

namespace Ashery.Recipes;

/// <summary>Plain searches by enumeration, for small shelves.</summary>
internal static class PlainSteps
{
    private const int All = 1000;

    public static Blend? StrongestAtRatio(BlendRequest request) =>
        BlendSearch.Find(request with { Best = All }).Blends.Where(static b => b.RatioError < 1e-9).MaxBy(static b => b.Strength);

    public static IReadOnlyList<Blend> Many(BlendRequest request) => BlendSearch.Find(request with { Best = All }).Blends;

    /// <summary>Every count of steps whose mass lies in the window.</summary>
    public static IReadOnlyList<(Blend Blend, IReadOnlyList<int> Steps, double Grams)> WholeSteps(
        BlendRequest request, IReadOnlyList<double> stepGrams, double from, double to)
    {
        var found = new List<(Blend, IReadOnlyList<int>, double)>();
        Extend(0, [], [], 0);
        return [.. found.OrderBy(static f => f.Item1.RatioError).ThenBy(static f => f.Item1.CostPerNutrient ?? double.MaxValue).ThenBy(static f => f.Item1.Members.Count).Take(request.Best)];

        void Extend(int next, List<int> members, List<int> counts, double grams)
        {
            if (members.Count > 0 && grams >= from - 1e-9 && Keeps(members, counts))
            {
                var masses = members.Select((m, k) => counts[k] * stepGrams[m]).ToList();
                var blend = BlendMeasure.Of(request, [.. members], masses);
                if (double.IsFinite(blend.RatioError))
                {
                    found.Add((blend, [.. counts], grams));
                }
            }

            if (members.Count == request.AtMost)
            {
                return;
            }

            for (var i = next; i < request.Columns.Count; i++)
            {
                if (request.ForbiddenPairs.Any(p => (p.A == i && members.Contains(p.B)) || (p.B == i && members.Contains(p.A))))
                {
                    continue;
                }

                for (var n = 1; grams + (n * stepGrams[i]) <= to + 1e-9; n++)
                {
                    members.Add(i);
                    counts.Add(n);
                    Extend(i + 1, members, counts, grams + (n * stepGrams[i]));
                    members.RemoveAt(members.Count - 1);
                    counts.RemoveAt(counts.Count - 1);
                }
            }
        }

        bool Keeps(List<int> members, List<int> counts) =>
            request.Rows.All(r => members.Select((m, k) => r.Coefficients[m] * counts[k] * stepGrams[m]).Sum() <= 1e-9);
    }
}
