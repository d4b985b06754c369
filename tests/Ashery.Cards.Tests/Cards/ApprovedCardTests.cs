using Ashery.Cards.Tests.Support;
using Ashery.Gardens;

namespace Ashery.Cards.Tests.Cards;

/// <summary>Each card on each surface, as a person approved it.</summary>
public class ApprovedCardTests
{
    [Fact]
    public void Recipe_card_as_text() => Approval.Check(CardText.Write(RecipeCard.Describe(Samples.Terrace)), "recipe", "txt");

    [Fact]
    public void Recipe_card_as_html() => Approval.Check(CardHtml.Write(RecipeCard.Describe(Samples.Terrace)), "recipe", "html");

    [Fact]
    public void Recipe_card_as_svg() => Approval.Check(CardSvg.Write(RecipeCard.Describe(Samples.Terrace)), "recipe", "svg");

    [Fact]
    public void Meal_mix_as_text() => Approval.Check(CardText.Write(RecipeCard.Describe(Samples.Meals)), "meals", "txt");

    [Fact]
    public void Crowded_card_as_text() => Approval.Check(CardText.Write(RecipeCard.Describe(Samples.Twelve)), "twelve", "txt");

    [Fact]
    public void Bag_label_as_text() => Approval.Check(CardText.Write(BagLabel.Describe(Samples.Terrace)), "label", "txt");

    [Fact]
    public void Bag_label_as_svg() => Approval.Check(CardSvg.Write(BagLabel.Describe(Samples.Terrace)), "label", "svg");

    [Fact]
    public void Batch_label_as_text() => Approval.Check(CardText.Write(BatchLabel.Describe(StockSamples.Label())), "batch-label", "txt");

    [Fact]
    public void Batch_label_as_svg() => Approval.Check(CardSvg.Write(BatchLabel.Describe(StockSamples.Label())), "batch-label", "svg");

    [Fact]
    public void Year_sheet_as_text() => Approval.Check(CardText.Write(YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day)), "year", "txt");

    [Fact]
    public void Year_sheet_as_html() => Approval.Check(CardHtml.Write(YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day)), "year", "html");

    /// <summary>The whole way, from the demo garden's shelf through search, recipe and doses to paper: a change anywhere on it shows here.</summary>
    [Fact]
    public void Demo_recipe_card_as_text() => Approval.Check(CardText.Write(RecipeCard.Describe(Demo.Recipe)), "demo-recipe", "txt");

    [Fact]
    public void Shopping_list_as_text() => Approval.Check(CardText.Write(YearSheet.DescribeShopping(Samples.Year, Samples.Garden, Samples.Day)), "shopping", "txt");

    [Fact]
    public void Gallons_for_who_wants_them() => Approval.Check(
        CardText.Write(RecipeCard.Describe(Samples.Terrace with { Settings = new GardenSettings { UsUnits = true, Currency = "USD" }, Paper = Paper.HalfLetter })), "recipe-us", "txt");
}
