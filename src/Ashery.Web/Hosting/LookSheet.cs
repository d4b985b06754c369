using System.Security.Cryptography;
using System.Text;
using Ashery.Cards;

namespace Ashery.Web.Hosting;

/// <summary>The palette that pages and paper share, as a style sheet under an address of its own content.</summary>
internal static class LookSheet
{
    public const string Path = "/look.css";

    private static readonly byte[] Css = Encoding.UTF8.GetBytes(Look.Css + Look.PictureCss + CardHtml.Css);

    public static string Address { get; } = $"{Path}?{Convert.ToHexStringLower(SHA256.HashData(Css))[..12]}";

    public static IResult Send(HttpContext context)
    {
        context.Response.Headers.CacheControl = "public, max-age=31536000, immutable";
        return Results.Bytes(Css, "text/css; charset=utf-8");
    }
}
