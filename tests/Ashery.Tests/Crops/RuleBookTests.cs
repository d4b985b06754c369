using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Sources;

namespace Ashery.Tests.Crops;

public class RuleBookTests
{
    [Fact]
    public void Rules_speak_of_feeds_and_seasons_by_names_the_plan_knows() =>
        Assert.All(RuleBook.Default.All, rule =>
        {
            Assert.All(rule.AppliesTo, name => Assert.True(Enum.TryParse<FeedKind>(name, ignoreCase: true, out _), name));
            Assert.True(rule.Season is null || Enum.TryParse<SeasonKind>(rule.Season, ignoreCase: true, out _), rule.Season);
            Assert.True(rule.Choice is null == (rule.Choices.Count == 0), rule.Id);
            Assert.True(rule.Choice is null || rule.Choices.Contains(rule.Choice), rule.Id);
        });

    [Fact]
    public void Every_figure_lies_within_the_bounds_a_grower_may_set() =>
        Assert.All(RuleBook.Default.All.SelectMany(rule => rule.Parameters), p => Assert.InRange(p.Value, p.Min, p.Max));

    [Fact]
    public void Custom_never_poses_as_a_publication() =>
        Assert.All(RuleBook.Default.All, rule => Assert.True(rule.Provenance != Provenance.CommonPractice || rule.SourceId == "growers-practice", rule.Id));

    [Fact]
    public void Every_rule_names_a_listed_source_and_what_was_seen_was_looked_up() =>
        Assert.All(RuleBook.Default.All, rule =>
        {
            var source = SourceIndex.Default.Find(rule.SourceId);
            Assert.True(source is not null, $"{rule.Id}: {rule.SourceId}");
            Assert.True(rule.Provenance != Provenance.Seen || source.LookedUp, $"{rule.Id}: {rule.SourceId}");
        });

    [Fact]
    public void The_documentation_lists_every_rule_as_it_is()
    {
        var page = RepositoryFile.Read("docs/science/growing-rules.md");
        Assert.All(RuleBook.Default.All, rule =>
        {
            Assert.Contains($"| `{rule.Id}` | {rule.Statement} | {rule.Strength.ToString().ToLowerInvariant()} |", page, StringComparison.Ordinal);
            Assert.True(rule.Differs is null || page.Contains($"- `{rule.Id}`: {rule.Differs}", StringComparison.Ordinal), rule.Id);
        });
    }

    // Borax drench: 0.75 oz (21.3 g) of borax with 11 % B in 100 US gallons (Whipker and others 2002, seen) is 6.2 mg/L B.
    [Fact]
    public void Boron_cap_of_a_season_is_one_published_drench()
    {
        var milligramsBPerLitre = 21.3 * 0.11 / (100 * 3.785411784) * 1000;
        Assert.Equal(6.19, milligramsBPerLitre, 2);
        Assert.Equal(milligramsBPerLitre * 0.2, RuleBook.Default["trace-boron"]["milligramsPerLitre"], 0.05);
        Assert.Equal(21.3 / 378.5411784, RuleBook.Default["spray-borax"]["gramsPerLitre"], 0.001);
    }

    // Common practice, no source: 5 g a fortnight for a mature plant, a quarter of it for a young one; it suits 10 L.
    [Fact]
    public void Rule_of_thumb_is_the_custom_made_to_scale_with_the_pot()
    {
        var rule = RuleBook.Default["rule-of-thumb"];
        Assert.Equal(rule["grams"], rule["gramsPerLitre"] * rule["litres"]);
        Assert.Equal((5, 14, 0.25), (rule["grams"], rule["days"], rule["youngFraction"]));
    }

    [Fact]
    public void A_grower_changes_choice_and_figure_and_switches_off()
    {
        var book = RuleBook.Default.With(new Dictionary<string, string>
        {
            ["mineral-hot-season"] = "reduce, factor=0.4",
            ["foliar-magnesium"] = "off",
            ["inoculant-soilless"] = "on",
        }).Value!;
        Assert.Equal(("reduce", 0.4), (book["mineral-hot-season"].Choice, book["mineral-hot-season"]["factor"]));
        Assert.False(book["foliar-magnesium"].IsOn);
        Assert.Equal("on", book["inoculant-soilless"].Choice);
        Assert.Equal("stop", RuleBook.Default["mineral-hot-season"].Choice);
    }

    [Theory]
    [InlineData("no-such-rule", "off", "rule no-such-rule")]
    [InlineData("repotted", "days=ten", "rule repotted, days")]
    [InlineData("repotted", "days=NaN", "rule repotted, days")]
    [InlineData("repotted", "days=1e9", "rule repotted, days")]
    [InlineData("repotted", "weeks=3", "rule repotted")]
    [InlineData("mineral-hot-season", "perhaps", "rule mineral-hot-season")]
    public void A_setting_that_cannot_be_names_the_field_and_the_way_out(string id, string setting, string field)
    {
        var result = RuleBook.Default.With(new Dictionary<string, string> { [id] = setting });
        var problem = Assert.Single(result.Problems);
        Assert.False(result.Ok);
        Assert.Equal(field, problem.Field);
        Assert.NotEmpty(problem.WayOut);
    }
}
