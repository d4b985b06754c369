namespace Ashery.Blending.Model;

/// <summary>Columns sorted by what they are, so that the order in which they were given cannot change an answer.</summary>
internal static class CanonicalOrder
{
    public static int[] Of(Column[] columns, IReadOnlyList<LinearRow> rows)
    {
        var order = new int[columns.Length];
        var sorted = true;
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
            sorted &= i == 0 || string.CompareOrdinal(columns[i - 1].Name, columns[i].Name) < 0;
        }

        if (!sorted)
        {
            Array.Sort(order, (a, b) => Compare(columns, rows, a, b));
        }

        return order;
    }

    private static int Compare(Column[] columns, IReadOnlyList<LinearRow> rows, int a, int b)
    {
        var (ca, cb) = (columns[a], columns[b]);
        var c = string.CompareOrdinal(ca.Name, cb.Name);
        for (var j = 0; c == 0 && j < ca.Content.Count; j++)
        {
            c = ca.Content[j].CompareTo(cb.Content[j]);
        }

        if (c == 0)
        {
            c = Nullable.Compare(ca.Price, cb.Price);
        }

        for (var r = 0; c == 0 && r < rows.Count; r++)
        {
            c = rows[r].Coefficients[a].CompareTo(rows[r].Coefficients[b]);
        }

        return c != 0 ? c : a.CompareTo(b);
    }
}
