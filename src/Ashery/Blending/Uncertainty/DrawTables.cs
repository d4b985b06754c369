using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Ashery.Blending.Model;

namespace Ashery.Blending.Uncertainty;

/// <summary>Drawn contents and amounts of the columns that any blend uses, one block of draws at a time.</summary>
internal sealed class DrawTables
{
    private const int Largest = 512;
    private readonly int d;
    private readonly int[] place;
    private readonly int used;
    private readonly ContentRange[] ranges;
    private readonly double[] table;
    private readonly Stream8 stream;

    public DrawTables(UncertaintyRequest request)
    {
        d = request.Blend.Target.Count;
        place = new int[request.Blend.Columns.Count];
        Array.Fill(place, -1);
        foreach (var column in request.Blends.SelectMany(b => b.Members).Distinct().Order())
        {
            place[column] = used++;
        }

        ranges = new ContentRange[used * (d + 1)];
        for (var i = 0; i < place.Length; i++)
        {
            if (place[i] >= 0)
            {
                var e = request.AmountError[i];
                ranges[place[i] * (d + 1)] = new ContentRange(1 - e, 1, 1 + e);
                for (var j = 0; j < d; j++)
                {
                    ranges[(place[i] * (d + 1)) + 1 + j] = request.Contents[i][j];
                }
            }
        }

        table = new double[ranges.Length * Largest];
        stream = new Stream8(request.Seed);
        Target = [.. BlendGuard.Normalised(request.Blend.Target).Select(Vector256.Create)];
    }

    public Vector256<double>[] Target { get; }

    public int Place(int column) => place[column];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Amount(int at, int draw) => Vector256.LoadUnsafe(ref table[(at * (d + 1) * Largest) + draw]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> Content(int at, int nutrient, int draw) =>
        Vector256.LoadUnsafe(ref table[(((at * (d + 1)) + 1 + nutrient) * Largest) + draw]);

    /// <summary>Fills the block. A figure without a range takes no random numbers.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Draw(int count)
    {
        for (var r = 0; r < ranges.Length; r++)
        {
            var into = table.AsSpan(r * Largest, count);
            var (min, mode, max) = ranges[r];
            if (max <= min)
            {
                into.Fill(mode);
                continue;
            }

            // Inverse of the triangular distribution function, both branches in vectors.
            var turn = Vector256.Create((mode - min) / (max - min));
            var left = Vector256.Create((max - min) * (mode - min));
            var right = Vector256.Create((max - min) * (max - mode));
            var low = Vector256.Create(min);
            var high = Vector256.Create(max);
            for (var k = 0; k < count; k += 8)
            {
                stream.Next(out var u, out var v);
                Triangle(u, turn, left, right, low, high).CopyTo(into[k..]);
                Triangle(v, turn, left, right, low, high).CopyTo(into[(k + 4)..]);
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Triangle(
        Vector256<double> u, Vector256<double> turn, Vector256<double> left, Vector256<double> right, Vector256<double> low, Vector256<double> high)
    {
        var rising = low + Vector256.Sqrt(u * left);
        var falling = high - Vector256.Sqrt((Vector256<double>.One - u) * right);
        return Vector256.ConditionalSelect(Vector256.LessThan(u, turn), rising, falling);
    }
}
