using Ashery.Cards.Tests.Support;
using Ashery.Cards.Wording;
using Ashery.Compatibility;
using Ashery.Materials;
using Ashery.Recipes;

namespace Ashery.Cards.Tests.Cards;

/// <summary>What a card says in the cases that differ.</summary>
public class ContentTests
{
    [Fact]
    public void Safety_comes_before_everything_and_overdose_has_its_own_section()
    {
        var card = RecipeCard.Describe(Samples.Terrace);
        Assert.StartsWith("Follow the label", card.First, StringComparison.Ordinal);
        var cautions = card.Sections.Where(s => s.Weight == SectionWeight.Caution).Select(s => s.Heading);
        Assert.Equal(["Cautions", "Too much given"], cautions);
        Assert.Contains("7.5 L for a pot of 10 L", CardText.Write(card).Replace("\n  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void A_caution_names_the_materials_it_goes_with()
    {
        var lines = CautionWords.Lines(Samples.Terrace);
        Assert.Contains(lines, l => l.StartsWith("Oxidiser", StringComparison.Ordinal) && l.EndsWith("(Potassium nitrate)", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("Wash hands", StringComparison.Ordinal) && !l.EndsWith(')'));
    }

    [Fact]
    public void A_mix_that_must_not_be_is_not_explained_how_to_mix()
    {
        var never = Samples.Terrace with
        {
            Recipe = Samples.Terrace.Recipe with
            {
                Storage = new(StorageClass.Never, "Nitrate with meal can burn.", null, "sample chart"),
                Pairs = [new("potassium-nitrate", "neem-cake", Stop("heats"), Stop("may catch fire"), Stop("rots"))],
            },
        };
        var text = CardText.Write(RecipeCard.Describe(never));
        Assert.Contains("Do not mix these", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Weigh the parts", text, StringComparison.Ordinal);
        Assert.Contains("do not. may catch fire.", text.Replace("\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Stops_come_before_limits_and_the_unknown_is_said_once()
    {
        var lines = PairWords.Lines(Samples.Terrace with
        {
            Recipe = Samples.Terrace.Recipe with
            {
                Pairs =
                [
                    new("a", "b", Is(Verdict.Unknown), Is(Verdict.Unknown), Is(Verdict.Unknown)),
                    new("a", "c", Is(Verdict.Fine), Is(Verdict.Limited), Is(Verdict.Fine)),
                    new("b", "c", Is(Verdict.Fine), Is(Verdict.Unknown), Stop("gypsum")),
                ],
            },
        });
        Assert.Equal(4, lines.Count);
        Assert.StartsWith("b with c, in concentrated solution: do not", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("a with c, mixed dry and stored: limited", lines[1], StringComparison.Ordinal);
        Assert.Equal("Not known mixed dry and stored, nothing published says: a with b; b with c.", lines[2]);
    }

    [Theory]
    [InlineData(StorageClass.OnTheDay, "the day it is mixed")]
    [InlineData(StorageClass.KeepsDry, "no date")]
    [InlineData(StorageClass.Airtight, "no date")]
    [InlineData(StorageClass.Unknown, "nothing published says")]
    public void Use_by_never_invents_months(StorageClass storage, string says)
    {
        Assert.Contains(says, RecipeWords.UseBy(storage), StringComparison.Ordinal);
        Assert.DoesNotContain("month", RecipeWords.UseBy(storage), StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData(0.62, "acidifying: 1 kg makes as much acid as 0.62 kg of pure lime (CaCO₃) takes up")]
    [InlineData(-0.2, "liming: 1 kg takes up as much acid as 0.2 kg of pure lime (CaCO₃)")]
    [InlineData(0.001, "neutral: neither acidifies nor limes to speak of")]
    [InlineData(null, "not known: a part has no figure")]
    public void Lime_equivalent_is_said_in_words(double? kg, string words) => Assert.Equal(words, RecipeWords.Lime(kg));

    [Fact]
    public void A_missing_price_is_not_known_and_never_zero()
    {
        var text = CardText.Write(RecipeCard.Describe(Samples.Meals));
        Assert.Contains("Cost: not known (a part has no price)", text, StringComparison.Ordinal);
        Assert.DoesNotContain("0.00", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_liquid_is_kept_apart_and_what_draws_water_is_weighed_last()
    {
        var acid = SampleMaterials.Of("mkp") with { Id = "liquid", Name = "Liquid feed", IsLiquid = true, LiquidDensity = 1.3 };
        var recipe = Samples.Blend(100, (acid, 40), (SampleMaterials.Of("calcium-nitrate-double"), 10), (SampleMaterials.Of("urea"), 50));
        var steps = MixSteps.For(Samples.Meals with { Recipe = recipe });
        Assert.Contains(steps, s => s.Contains("Urea 50 g, Calcium nitrate, fertiliser grade 10 g", StringComparison.Ordinal));
        Assert.Contains(steps, s => s.StartsWith("Keep the liquid apart", StringComparison.Ordinal));
        Assert.Contains("goggles", steps[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Use_in_the_can_is_told_as_dissolving()
    {
        var steps = MixSteps.For(Samples.Terrace with { Use = BlendUse.Dissolved });
        Assert.Contains(steps, s => s.StartsWith("Dissolve the parts one after another", StringComparison.Ordinal));
        Assert.Contains(CautionWords.For(Samples.Terrace with { Use = BlendUse.Dissolved }), c => c.Id == "no-tank-mixing");
    }

    [Fact]
    public void Scoops_stand_beside_grams()
    {
        var recipe = Samples.Meals.Recipe with { Parts = [.. Samples.Meals.Recipe.Parts.Select((p, i) => p with { Scoops = i + 1 })] };
        var text = CardText.Write(RecipeCard.Describe(Samples.Meals with { Recipe = recipe }));
        Assert.Contains("Material            Weigh  Scoops   Share\n", text, StringComparison.Ordinal);
        Assert.Contains("Kelp meal            10 g       4   5.6 %\n", text, StringComparison.Ordinal);
        Assert.Contains("Batch               180 g      10   100 %\n", text, StringComparison.Ordinal);
        Assert.Contains(MixSteps.For(Samples.Meals with { Recipe = recipe }), s => s.Contains("Kelp meal 4 scoops (10 g)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_label_gives_the_dose_of_the_commonest_pot_and_else_of_the_middling_one()
    {
        Assert.Equal(2, DoseWords.Commonest(Samples.Terrace.Doses)[0].Pot.Volume.Litres);
        Assert.Equal(5, DoseWords.Commonest([Samples.Dosed("a", 30, 1, 9), Samples.Dosed("b", 5, 1, 2), Samples.Dosed("c", 1, 1, 1)])[0].Pot.Volume.Litres);
    }

    [Fact]
    public void Lot_number_is_a_pure_function_of_day_and_content()
    {
        var recipe = Samples.Terrace.Recipe;
        var lot = Lot.Number(Samples.Day, recipe);
        Assert.Matches("^261125-[0-9A-HJKMNP-TV-Z]{5}$", lot);
        Assert.Equal(lot, Lot.Number(Samples.Day, recipe with { Parts = [.. recipe.Parts.Reverse()], RatioError = 0.5 }));
        Assert.NotEqual(lot[7..], Lot.Number(Samples.Day, Samples.Blend(1000, ("potassium-nitrate", 396), ("ammonium-sulfate", 359), ("map-technical", 85), ("potassium-sulfate", 160)))[7..]);
        Assert.Equal(lot[7..], Lot.Number(new(2027, 1, 2), recipe)[7..]);
    }

    // Test vectors of FNV-1a, 64 bits (Fowler, Noll, Vo and Eastlake, IETF draft-eastlake-fnv; from memory), folded as the lot number folds them.
    [Theory]
    [InlineData("", 0xcbf29ce484222325UL)]
    [InlineData("a", 0xaf63dc4c8601ec8cUL)]
    [InlineData("foobar", 0x85944171f73967e8UL)]
    public void Check_of_the_lot_is_FNV_1a(string text, ulong hash) => Assert.Equal(hash ^ (hash >> 32), Lot.Fnv1A(text));

    [Fact]
    public void A_differing_card_shows_where_it_differs()
    {
        var difference = Approval.Difference("one\ntwo\nthree", "one\n2\nthree\nfour", "card");
        Assert.Contains("line 2\n  approved: two\n  received: 2", difference, StringComparison.Ordinal);
        Assert.Contains("received: four", difference, StringComparison.Ordinal);
        Assert.DoesNotContain("line 1", difference, StringComparison.Ordinal);
    }

    private static Judgement Is(Verdict verdict) => new(verdict, "reason", "sample chart");

    private static Judgement Stop(string reason) => new(Verdict.Stop, reason, "sample chart", IsHardStop: true);
}
