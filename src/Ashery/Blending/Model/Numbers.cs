using System.Runtime.InteropServices;

namespace Ashery.Blending.Model;

/// <summary>Requests hold lists; loops want spans. Arrays and lists, the usual kinds, are looked into without a copy.</summary>
internal static class Numbers
{
    public static ReadOnlySpan<double> Span(IReadOnlyList<double> values) => values switch
    {
        double[] array => array,
        List<double> list => CollectionsMarshal.AsSpan(list),
        _ => Copied(values),
    };

    public static Column[] Array(IReadOnlyList<Column> columns)
    {
        if (columns is Column[] array)
        {
            return array;
        }

        var copy = new Column[columns.Count];
        for (var i = 0; i < copy.Length; i++)
        {
            copy[i] = columns[i];
        }

        return copy;
    }

    private static double[] Copied(IReadOnlyList<double> values)
    {
        var copy = new double[values.Count];
        for (var i = 0; i < copy.Length; i++)
        {
            copy[i] = values[i];
        }

        return copy;
    }
}
