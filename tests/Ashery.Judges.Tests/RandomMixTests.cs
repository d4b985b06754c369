using Ashery.Plain;
using Ashery.Solutions;

namespace Ashery.Judges.Tests;

/// <summary>The first 5,000 of the 100,000 mixes of the bench (<c>bench/Ashery.Bench mixes</c>).</summary>
public class RandomMixTests
{
    [Fact]
    public void Every_mix_up_to_saturation_converges_and_closes()
    {
        var mixes = new RandomMixes(1);
        Assert.True(mixes.Materials.Count > 40, FormattableString.Invariant($"{mixes.Materials.Count} materials"));
        for (var k = 0; k < 5000; k++)
        {
            var solution = Speciation.Solve(mixes.Next());
            Assert.True(solution.Certificate.Holds, FormattableString.Invariant($"mix {k}: {solution.Certificate}"));
        }
    }
}
