using Ashery.Blending;
using Ashery.Plain;
using Ashery.Solvers;

namespace Ashery.Judges.Tests;

/// <summary>
/// The search against judges from outside: full enumeration with its own programmes for all blends, the mixed-integer
/// solvers SCIP and CBC for the best one, decimal arithmetic for the certificate.
/// </summary>
public class JudgedSearchTests
{
    private const int Instances = 200;

    [Fact]
    public void Two_hundred_random_shelves_by_enumeration()
    {
        var aboveZero = 0;
        for (var seed = 0; seed < Instances; seed++)
        {
            var request = Instance(seed);
            var plain = PlainEnumeration.Find(request);
            var quick = BlendSearch.Find(request);
            Assert.True(quick.Proved, Case(seed));
            Assert.True(plain.Count == quick.Blends.Count, Case(seed));
            for (var b = 0; b < plain.Count; b++)
            {
                Assert.True(Math.Abs(plain[b].Error - quick.Blends[b].RatioError) <= 1e-9, Case(seed));
                Assert.True(double.IsInfinity(plain[b].Cost) == quick.Blends[b].CostPerNutrient is null, Case(seed));
                if (quick.Blends[b].CostPerNutrient is { } cost)
                {
                    Assert.True(Math.Abs(plain[b].Cost - cost) <= 1e-6 * Math.Max(1, cost), Case(seed));
                }

                Assert.True(PlainEnumeration.Places(request, plain[b]).SequenceEqual(quick.Blends[b].Members), Case(seed));
            }

            aboveZero += plain.Count > 0 && plain[0].Error > 1e-6 ? 1 : 0;
        }

        Assert.True(aboveZero >= Instances / 2, "Too few instances with an error above zero: " + Text(aboveZero));
    }

    [Theory]
    [InlineData("SCIP")]
    [InlineData("CBC")]
    public void Two_hundred_random_shelves_by_solver(string solver)
    {
        for (var seed = 0; seed < Instances; seed++)
        {
            var request = Instance(seed) with { Best = 1 };
            using var rival = new MixedIntegerRival(request, solver, gap: 1e-6);
            var judged = rival.Solve();
            var quick = BlendSearch.Find(request);
            Assert.True(judged is null == (quick.Blends.Count == 0), Case(seed));
            if (judged is { } error)
            {
                Assert.True(Math.Abs(error - quick.Blends[0].RatioError) <= 1e-6, Case(seed));
            }
        }
    }

    [Fact]
    public void Certificates_hold_in_decimal_arithmetic()
    {
        for (var seed = 0; seed < Instances; seed++)
        {
            var request = Instance(seed);
            var limited = BlendSearch.Find(request);
            if (limited.Certificate is { } certificate && limited.Blends.Count > 0)
            {
                // Whatever the count limit, no blend may be below the bound.
                var bound = CertificateCheck.LowerBound(request, certificate);
                Assert.NotNull(bound);
                Assert.True((double)bound.Value <= limited.Blends[0].RatioError + 1e-9, Case(seed));
            }

            // Without pairs and with room for as many columns as a programme can need, the bound is the error itself.
            var free = request with { ForbiddenPairs = [], AtMost = request.Target.Count + request.Rows.Count + 1, Best = 1 };
            var best = BlendSearch.Find(free);
            if (best.Blends.Count > 0)
            {
                Assert.True(CertificateCheck.Proves(free, best.Certificate!, best.Blends[0]), Case(seed));
            }
        }
    }

    [Fact]
    public void A_tampered_certificate_proves_nothing_false()
    {
        var request = Instance(3);
        var best = BlendSearch.Find(request);
        var certificate = best.Certificate!;
        var tampered = certificate with { NutrientDuals = [.. certificate.NutrientDuals.Select(v => -v + 0.3)] };
        Assert.True(CertificateCheck.LowerBound(request, tampered) is not { } bound || (double)bound <= best.Blends[0].RatioError);
    }

    /// <summary>Up to 25 columns, 3 and 6 nutrients; rows, pairs and missing prices in a share of them.</summary>
    private static BlendRequest Instance(int seed)
    {
        var six = seed % 4 != 0;
        var columns = 10 + (seed * 7 % 16);
        var atMost = six ? 2 + (seed % 3) : 2 + (seed / 4 % 3);
        var rows = seed % 5 == 1 ? 1 + (seed / 5 % 2) : 0;
        var pairs = seed % 3 == 2 ? 10 : 0;
        var priced = seed % 7 == 0 ? 0.0 : seed % 7 == 1 ? 0.6 : 1.0;
        return RandomShelf.Make(1000 + seed, six ? 6 : 3, columns, atMost, 20, rows, pairs, priced);
    }

    private static string Case(int seed) => "instance " + Text(seed);

    private static string Text(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
