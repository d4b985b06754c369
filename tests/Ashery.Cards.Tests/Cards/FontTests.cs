using System.Text;
using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;
using Ashery.Cards.Layout;
using Ashery.Cards.Tests.Support;
using PdfSharp.Drawing;

namespace Ashery.Cards.Tests.Cards;

public class FontTests
{
    /// <summary>Every sign our own words, units and formulas use.</summary>
    private const string OurSigns = "0123456789 abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.,;:!?()[]+-−–—/%°µ≤≥≈→×·…₂₃₄₅⁺²³☐□✓äöüßéèñçåøœŒłžščαβΩ€£¥";

    [Fact]
    public void Every_sign_of_ours_has_a_glyph_in_every_face()
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            Assert.Equal("", string.Concat(OurSigns.EnumerateRunes().Where(r => !Typeface.Of(face).Has(r) && !OnlyInText(face, r))));
        }
    }

    // The book face sets titles and grades; tick boxes and the like never stand in them. A sign it lacks is printed as a box, see below.
    private static bool OnlyInText(Face face, Rune sign) => face == Face.Head && "☐□✓".Contains(sign.ToString(), StringComparison.Ordinal);

    [Fact]
    public void Every_sign_of_every_sample_card_has_a_glyph()
    {
        foreach (var card in new[] { RecipeCard.Describe(Samples.Terrace), RecipeCard.Describe(Samples.Meals), RecipeCard.Describe(Samples.Twelve), BagLabel.Describe(Samples.Terrace), YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day) })
        {
            foreach (var words in SheetLayout.Pages(card).SelectMany(p => p).OfType<Words>())
            {
                Assert.DoesNotContain(Typeface.Missing, words.Text);
                Assert.All(words.Text.EnumerateRunes(), r => Assert.True(Typeface.Of(words.Face).Has(r), $"U+{r.Value:X4} in {words.Text}"));
            }
        }
    }

    [Theory]
    [InlineData("Terrace blend 13.9-5.2-26")]
    [InlineData("N-P₂O₅-K₂O ≤ ≥ ≈ → − ☐")]
    [InlineData("Kräuter, Žluťoučký kůň, Ευαγγελία, Чайная роза")]
    public void Widths_agree_with_PDFsharp(string text)
    {
        ShippedFonts.Register();
        foreach (var face in new[] { Face.Text, Face.Bold })
        {
            var font = new XFont(face.ToString(), 100, XFontStyleEx.Regular, new XPdfFontOptions(PdfSharp.Pdf.PdfFontEncoding.Unicode));
            var measured = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards).MeasureString(text, font);
            Assert.Equal(measured.Width, Typeface.Width(text, 100, face), 0.5);
        }
    }

    [Theory]
    [InlineData("জবা", "□□□")]
    [InlineData("वर", "□□")]
    [InlineData("ورد", "□□□")]
    [InlineData("山茶", "□□")]
    [InlineData("Rose\u202Eevil\u0007", "Roseevil")]
    [InlineData("\uD800x", "x")]
    public void What_cannot_be_drawn_rightly_is_a_box_and_not_a_wrong_word(string text, string printed) =>
        Assert.Equal(printed, Typeface.Printable(text, Face.Text));

    [Fact]
    public void A_card_with_boxes_says_so() =>
        Assert.Contains(SheetLayout.Pages(RecipeCard.Describe(Samples.Terrace with { Name = "জবা" })).SelectMany(p => p).OfType<Words>(), w => w.Text.StartsWith("□ stands for", StringComparison.Ordinal));

    [Fact]
    public void The_licence_lies_beside_the_fonts()
    {
        var folder = Path.Combine(Repository.Root, "src", "Ashery.Cards", "Fonts");
        Assert.Contains("Bitstream Vera", File.ReadAllText(Path.Combine(folder, "LICENSE-DejaVu.txt")), StringComparison.Ordinal);
        Assert.All(Enum.GetValues<Face>(), f => Assert.True(File.Exists(Path.Combine(folder, Typeface.FileName(f)))));
    }
}
