using System.Runtime.CompilerServices;

namespace Ashery.Blending.Uncertainty;

/// <summary>
/// Order statistics without a full sort: one pass counts values in equal bins between the least and the greatest, then only the bin
/// that holds the wanted rank is sorted. About n steps for spread-out values; at worst one sort.
/// </summary>
internal sealed class Percentiles(int count)
{
    private const int Bins = 1024;
    private readonly int[] counts = new int[Bins];
    private readonly ushort[] bin = new ushort[count];
    private readonly double[] chosen = new double[count];

    /// <summary>The values at ranks ceil(p n) and ceil(q n) of the first n values.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public (double First, double Second) Of(ReadOnlySpan<double> values, double p, double q)
    {
        values = values[..count];
        var (least, greatest) = (values[0], values[0]);
        foreach (var v in values)
        {
            least = Math.Min(least, v);
            greatest = Math.Max(greatest, v);
        }

        if (!(greatest > least))
        {
            return (least, least);
        }

        Array.Clear(counts);
        var scale = (Bins - 1) / (greatest - least);
        for (var k = 0; k < values.Length; k++)
        {
            var b = (ushort)((values[k] - least) * scale);
            bin[k] = b;
            counts[b]++;
        }

        return (At(values, Rank(p)), At(values, Rank(q)));
    }

    private int Rank(double p) => Math.Clamp((int)Math.Ceiling(p * count) - 1, 0, count - 1);

    private double At(ReadOnlySpan<double> values, int rank)
    {
        var wanted = 0;
        var before = 0;
        while (before + counts[wanted] <= rank)
        {
            before += counts[wanted++];
        }

        var size = 0;
        for (var k = 0; k < values.Length; k++)
        {
            if (bin[k] == wanted)
            {
                chosen[size++] = values[k];
            }
        }

        Array.Sort(chosen, 0, size);
        return chosen[rank - before];
    }
}
