using System.Security.Cryptography;
using System.Text;

namespace Ashery.Cards.Layout;

/// <summary>
/// PDFsharp draws lots for three things of no meaning: the six letters before a subset font's name, the identifiers in the
/// metadata, and the file's <c>/ID</c>. This puts values worked out from the rest of the file in their place, of the same length, so
/// that the same card is the same file.
/// </summary>
internal static class PdfSteady
{
    private static readonly byte[] Tag = "+DejaVu"u8.ToArray();
    private static readonly byte[] Uuid = "uuid:"u8.ToArray();
    private static readonly byte[] Id = "/ID[<"u8.ToArray();

    public static byte[] Make(byte[] pdf)
    {
        var fonts = new List<string>();
        foreach (var at in Places(pdf, Tag))
        {
            // Fonts are told apart by order of appearance: AAAAAA, BAAAAA, CAAAAA.
            var tag = Encoding.ASCII.GetString(pdf, at - 6, 6);
            if (!fonts.Contains(tag, StringComparer.Ordinal))
            {
                fonts.Add(tag);
            }

            pdf.AsSpan(at - 6, 6).Fill((byte)'A');
            pdf[at - 6] = (byte)('A' + fonts.IndexOf(tag));
        }

        var uuids = Places(pdf, Uuid);
        var ids = Places(pdf, Id);
        foreach (var at in uuids)
        {
            pdf.AsSpan(at + Uuid.Length, 36).Fill((byte)'0');
        }

        foreach (var at in ids)
        {
            pdf.AsSpan(at + Id.Length, 32).Fill((byte)'0');
            pdf.AsSpan(at + Id.Length + 34, 32).Fill((byte)'0');
        }

        var check = Convert.ToHexString(SHA256.HashData(pdf));
        foreach (var at in uuids)
        {
            // 8-4-4-4-12 with version 8, the one for values an application makes its own way (RFC 9562).
            var uuid = $"{check[..8]}-{check[8..12]}-8{check[12..15]}-8{check[15..18]}-{check[18..30]}";
            Encoding.ASCII.GetBytes(uuid.ToLowerInvariant(), pdf.AsSpan(at + Uuid.Length));
        }

        foreach (var at in ids)
        {
            Encoding.ASCII.GetBytes(check.AsSpan(0, 32), pdf.AsSpan(at + Id.Length));
            Encoding.ASCII.GetBytes(check.AsSpan(0, 32), pdf.AsSpan(at + Id.Length + 34));
        }

        return pdf;
    }

    private static List<int> Places(byte[] pdf, byte[] what)
    {
        var places = new List<int>();
        for (var from = 0; ;)
        {
            var next = pdf.AsSpan(from).IndexOf(what);
            if (next < 0)
            {
                return places;
            }

            places.Add(from + next);
            from += next + what.Length;
        }
    }
}
