using System.Globalization;
using Ashery.Exchange.Gardens;

namespace Ashery.Exchange.Tests.Gardens;

public class GardenFileTests
{
    private const string Place = """ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": 10 } """;

    private static string With(string more) => "{" + Place + (more.Length == 0 ? "" : "," + more) + "}";

    public static TheoryData<string, string> Wrong => new()
    {
        { "", "garden" },
        { "null", "garden" },
        { "[]", "garden" },
        { "{", "garden" },
        { "\u0000\u0001\u0002PK", "garden" },
        { "{}", "format" },
        { """{ "format": "ashery-garden/9", "name": "g", "place": { "name": "p", "latitude": 1 } }""", "format" },
        { """{ "format": "ashery-garden/1", "name": "g" }""", "place" },
        { """{ "format": "ashery-garden/1", "name": " ", "place": { "name": "p", "latitude": 1 } }""", "name" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": 91 } }""", "place.latitude" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": NaN } }""", "place.latitude" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": "1,5" } }""", "place.latitude" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": 1, "normals": [{ "meanMax": 20, "meanMin": 10, "rain": 5 }] } }""", "place.normals" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": 1, "seasons": [{ "kind": "monsoon", "from": "06-01", "to": "09-01" }] } }""", "place.seasons[0].kind" },
        { """{ "format": "ashery-garden/1", "name": "g", "place": { "name": "p", "latitude": 1, "seasons": [{ "kind": "hot", "from": "02-30", "to": "09-01" }] } }""", "place.seasons[0].from" },
        { With(""" "potts": [] """), "potts" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix" }] """), "pots[0].volume" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 4 }, { "id": "b", "crop": "rose", "medium": "peatMix", "volume": 4 }, { "id": "c", "crop": "rose", "medium": "peatMix", "volume": -4 }] """), "pots[2].volume" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 1e300 }] """), "pots[0].volume" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 1e999 }] """), "pots[0].volume" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "diameter": 20 }] """), "pots[0].height" },
        { With(""" "pots": [{ "id": "a", "crop": "rise", "medium": "peatMix", "volume": 4 }] """), "pots[0].crop" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "mud", "volume": 4 }] """), "pots[0].medium" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 4, "planted": "1.5.2026" }] """), "pots[0].planted" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 4, "count": 0 }] """), "pots[0].count" },
        { With(""" "pots": [{ "id": "a", "crop": "rose", "medium": "peatMix", "volume": 4 }, { "id": "A", "crop": "rose", "medium": "peatMix", "volume": 4 }] """), "pots" },
        { With(""" "pots": [null] """), "pots[0]" },
        { With(""" "shelf": [{ "material": "unobtainium" }] """), "shelf[0].material" },
        { With(""" "shelf": [{ "material": "urea", "label": { "N": 146 } }] """), "shelf[0].label.N" },
        { With(""" "shelf": [{ "material": "urea", "stock": -1 }] """), "shelf[0].stock" },
        { With(""" "feeds": [{ "id": "f", "kind": "mineral", "parts": { "urea": 0.5 } }] """), "feeds[0].parts" },
        { With(""" "feeds": [{ "id": "f", "kind": "mineral", "parts": { "nothing": 1 } }] """), "feeds[0].parts.nothing" },
        { With(""" "scoops": [{ "name": "s", "volume": 0 }] """), "scoops[0].volume" },
        { With(""" "settings": { "scoop": "ladle" } """), "settings.scoop" },
        { With(""" "settings": { "scaleStep": 0 } """), "settings.scaleStep" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_is_wrong_is_named_by_its_path_with_a_way_out(string text, string path)
    {
        var read = GardenFile.Read(text);
        Assert.False(read.Ok);

        // JSON that does not parse is named by line and path; everything else by path alone.
        Assert.Contains(read.Problems, p => p.Field == path || p.Field.EndsWith(", " + path, StringComparison.Ordinal) || (path == "garden" && p.Field.StartsWith("garden", StringComparison.Ordinal)));
        Assert.All(read.Problems, static p =>
        {
            Assert.NotEqual("", p.Message);
            Assert.NotEqual("", p.WayOut);
            Assert.DoesNotContain("System.", p.Message, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void All_that_is_wrong_comes_at_once()
    {
        var read = GardenFile.Read(With(""" "pots": [{ "id": "a", "crop": "rise", "medium": "mud", "volume": 0 }] """));
        Assert.Equal(["pots[0].crop", "pots[0].medium", "pots[0].volume"], read.Problems.Select(static p => p.Field).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Hostile_names_are_kept_as_text_and_read_back()
    {
        const string hostile = "<script>alert(1)</script>\\\"; DROP TABLE pots; =HYPERLINK()";
        var read = GardenFile.Read(With($$""" "pots": [{ "id": "a", "name": "{{hostile}}", "crop": "rose", "medium": "peatMix", "volume": 4 }] """));
        Assert.True(read.Ok);
        var again = GardenFile.Read(GardenFile.Write(read.Value));
        Assert.Equal(read.Value.Pots[0].Name, again.Value!.Pots[0].Name);
    }

    [Fact]
    public void Control_characters_in_names_are_refused() =>
        Assert.Equal("pots[0].name", Assert.Single(GardenFile.Read(With(""" "pots": [{ "id": "a", "name": "x\u0000y", "crop": "rose", "medium": "peatMix", "volume": 4 }] """)).Problems).Field);

    [Fact]
    public void A_bag_with_its_own_label_keeps_the_proportions_of_its_nitrogen_forms()
    {
        var garden = GardenFile.Read(With(""" "shelf": [{ "material": "ammonium-nitrate", "label": { "N": 26 }, "price": 4.5, "size": 1000 }] """)).Value!;
        var bag = Assert.Single(garden.Shelf);
        Assert.Equal(0.26, bag.Material.Nitrogen.Total, 9);
        Assert.Equal(bag.Material.Nitrogen.Ammonium, bag.Material.Nitrogen.Nitrate, 2);
        Assert.Equal(4.5, bag.PricePerKg);
        Assert.Null(bag.Stock);
    }

    // Nothing hangs on the language of the machine: a comma language must neither change what is written nor what is read.
    [Fact]
    public void Figures_take_a_point_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NumberGroupSeparator = ".";
            CultureInfo.CurrentCulture = comma;
            var text = GardenFile.Write(DemoGarden.Create(new(2027, 1, 1)));
            Assert.Contains("\"volume\": 7.5", text, StringComparison.Ordinal);
            Assert.Equal(7.5, GardenFile.Read(text).Value!.Pots.Single(static p => p.Id == "p02").Volume.Litres);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
