using System.Runtime.CompilerServices;

namespace Ashery.Climate.Generation;

/// <summary>
/// Random numbers of one series: xoshiro256** seeded by splitmix64 (Blackman and Vigna 2021, Scrambled linear pseudorandom number generators, ACM Trans.
/// Math. Softw. 47(4); from memory). Whole numbers only, so the same on every machine.
/// </summary>
internal struct WeatherStream
{
    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;
    private double spare;
    private bool hasSpare;

    public WeatherStream(int seed, int draw)
    {
        var state = ((ulong)(uint)seed << 32) | (uint)draw;
        s0 = Split(ref state);
        s1 = Split(ref state);
        s2 = Split(ref state);
        s3 = Split(ref state);
        spare = 0;
        hasSpare = false;
    }

    /// <summary>In [0, 1), 53 bits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Uniform()
    {
        var result = ulong.RotateLeft(s1 * 5, 7) * 9;
        var t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = ulong.RotateLeft(s3, 45);
        return (result >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Standard normal, by the polar method (Marsaglia and Bray 1964): two come of one pair.</summary>
    public double Normal()
    {
        if (hasSpare)
        {
            hasSpare = false;
            return spare;
        }

        double u, v, s;
        do
        {
            u = (2 * Uniform()) - 1;
            v = (2 * Uniform()) - 1;
            s = (u * u) + (v * v);
        }
        while (s is >= 1 or 0);

        var factor = Math.Sqrt(-2 * Math.Log(s) / s);
        spare = v * factor;
        hasSpare = true;
        return u * factor;
    }

    /// <summary>Gamma with scale 1 (Marsaglia and Tsang 2000); a shape below 1 is raised by one and brought back by a power of a uniform.</summary>
    public double Gamma(double shape)
    {
        var raised = shape < 1;
        var d = (raised ? shape + 1 : shape) - (1.0 / 3);
        var c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            var x = Normal();
            var v = 1 + (c * x);
            if (v <= 0)
            {
                continue;
            }

            v = v * v * v;
            var u = 1 - Uniform();
            if (u < 1 - (0.0331 * x * x * x * x) || Math.Log(u) < (0.5 * x * x) + (d * (1 - v + Math.Log(v))))
            {
                return raised ? d * v * Math.Pow(1 - Uniform(), 1 / shape) : d * v;
            }
        }
    }

    private static ulong Split(ref ulong state)
    {
        state += 0x9E3779B97F4A7C15UL;
        var z = state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
