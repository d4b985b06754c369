using System.Text;
using Ashery.Exchange.Materials;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Web.Pages.Shelf;

/// <summary>Reads bags from CSV or JSON, told apart by how the text begins, and puts them on a shelf.</summary>
internal static class ShelfImport
{
    public static Result<IReadOnlyList<Bag>> Read(string text)
    {
        if (text.AsSpan().TrimStart().StartsWith("{", StringComparison.Ordinal))
        {
            return ShelfFile.Read(text);
        }

        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return BagCsv.Read(stream);
    }

    /// <summary>Same id: replaced in its place. New: added at the end.</summary>
    public static IReadOnlyList<Bag> Merge(IReadOnlyList<Bag> shelf, IReadOnlyList<Bag> read)
    {
        var news = read.GroupBy(b => b.Id, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last(), StringComparer.Ordinal);
        return [.. shelf.Select(b => news.Remove(b.Id, out var fresh) ? fresh : b), .. read.Where(b => news.Remove(b.Id))];
    }
}
