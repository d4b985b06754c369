using Ashery.Cards.Drawing;

namespace Ashery.Cards.Tests.Support;

/// <summary>Every card the surfaces are tried on, by name.</summary>
internal static class SampleCards
{
    public static Dictionary<string, CardDocument> All { get; } = new(StringComparer.Ordinal)
    {
        ["recipe"] = RecipeCard.Describe(Samples.Terrace),
        ["recipe-a6"] = RecipeCard.Describe(Samples.Terrace with { Paper = Paper.A6 }),
        ["recipe-letter"] = RecipeCard.Describe(Samples.Terrace with { Paper = Paper.Letter }),
        ["meals"] = RecipeCard.Describe(Samples.Meals),
        ["twelve"] = RecipeCard.Describe(Samples.Twelve),
        ["hostile"] = RecipeCard.Describe(Samples.Hostile),
        ["label"] = BagLabel.Describe(Samples.Terrace),
        ["label-small"] = BagLabel.Describe(Samples.Terrace with { Paper = Paper.SmallLabel }),
        ["label-twelve"] = BagLabel.Describe(Samples.Twelve),
        ["label-hostile"] = BagLabel.Describe(Samples.Hostile),
        ["batch-label"] = BatchLabel.Describe(StockSamples.Label()),
        ["batch-label-small"] = BatchLabel.Describe(StockSamples.Label() with { Paper = Paper.SmallLabel }),
        ["batch-label-hostile"] = BatchLabel.Describe(StockSamples.Label("<script>alert(1)</script>\u202E" + new string('x', 160)) with { Address = "http://terrace.example/" + new string('y', 200) }),
        ["year"] = YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day),
        ["shopping"] = YearSheet.DescribeShopping(Samples.Year, Samples.Garden, Samples.Day),
        ["demo-recipe"] = RecipeCard.Describe(Demo.Recipe),
        ["demo-label"] = BagLabel.Describe(Demo.Recipe),
        ["demo-year"] = YearSheet.Describe(Demo.Plan, Demo.Garden, Demo.Day),
        ["demo-shopping"] = YearSheet.DescribeShopping(Demo.Plan, Demo.Garden, Demo.Day),
    };

    /// <summary>Every text a card holds, in the order of no surface in particular.</summary>
    public static IEnumerable<string> Texts(CardDocument card)
    {
        IEnumerable<string> texts = [card.Kind, card.Title, card.First ?? "", card.Address ?? ""];
        return texts.Concat(card.Particulars.Concat(card.Lead is { } lead ? [lead] : []).SelectMany(Of))
            .Concat(card.Sections.Select(s => s.Heading)).Concat(card.Sections.SelectMany(s => s.Blocks).SelectMany(In)).Concat(card.Foot);
    }

    private static IEnumerable<string> Of(Fact fact) => fact.Note is { } note ? [fact.Name, fact.Value, note] : [fact.Name, fact.Value];

    private static IEnumerable<string> In(CardBlock block) => block switch
    {
        Paragraph p => [p.Text],
        Listing l => l.Items,
        FactList f => f.Facts.SelectMany(Of),
        TableBlock t => t.Columns.Select(c => c.Heading).Concat(t.Rows.SelectMany(r => r)).Concat(t.Total).Append(t.Note ?? ""),
        PictureBlock p => p.Picture.Marks.OfType<Words>().Select(w => w.Text),
        _ => throw new NotSupportedException(block.GetType().Name),
    };
}
