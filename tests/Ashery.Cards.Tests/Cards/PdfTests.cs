using System.Globalization;
using System.Text;
using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;
using Ashery.Cards.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Ashery.Cards.Tests.Cards;

/// <summary>The PDF read back with PdfPig, a library that had no part in writing it.</summary>
public class PdfTests
{
    /// <summary>Letters and figures a card may hold, by name; the files are left in the build folder for a person to look at.</summary>
    public static TheoryData<string> Cards => [.. All.Keys];

    private static Dictionary<string, CardDocument> All => SampleCards.All;

    [Theory]
    [MemberData(nameof(Cards))]
    public void Everything_the_card_says_is_in_the_PDF(string name)
    {
        using var pdf = Read(name);
        var whole = Squeeze(string.Concat(pdf.GetPages().SelectMany(p => Body(p, All[name].Paper)).Select(l => l.Value)));
        Assert.Equal(All[name].RunningHead, pdf.Information.Title);
        foreach (var text in SampleCards.Texts(All[name]))
        {
            // Lines of one text follow each other in the file, over pages too.
            Assert.True(whole.Contains(Squeeze(Printed(text)), StringComparison.Ordinal), $"{name} lacks: {text}");
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void No_letter_stands_beyond_the_margins(string name)
    {
        using var pdf = Read(name);
        var margin = All[name].Paper.PointsMargin;
        foreach (var page in pdf.GetPages())
        {
            Assert.Equal(All[name].Paper.PointsWide, page.Width, 0.01);
            Assert.Equal(All[name].Paper.PointsHigh, page.Height, 0.01);
            foreach (var letter in page.Letters)
            {
                var box = letter.BoundingBox;
                // The advance keeps within the margins exactly; a letter's own curve (the foot of J) may lean out by less than a point.
                Assert.True(letter.StartBaseLine.X >= margin - 0.02 && letter.EndBaseLine.X <= page.Width - margin + 0.02);
                Assert.True(box.Left >= margin - 1 && box.Right <= page.Width - margin + 1 && box.Bottom >= margin - 1 && box.Top <= page.Height - margin + 1,
                    FormattableString.Invariant($"{name}, page {page.Number}: '{letter.Value}' at {box.Left:F1} {box.Bottom:F1} {box.Right:F1} {box.Top:F1}"));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void No_line_of_text_is_printed_over_another(string name)
    {
        using var pdf = Read(name);
        foreach (var page in pdf.GetPages())
        {
            var letters = page.Letters.Where(l => !string.IsNullOrWhiteSpace(l.Value)).OrderBy(l => l.BoundingBox.Bottom).ToList();
            var boxes = letters.Select(l => l.BoundingBox).ToList();
            for (var i = 0; i < boxes.Count; i++)
            {
                for (var j = i + 1; j < boxes.Count && boxes[j].Bottom < boxes[i].Top; j++)
                {
                    var wide = Math.Min(boxes[i].Right, boxes[j].Right) - Math.Max(boxes[i].Left, boxes[j].Left);
                    var high = Math.Min(boxes[i].Top, boxes[j].Top) - boxes[j].Bottom;
                    // Neighbours in a line may touch by a hair (the arm of r, the foot of J), never by a tenth of their size.
                    var hair = 0.1 * Math.Max(letters[i].PointSize, letters[j].PointSize);
                    Assert.False(wide > hair && high > hair, FormattableString.Invariant($"{name}, page {page.Number}: letters overlap by {wide:F1} x {high:F1} at {boxes[i].Left:F0} {boxes[i].Bottom:F0}"));
                }
            }
        }
    }

    [Theory]
    [InlineData("recipe", 4)]
    [InlineData("meals", 3)]
    [InlineData("label", 1)]
    [InlineData("year", 3)]
    [InlineData("shopping", 1)]
    public void Cards_take_as_many_pages_as_approved(string name, int pages)
    {
        using var pdf = Read(name);
        Assert.Equal(pages, pdf.NumberOfPages);
    }

    [Fact]
    public void A_table_that_runs_over_repeats_its_heading_and_pages_carry_name_and_number()
    {
        using var pdf = Read("twelve");
        var third = pdf.GetPage(3).Text;
        Assert.Contains("Size", third, StringComparison.Ordinal);
        Assert.Contains("N rate", third, StringComparison.Ordinal);
        Assert.Contains($"3 of {pdf.NumberOfPages.ToString(CultureInfo.InvariantCulture)}", third, StringComparison.Ordinal);
        Assert.Contains("Everything on the shelf", third, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_card_is_the_same_file_and_another_is_another()
    {
        var first = CardPdf.Write(All["recipe"]);
        Assert.Equal(first, CardPdf.Write(RecipeCard.Describe(Samples.Terrace)));
        Assert.NotEqual(first, CardPdf.Write(RecipeCard.Describe(Samples.Terrace with { Name = "Terrace blend for jasmin" })));
    }

    [Fact]
    public void Only_shipped_fonts_are_used_and_they_are_embedded()
    {
        using var pdf = Read("recipe");
        var fonts = pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName!).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(3, fonts.Count);
        Assert.All(fonts, f => Assert.Matches("^[A-C]AAAAA\\+DejaVu (Sans|Serif) Condensed", f.Replace("#20", " ", StringComparison.Ordinal)));
    }

    private static PdfDocument Read(string name)
    {
        var bytes = CardPdf.Write(All[name]);
        var folder = Directory.CreateDirectory(Path.Combine(AppContext.BaseDirectory, "cards"));
        File.WriteAllBytes(Path.Combine(folder.FullName, name + ".pdf"), bytes);
        return PdfDocument.Open(bytes);
    }

    /// <summary>A page's letters without its running head and foot line.</summary>
    private static IEnumerable<Letter> Body(Page page, Paper paper) => page.Letters.Where(l =>
        (page.Number == 1 || l.StartBaseLine.Y < page.Height - paper.PointsMargin - (1.3 * paper.TextSize))
        && (paper.Height < 100 || l.StartBaseLine.Y > paper.PointsMargin + paper.TextSize));

    private static string Printed(string text) => Typeface.Printable(text, Face.Text);

    private static string Squeeze(string text)
    {
        var squeezed = new StringBuilder(text.Length);
        foreach (var c in text.Where(c => !char.IsWhiteSpace(c)))
        {
            squeezed.Append(c);
        }

        return squeezed.ToString();
    }
}
