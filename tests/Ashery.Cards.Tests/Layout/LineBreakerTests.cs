using Ashery.Cards.Layout;
using CsCheck;

namespace Ashery.Cards.Tests.Layout;

public class LineBreakerTests
{
    private static readonly Gen<string> Texts = Gen.String[Gen.OneOf(Gen.Char['a', 'e'], Gen.Const(' '), Gen.Const('-'), Gen.Char['0', '9'], Gen.Const('é')), 0, 120];

    [Fact]
    public void No_line_is_wider_than_allowed_and_no_sign_is_lost() => Gen.Select(Texts, Gen.Int[1, 30]).Sample(
        (text, width) =>
        {
            var lines = LineBreaker.Break(text, width, t => t.Length);
            Assert.All(lines, l => Assert.True(l.Length <= width, l));
            Assert.Equal(Squeeze(text), Squeeze(string.Concat(lines)));
        },
        iter: 2000);

    [Fact]
    public void A_figure_keeps_its_unit_and_a_count_its_thing()
    {
        Assert.Equal(["take about", "12.5 mL of it"], LineBreaker.Break("take about 12.5 mL of it", 14, t => t.Length));
        Assert.Equal(["orchids on", "the rail × 5"], LineBreaker.Break("orchids on the rail × 5", 12, t => t.Length));
    }

    [Fact]
    public void A_long_word_breaks_after_its_hyphen() =>
        Assert.Equal(["mono-", "ammonium", "phosphate"], LineBreaker.Break("mono-ammonium phosphate", 10, t => t.Length));

    [Fact]
    public void Signs_of_several_code_units_are_not_torn() =>
        Assert.All(LineBreaker.Break(string.Concat(Enumerable.Repeat("🌺", 20)), 5, t => t.Length), l => Assert.False(char.IsLowSurrogate(l[0]) || char.IsHighSurrogate(l[^1])));

    [Fact]
    public void Columns_share_what_there_is_and_figures_get_theirs() => Gen.Select(
        Gen.Select(Gen.Double[1, 400], Gen.Double[0.05, 1], Gen.Bool).Array[1, 8], Gen.Double[50, 500]).Sample(
        (columns, available) =>
        {
            var natural = columns.Select(c => c.Item1).ToList();
            var widths = ColumnWidths.Share(natural, [.. columns.Select(c => c.Item1 * c.Item2)], [.. columns.Select(c => c.Item3)], available);
            Assert.True(widths.Sum() <= Math.Max(available, 0) + 1e-6 || natural.Sum() <= available);
            Assert.All(Enumerable.Range(0, widths.Length), i => Assert.True(widths[i] > 0 && widths[i] <= natural[i] + 1e-9));
            if (natural.Sum() > available && columns.Where(c => c.Item3).Sum(c => c.Item1) == 0)
            {
                Assert.Equal(available, widths.Sum(), 1e-6);
            }
        },
        iter: 2000);

    private static string Squeeze(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
