using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Fonts;
using Ashery.Cards.Tests.Support;

namespace Ashery.Cards.Tests.Cards;

/// <summary>What holds for text, HTML and SVG of every card, hostile ones too.</summary>
public partial class SurfaceTests
{
    public static TheoryData<string> Cards => [.. SampleCards.All.Keys];

    [Theory]
    [MemberData(nameof(Cards))]
    public void Plain_text_keeps_to_72_columns_and_plain_line_ends(string name)
    {
        var text = CardText.Write(SampleCards.All[name]);
        Assert.All(text.Split('\n'), l => Assert.True(l.EnumerateRunes().Count() <= CardText.Columns, l));
        Assert.DoesNotContain(text, c => char.IsControl(c) && c != '\n');
        Assert.EndsWith("\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Html_says_everything_runs_nothing_and_fetches_nothing(string name)
    {
        var html = CardHtml.Write(SampleCards.All[name]);
        var body = XDocument.Parse(Article().Match(html).Value);
        var said = Squeeze(body.Root!.Value);
        foreach (var text in SampleCards.Texts(SampleCards.All[name]))
        {
            Assert.Contains(Squeeze(Safe.Plain(text)), said, StringComparison.Ordinal);
        }

        Assert.DoesNotContain(body.Descendants(), e => e.Name.LocalName is "script" or "img" or "iframe" or "object" or "link" or "b");
        Assert.DoesNotContain(body.Descendants().Attributes(), a => a.Name.LocalName is "src" or "href" or "style" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("url(", html, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Html_orders_its_headings_and_names_its_tables(string name)
    {
        var body = XDocument.Parse(CardHtml.Article(SampleCards.All[name], headingLevel: 2)).Root!;
        Assert.Single(body.Descendants(), e => e.Name.LocalName == "h2");
        Assert.DoesNotContain(body.Descendants(), e => e.Name.LocalName is "h1" or "h4");
        Assert.All(body.Descendants().Where(e => e.Name.LocalName == "table"), t =>
        {
            Assert.NotEqual("", t.Elements().First(e => e.Name.LocalName == "caption").Value);
            Assert.All(t.Descendants().Where(e => e.Name.LocalName == "th"), h => Assert.NotNull(h.Attribute("scope")));
        });
        Assert.Equal(body.Descendants().Attributes("id").Count(), body.Descendants().Attributes("id").Select(a => a.Value).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Svg_is_well_formed_and_keeps_every_line_within_its_margins(string name)
    {
        var card = SampleCards.All[name];
        var svg = XDocument.Parse(CardSvg.Write(card)).Root!;
        var size = svg.Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(card.Paper.PointsWide, size[2], 0.01);
        var margin = card.Paper.PointsMargin;
        foreach (var text in svg.Descendants().Where(e => e.Name.LocalName == "text"))
        {
            double Of(string attribute) => double.Parse(text.Attribute(attribute)?.Value ?? "0", CultureInfo.InvariantCulture);
            var face = text.Attribute("font-family") is not null ? Face.Head : text.Attribute("font-weight") is not null ? Face.Bold : Face.Text;
            var width = Typeface.Width(text.Value, Of("font-size"), face);
            Assert.True(text.Value.Length < 2 || Math.Abs(width - Of("textLength")) < 0.01 + (0.002 * width), $"{text.Value} {width.ToString(CultureInfo.InvariantCulture)}");
            var left = Of("x") - (text.Attribute("text-anchor")?.Value switch { "end" => width, "middle" => width / 2, _ => 0 });
            Assert.InRange(left, margin - 0.02, size[2] - margin);
            Assert.InRange(left + width, margin - 0.02, size[2] - margin + 0.3);
            Assert.InRange(Of("y"), margin, size[3] - margin + 0.5);
        }
    }

    [Fact]
    public void A_number_never_follows_the_machines_language()
    {
        var before = CultureInfo.CurrentCulture;
        var expected = CardText.Write(RecipeCard.Describe(Samples.Terrace)) + CardSvg.Write(RecipeCard.Describe(Samples.Terrace)) + CardHtml.Write(YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day));
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "minus";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(expected, CardText.Write(RecipeCard.Describe(Samples.Terrace)) + CardSvg.Write(RecipeCard.Describe(Samples.Terrace)) + CardHtml.Write(YearSheet.Describe(Samples.Year, Samples.Garden, Samples.Day)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Squeeze(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex("<article.*</article>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 5000)]
    private static partial Regex Article();
}
