using System.Text;
using Ashery.Exchange.Materials;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;

namespace Ashery.Exchange.Tests.Materials;

public class ShelfFileTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    [Fact]
    public void The_whole_catalogue_goes_out_and_comes_back()
    {
        var back = ShelfFile.Read(ShelfFile.Write(Catalogue.All.Select(m => new Bag(m.Id, m, null, null, null))));
        Assert.True(back.Ok, string.Join('\n', back.Problems));
        Assert.Equal(Catalogue.All, back.Value.Select(b => b.Material));
    }

    [Fact]
    public void A_bag_with_its_own_label_comes_back_with_all_that_hangs_on_it()
    {
        var sulfate = OwnBag.Of(Catalogue.Find("ammonium-sulfate")!, LabelReader.Parse("N 20.5; S 0").Value!).Value!;
        var back = Assert.Single(ShelfFile.Read(ShelfFile.Write([new Bag("shed", sulfate, new Mass(900), 4.5, new Mass(1000))])).Value!);
        Assert.Equal(("shed", new Mass(900), 4.5, new Mass(1000)), (back.Id, back.Stock!.Value, back.Price!.Value, back.Size!.Value));
        Assert.Equal(0.205, back.Material.Label[Nutrient.N], 12);
        Assert.Equal(0, back.Material.Label[Nutrient.S]);
        Assert.Equal(sulfate.LimeEquivalent!.Value, back.Material.LimeEquivalent!.Value, 9);
        Assert.Equal(sulfate.Solubility, back.Material.Solubility);
    }

    [Theory]
    [InlineData("""{ "format": "ashery-shelf/1", "shelf": [{ "material": "urea", "label": { "N": 48 } }] }""", "shelf[0].label, N", "more than the pure salt holds")]
    [InlineData("""{ "format": "ashery-shelf/1", "shelf": [{ "material": "ureaa" }] }""", "shelf[0].material", "no material")]
    [InlineData("""{ "format": "ashery-shelf/1", "shelf": [{ "material": "urea" }, { "material": "urea" }] }""", "shelf", "2 times")]
    [InlineData("""{ "format": "ashery-shelf/1", "shelf": [{ "material": "urea", "stock": -5 }] }""", "shelf[0].stock", "outside")]
    [InlineData("""{ "format": "other", "shelf": [] }""", "format", "not a shelf file")]
    public void Errors_name_the_field(string text, string field, string words)
    {
        var read = ShelfFile.Read(text);
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Field == field && p.Message.Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void Broken_text_names_the_line() =>
        Assert.StartsWith("shelf, line 3", ShelfFile.Read("{\n\"format\": \"ashery-shelf/1\",\n\"shelf\": [ oops ] }").Problems[0].Field, StringComparison.Ordinal);

    [Fact]
    public void Binary_and_large_streams_are_refused()
    {
        Assert.Contains("not a text file", ShelfFile.Read(new MemoryStream([1, 0, 2])).Problems[0].Message, StringComparison.Ordinal);
        Assert.Contains("larger than", ShelfFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(new string(' ', 5 * 1024 * 1024)))).Problems[0].Message, StringComparison.Ordinal);
    }
}
