namespace Ashery.Cards.Tests;

public class LookTests
{
    [Fact]
    public void Text_reaches_the_contrast_of_WCAG_2_2()
    {
        foreach (var (text, ground) in Look.ReadablePairs)
        {
            Assert.True(Contrast(Look.Of(text).Light, Look.Of(ground).Light) >= 4.5, $"{text} on {ground}, light");
            Assert.True(Contrast(Look.Of(text).Dark, Look.Of(ground).Dark) >= 4.5, $"{text} on {ground}, dark");
        }
    }

    [Fact]
    public void Edges_reach_three_to_one()
    {
        foreach (var (edge, ground) in Look.VisiblePairs)
        {
            Assert.True(Contrast(Look.Of(edge).Light, Look.Of(ground).Light) >= 3, $"{edge} on {ground}, light");
            Assert.True(Contrast(Look.Of(edge).Dark, Look.Of(ground).Dark) >= 3, $"{edge} on {ground}, dark");
        }
    }

    [Fact]
    public void Every_tone_has_one_swatch() =>
        Assert.Equal(Enum.GetValues<Tone>().Where(t => t is not (Tone.None or Tone.Black or Tone.White)), Look.Palette.Select(s => s.Tone));

    [Fact]
    public void What_a_camera_reads_is_black_on_white_in_every_theme() =>
        Assert.Equal(("#000000", "#000000", "#ffffff", "#ffffff"), (Look.Of(Tone.Black).Light, Look.Of(Tone.Black).Dark, Look.Of(Tone.White).Light, Look.Of(Tone.White).Dark));

    // Relative luminance and contrast ratio as defined in WCAG 2.2 (definitions written from memory);
    // checked on its two fixed points: black on white is 21, a colour on itself is 1.
    [Fact]
    public void Contrast_of_black_on_white_is_21()
    {
        Assert.Equal(21, Contrast("#000000", "#ffffff"), 6);
        Assert.Equal(1, Contrast("#336699", "#336699"), 6);
    }

    private static double Contrast(string a, string b)
    {
        var (x, y) = (Luminance(a), Luminance(b));
        return (Math.Max(x, y) + 0.05) / (Math.Min(x, y) + 0.05);
    }

    private static double Luminance(string hex)
    {
        double Channel(int at)
        {
            var c = Convert.ToInt32(hex.Substring(at, 2), 16) / 255.0;
            return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }
}
