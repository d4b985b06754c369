using Ashery.Cards.Fonts;
using Ashery.Cards.Layout;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Ashery.Cards;

/// <summary>
/// A card as PDF, on the card's own paper, with the shipped fonts embedded; needs no browser and nothing installed. The same card
/// gives the same bytes on every machine and day.
/// </summary>
public static class CardPdf
{
    private static readonly Lock Once = new();

    public static byte[] Write(CardDocument card)
    {
        // PDFsharp keeps fonts in one place for the whole process and is not made for several threads at a time.
        lock (Once)
        {
            ShippedFonts.Register();
            using var pdf = new PdfDocument();
            pdf.Options.CompressContentStreams = true;
            pdf.Info.Title = card.RunningHead;
            pdf.Info.Subject = card.Kind;
            pdf.Info.Creator = "Ashery";
            var midnight = card.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
            pdf.Info.CreationDate = midnight;
            pdf.Info.ModificationDate = midnight;
            pdf.Language = "en";
            foreach (var marks in SheetLayout.Pages(card))
            {
                var page = pdf.AddPage();
                page.Width = XUnit.FromPoint(card.Paper.PointsWide);
                page.Height = XUnit.FromPoint(card.Paper.PointsHigh);
                using var graphics = XGraphics.FromPdfPage(page);
                PdfPainter.Paint(graphics, marks);
            }

            using var bytes = new MemoryStream();
            pdf.Save(bytes, closeStream: false);
            return PdfSteady.Make(bytes.ToArray());
        }
    }
}
