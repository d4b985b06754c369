using Ashery.Cards.Drawing;
using QRCoder;

namespace Ashery.Cards.Pictures;

/// <summary>A QR code (ISO/IEC 18004, error correction level M) as strokes, so that page, SVG and PDF draw the same. Black on white in every theme.</summary>
public static class QrPicture
{
    private const double Module = 4;

    /// <summary>As SVG, for a page or a file.</summary>
    public static string Svg(string address, SvgFor use = SvgFor.Page, string id = "code") => SvgWriter.Write(Draw(address, id), use);

    /// <summary>The code of an address, with the quiet zone of four modules all round that readers need.</summary>
    public static Picture Draw(string address, string id = "code")
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var rows = data.ModuleMatrix;
        var side = rows.Count * Module;
        List<(Spot From, Spot To)> runs = [];
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows.Count; x++)
            {
                var start = x;
                while (x < rows.Count && rows[y][x])
                {
                    x++;
                }

                if (x > start)
                {
                    runs.Add((new(start * Module, (y + 0.5) * Module), new(x * Module, (y + 0.5) * Module)));
                }
            }
        }

        // A hair wider than a module: no light shines through between two rows when it is printed.
        return new(id, side, side, "QR code", "Opens " + address, [new Shape([new(0, 0), new(side, 0), new(side, side), new(0, side)], Tone.White), new Strokes(runs, Tone.Black, Module * 1.02)]);
    }
}
