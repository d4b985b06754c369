using System.Globalization;
using Ashery.Feeds;

namespace Ashery.Web.Forms;

/// <summary>Keys of things in the garden: words of the name, with a number when they are taken.</summary>
internal static class Ids
{
    public static string Free(string name, string otherwise, IEnumerable<string> taken)
    {
        var used = taken.ToHashSet(StringComparer.Ordinal);
        var stem = FeedMaker.FeedId(name.Length > 40 ? name[..40] : name);
        if (!name.Any(char.IsAsciiLetterOrDigit))
        {
            stem = otherwise;
        }

        // "new" and "add" are pages.
        for (var i = 1; ; i++)
        {
            var id = i == 1 ? stem : stem + "-" + i.ToString(CultureInfo.InvariantCulture);
            if (!used.Contains(id) && id is not ("new" or "add" or "import" or "blend" or "year" or "shopping"))
            {
                return id;
            }
        }
    }
}
