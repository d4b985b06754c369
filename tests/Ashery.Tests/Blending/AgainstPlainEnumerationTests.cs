using Ashery.Blending;
using Ashery.Plain;

namespace Ashery.Tests.Blending;

/// <summary>The quick search against every support solved one by one, on small random shelves.</summary>
public class AgainstPlainEnumerationTests
{
    [Theory]
    [InlineData(3, 4, 14, 0, 0, 1.0)]
    [InlineData(3, 4, 14, 2, 8, 0.7)]
    [InlineData(6, 4, 12, 0, 0, 1.0)]
    [InlineData(6, 3, 14, 1, 10, 0.0)]
    [InlineData(2, 3, 12, 1, 5, 0.5)]
    [InlineData(1, 2, 8, 1, 2, 0.5)]
    public void The_same_blends_in_the_same_order(int nutrients, int atMost, int columns, int rows, int pairs, double priced)
    {
        for (var seed = 1; seed <= 12; seed++)
        {
            var request = RandomShelf.Make(seed, nutrients, columns, atMost, 20, rows, pairs, priced);
            var plain = PlainEnumeration.Find(request);
            var quick = BlendSearch.Find(request);
            Assert.True(quick.Proved);
            Assert.Equal(plain.Count, quick.Blends.Count);
            for (var b = 0; b < plain.Count; b++)
            {
                Assert.Equal(plain[b].Error, quick.Blends[b].RatioError, 9);
                Assert.Equal(PlainEnumeration.Places(request, plain[b]), quick.Blends[b].Members);
            }
        }
    }
}
