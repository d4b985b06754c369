using Ashery.Blending;

namespace Ashery.Plain;

/// <summary>
/// Every set of at most c columns in turn, a small linear programme for each: the plainest exact search, in one scalar
/// loop, and the judge of the quick ones. It shares no code with the library. Time grows as m^c.
/// </summary>
public sealed class PlainEnumeration
{
    private readonly BlendRequest request;
    private readonly int[] order;
    private readonly bool[,] forbidden;
    private readonly PlainProgramme programme;
    private readonly List<PlainBlend> found = [];
    private readonly int[] support;
    private double cutoff = double.PositiveInfinity;

    private PlainEnumeration(BlendRequest request)
    {
        this.request = request;
        order = Enumerable.Range(0, request.Columns.Count).OrderBy(i => request.Columns[i].Name, StringComparer.Ordinal).ToArray();
        programme = new PlainProgramme(request, order);
        support = new int[request.AtMost];
        forbidden = new bool[order.Length, order.Length];
        foreach (var (a, b) in request.ForbiddenPairs)
        {
            var (x, y) = (Array.IndexOf(order, a), Array.IndexOf(order, b));
            forbidden[x, y] = forbidden[y, x] = true;
        }
    }

    /// <summary>Sets solved.</summary>
    public long Solved { get; private set; }

    public static IReadOnlyList<PlainBlend> Find(BlendRequest request) => Find(request, out _);

    public static IReadOnlyList<PlainBlend> Find(BlendRequest request, out long solved)
    {
        var search = new PlainEnumeration(request);
        search.Extend(0, 0);
        solved = search.Solved;
        return search.Sorted();
    }

    private void Extend(int size, int next)
    {
        if (size > 0)
        {
            Solved++;
            if (programme.Solve(support.AsSpan(0, size)) && programme.Error <= cutoff)
            {
                Keep(size);
            }
        }

        if (size == request.AtMost)
        {
            return;
        }

        for (var i = next; i < order.Length; i++)
        {
            if (Fits(size, i))
            {
                support[size] = i;
                Extend(size + 1, i + 1);
            }
        }
    }

    private bool Fits(int size, int i)
    {
        for (var k = 0; k < size; k++)
        {
            if (forbidden[support[k], i])
            {
                return false;
            }
        }

        return true;
    }

    private void Keep(int size)
    {
        for (var k = 0; k < size; k++)
        {
            if (programme.Amount(k) <= 1e-9)
            {
                return;
            }
        }

        found.Add(new PlainBlend(support[..size], programme.Error, programme.Cost));

        // All that tie with the last are kept until the end, where cost, number and names decide.
        if (found.Count >= 4 * request.Best && found.Count >= 2000)
        {
            var kept = Sorted();
            found.Clear();
            found.AddRange(kept);
            cutoff = found[^1].Error + 1e-9;
        }
    }

    private List<PlainBlend> Sorted()
    {
        found.Sort(PlainBlend.Compare);
        return found.Take(request.Best).Select(b => b with { Members = b.Members }).ToList();
    }

    /// <summary>Places in the request, from places in the order of names.</summary>
    public static int[] Places(BlendRequest request, PlainBlend blend)
    {
        var byName = Enumerable.Range(0, request.Columns.Count).OrderBy(i => request.Columns[i].Name, StringComparer.Ordinal).ToArray();
        return [.. blend.Members.Select(i => byName[i]).Order()];
    }
}

/// <summary>A blend of the plain search.</summary>
/// <param name="Members">Places in the order of names, ascending.</param>
/// <param name="Error">Mean relative deviation.</param>
/// <param name="Cost">A kg of nutrient; infinite when unknown.</param>
public sealed record PlainBlend(int[] Members, double Error, double Cost)
{
    public static int Compare(PlainBlend a, PlainBlend b)
    {
        if (Math.Abs(a.Error - b.Error) > 1e-12)
        {
            return a.Error.CompareTo(b.Error);
        }

        if (a.Cost != b.Cost && (double.IsInfinity(a.Cost - b.Cost) || Math.Abs(a.Cost - b.Cost) > 1e-12 * Math.Max(1, a.Cost)))
        {
            return a.Cost.CompareTo(b.Cost);
        }

        var c = a.Members.Length.CompareTo(b.Members.Length);
        for (var k = 0; c == 0 && k < a.Members.Length; k++)
        {
            c = a.Members[k].CompareTo(b.Members[k]);
        }

        return c;
    }
}
