namespace Ashery.Blending.Model;

/// <summary>Columns sorted by what they are, so that the order in which they were given cannot change an answer.</summary>
internal static class CanonicalOrder
{
    public static int[] Of(BlendRequest request)
    {
        var order = new int[request.Columns.Count];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) => Compare(request, a, b));
        return order;
    }

    private static int Compare(BlendRequest request, int a, int b)
    {
        var (ca, cb) = (request.Columns[a], request.Columns[b]);
        var c = string.CompareOrdinal(ca.Name, cb.Name);
        for (var j = 0; c == 0 && j < ca.Content.Count; j++)
        {
            c = ca.Content[j].CompareTo(cb.Content[j]);
        }

        if (c == 0)
        {
            c = Nullable.Compare(ca.Price, cb.Price);
        }

        for (var r = 0; c == 0 && r < request.Rows.Count; r++)
        {
            c = request.Rows[r].Coefficients[a].CompareTo(request.Rows[r].Coefficients[b]);
        }

        return c != 0 ? c : a.CompareTo(b);
    }
}
