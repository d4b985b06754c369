using Ashery.Cards.Tests.Support;
using Ashery.Journal;
using UglyToad.PdfPig;

namespace Ashery.Cards.Tests.Cards;

public class SeasonSheetTests
{
    private static CardDocument Sheet
    {
        get
        {
            var garden = Demo.Garden;
            var report = SeasonReport.Of(new(garden, SeasonSample.Entries(garden), SeasonSample.From, SeasonSample.To) { Today = SeasonSample.To }).Value!;
            return SeasonSheet.Describe(report, garden, new DateOnly(2027, 10, 1));
        }
    }

    [Fact]
    public void Season_as_approved() => Approval.Check(CardText.Write(Sheet), "season", "txt");

    /// <summary>Read back from the PDF by a general library: the sums, the reading outside of its band, the loss with its reason.</summary>
    [Fact]
    public void The_pdf_says_it_too()
    {
        using var pdf = PdfDocument.Open(CardPdf.Write(Sheet));
        var text = string.Join(' ', pdf.GetPages().SelectMany(static p => p.GetWords()).Select(static w => w.Text));
        Assert.Contains("root rot", text, StringComparison.Ordinal);
        Assert.Contains("Repotted: 14 L, bark mix", text, StringComparison.Ordinal);
        Assert.Contains("Leachate EC, mS/cm 2 2.4 5.95 9.5", text, StringComparison.Ordinal);
    }
}
