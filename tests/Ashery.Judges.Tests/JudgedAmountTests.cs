using Ashery.Blending;
using Ashery.Blending.Amounts;
using Ashery.Solvers;
using CsCheck;

namespace Ashery.Judges.Tests;

/// <summary>Amounts beside a fixed column, judged by GLOP on random shelves and waters.</summary>
public class JudgedAmountTests
{
    // Figures that look like straights: two or three nutrients each; a water that brings up to half as much again as is wanted.
    private static readonly Gen<AmountRequest> Requests = Gen.Select(Gen.Int[3, 6], Gen.Int[4, 8], Gen.Int[0, int.MaxValue], Gen.Int[1, 5]).Select(g =>
    {
        var (nutrients, columns, seed, atMost) = g;
        var random = new Random(seed);
        var target = Enumerable.Range(0, nutrients).Select(_ => 20 + (180 * random.NextDouble())).ToArray();
        double Rarely(double chance, double most) => random.NextDouble() < chance ? most * random.NextDouble() : 0;
        return new AmountRequest
        {
            Columns = [.. Enumerable.Range(0, columns).Select(i => new Column(
                FormattableString.Invariant($"m{i}"), [.. target.Select(_ => Rarely(0.5, 0.4))], random.Next(4) == 0 && seed % 3 == 0 ? null : 0.5 + random.NextDouble()))],
            Target = target,
            Fixed = [.. target.Select(t => Rarely(0.6, 1.5 * t))],
            Rows = [.. Enumerable.Range(0, random.Next(3)).Select(r => new AmountRow(
                FormattableString.Invariant($"r{r}"), [.. Enumerable.Range(0, columns).Select(_ => Rarely(0.5, 0.3) - Rarely(0.2, 0.3))], -20 - (60 * random.NextDouble()) + Rarely(0.2, 120)))],
            ForbiddenPairs = [.. Enumerable.Range(0, random.Next(3)).Select(_ => (random.Next(2), 2 + random.Next(columns - 2)))],
            AtMost = atMost,
            Best = 4,
        };
    });

    [Fact]
    public void The_best_is_that_of_every_set_in_turn()
    {
        int above = 0, none = 0;
        Requests.Sample(
            request =>
            {
                var ours = AmountSearch.Find(request);
                var judge = AmountRival.Best(request);
                Assert.True(ours.Proved);
                if (double.IsPositiveInfinity(judge))
                {
                    Interlocked.Increment(ref none);
                    Assert.Empty(ours.Blends);
                    return;
                }

                Assert.Equal(judge, ours.Blends[0].Error, 1e-7);
                above += judge > 1e-6 ? 1 : 0;
                for (var k = 0; k < ours.Blends.Count; k++)
                {
                    Assert.True(k == 0 || ours.Blends[k].Error >= ours.Blends[k - 1].Error - 1e-9);
                    Keeps(request, ours.Blends[k]);
                }
            },
            iter: 150, seed: "0000000000000", threads: 1);
        Assert.True(above > 75, FormattableString.Invariant($"{above} of 150 above zero"));
        Assert.InRange(none, 1, 40);
    }

    [Fact]
    public void The_certificate_proves_what_all_columns_together_can_reach() => Requests.Sample(
        request =>
        {
            var wide = request with { AtMost = request.Columns.Count, ForbiddenPairs = [] };
            var ours = AmountSearch.Find(wide);
            var judge = AmountRival.Error(wide, [.. Enumerable.Range(0, wide.Columns.Count)]);
            if (double.IsFinite(judge))
            {
                Assert.NotNull(ours.Bound);
                Assert.Equal(judge, (double)ours.Bound.Value, 1e-7);
                Assert.Equal(judge, ours.Blends[0].Error, 1e-7);
            }
        },
        iter: 300, seed: "0000000000000");

    [Fact]
    public void More_materials_are_never_worse() => Requests.Sample(
        request =>
        {
            var few = AmountSearch.Find(request);
            var more = AmountSearch.Find(request with { AtMost = request.AtMost + 1 });
            Assert.True(few.Blends.Count == 0 || more.Blends[0].Error <= few.Blends[0].Error + 1e-9);
        },
        iter: 300, seed: "0000000000000");

    private static void Keeps(AmountRequest request, AmountBlend blend)
    {
        Assert.True(blend.Members.Count <= request.AtMost);
        Assert.All(blend.Masses, m => Assert.True(m > 0));
        Assert.DoesNotContain(request.ForbiddenPairs, p => blend.Members.Contains(p.A) && blend.Members.Contains(p.B));
        foreach (var row in request.Rows)
        {
            var sum = row.Constant;
            for (var k = 0; k < blend.Members.Count; k++)
            {
                sum += row.Coefficients[blend.Members[k]] * blend.Masses[k];
            }

            Assert.True(sum <= 1e-7, FormattableString.Invariant($"{row.Name}: {sum}"));
        }
    }
}
