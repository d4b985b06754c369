using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Verbs;

/// <summary>Shows what is on the shelf of a garden.</summary>
internal sealed class ShelfVerb : Verb
{
    private readonly GardenSource garden;

    public ShelfVerb()
        : base("shelf", "Show the bags on the shelf with label, stock and price") =>
        garden = new GardenSource(Command);

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden's shelf:", "ashery shelf --demo"),
        ("The same as JSON:", "ashery shelf --demo --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        if (garden.Load(given, terminal) is not { } loaded)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var shelf = ShelfOut.Of(loaded);
        if (given.Has(Json))
        {
            terminal.Output.Write(AsheryJson.Write(shelf, CatalogueJson.Shared.ShelfJson));
        }
        else
        {
            Write(terminal, shelf);
        }

        return ExitCode.Done;
    }

    internal static void Write(Terminal terminal, ShelfJson shelf)
    {
        var page = new Page(terminal);
        page.Heading($"{SafeText.Of(shelf.Garden)}: {Figures.Whole(shelf.Bags.Count)} bags on the shelf. Prices in {SafeText.Of(shelf.Currency)}.");
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

        page.Bullets("Scoops", [.. shelf.Scoops.Select(static s => $"{s.Name}: {Figures.Short(s.Volume)} mL level, {(s.Calibrations.Count == 0 ? "not calibrated" : $"weighed for {string.Join(", ", s.Calibrations.Select(static c => $"{c.Key} ({Figures.Short(c.Value.Typical)} g)"))}")}")]);
    }

    private static string Percent(ShelfBagJson bag, string symbol) => bag.Label.TryGetValue(symbol, out var percent) ? Figures.Short(percent) : string.Empty;

    private static string Stock(double? grams) => grams switch
    {
        null => "as wanted",
        >= 1000 and var g => $"{Figures.Short(g / 1000)} kg",
        { } g => $"{Figures.Short(g)} g",
    };
}
