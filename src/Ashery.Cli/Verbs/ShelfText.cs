using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Catalogue;

namespace Ashery.Cli.Verbs;

/// <summary>A shelf as text.</summary>
internal static class ShelfText
{
    public static void Write(Terminal terminal, ShelfJson shelf, IReadOnlyList<string> files)
    {
        var page = new Page(terminal);
        page.Heading($"{SafeText.Of(shelf.Garden)}: {Figures.Whole(shelf.Bags.Count)} bags on the shelf. Prices in {SafeText.Of(shelf.Currency)}.");
        foreach (var file in files)
        {
            page.Text($"Written to {SafeText.Of(file)}.");
        }

        if (shelf.Bags.Count > 0)
        {
            page.Blank();
            var table = new Table("bag", ">N", ">P2O5", ">K2O", ">stock", ">price/kg", "name");
            foreach (var bag in shelf.Bags)
            {
                table.Add(SafeText.Of(bag.Id), Percent(bag, "N"), Percent(bag, "P2O5"), Percent(bag, "K2O"), Stock(bag.Stock), Figures.Fixed(bag.PricePerKg, 2), SafeText.Of(bag.Name));
            }

            table.Write(terminal.Output, terminal.Width);
        }

        page.Bullets("Scoops", [.. shelf.Scoops.Select(Scoop)]);
    }

    private static string Scoop(ShelfScoopJson scoop)
    {
        var weighed = string.Join(", ", scoop.Calibrations.Select(static c => $"{c.Key} ({Figures.Short(c.Value.Typical)} g)"));
        return $"{scoop.Name}: {Figures.Short(scoop.Volume)} mL level, {(weighed.Length == 0 ? "not calibrated" : $"weighed for {weighed}")}";
    }

    private static string Percent(ShelfBagJson bag, string symbol) => bag.Label.TryGetValue(symbol, out var percent) ? Figures.Short(percent) : string.Empty;

    private static string Stock(double? grams) => grams switch
    {
        null => "as wanted",
        >= 1000 and var g => $"{Figures.Short(g / 1000)} kg",
        { } g => $"{Figures.Short(g)} g",
    };
}
