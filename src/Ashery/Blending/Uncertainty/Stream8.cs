using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Ashery.Blending.Uncertainty;

/// <summary>
/// Eight independent xoshiro128+ generators side by side (Blackman and Vigna 2021, Scrambled linear pseudorandom number
/// generators, ACM Trans. Math. Softw. 47(4); from memory), seeded by splitmix64.
/// </summary>
internal sealed class Stream8
{
    private Vector256<uint> s0;
    private Vector256<uint> s1;
    private Vector256<uint> s2;
    private Vector256<uint> s3;

    public Stream8(int seed)
    {
        var state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);
        Span<uint> words = stackalloc uint[32];
        for (var k = 0; k < words.Length; k += 2)
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            z ^= z >> 31;
            words[k] = (uint)z | 1;
            words[k + 1] = (uint)(z >> 32);
        }

        s0 = Vector256.Create<uint>(words[..8]);
        s1 = Vector256.Create<uint>(words[8..16]);
        s2 = Vector256.Create<uint>(words[16..24]);
        s3 = Vector256.Create<uint>(words[24..]);
    }

    /// <summary>Eight numbers in (0, 1), from the upper 31 bits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Next(out Vector256<double> first, out Vector256<double> second)
    {
        var result = s0 + s3;
        var t = s1 << 9;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = (s3 << 11) | (s3 >>> 21);
        var bits = (result >>> 1).AsInt32();
        var scale = Vector256.Create(1.0 / (1L << 31));
        var half = Vector256.Create(0.5 / (1L << 31));
        var (low, high) = Vector256.Widen(bits);
        first = (Vector256.ConvertToDouble(low) * scale) + half;
        second = (Vector256.ConvertToDouble(high) * scale) + half;
    }
}
