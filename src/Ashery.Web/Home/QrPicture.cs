using System.Net;
using System.Text;
using QRCoder;

namespace Ashery.Web.Home;

/// <summary>A QR code as SVG without style attributes, which the content security policy would block.</summary>
internal static class QrPicture
{
    private const int Quiet = 4;

    public static string Svg(string text, string description)
    {
        using var made = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);

        // The matrix brings a quiet zone of four modules, as ISO/IEC 18004 asks.
        var size = made.ModuleMatrix.Count;
        var path = new StringBuilder();
        for (var y = Quiet; y < size - Quiet; y++)
        {
            for (var x = Quiet; x < size - Quiet; x++)
            {
                if (made.ModuleMatrix[y][x])
                {
                    path.Append(System.Globalization.CultureInfo.InvariantCulture, $"M{x} {y}h1v1h-1z");
                }
            }
        }

        return FormattableString.Invariant(
            $"<svg viewBox=\"0 0 {size} {size}\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(description)}\" shape-rendering=\"crispEdges\"><rect width=\"{size}\" height=\"{size}\" fill=\"#fff\"/><path d=\"{path}\" fill=\"#000\"/></svg>");
    }
}
