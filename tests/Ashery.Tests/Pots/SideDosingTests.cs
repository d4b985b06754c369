using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using CsCheck;

namespace Ashery.Tests.Pots;

public class SideDosingTests
{
    private static Feed Trace(double fe, double mn, double b, double cu) => SomePots.Mineral(0) with
    {
        Kind = FeedKind.TraceElements,
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.Fe] = fe, [Nutrient.Mn] = mn, [Nutrient.B] = b, [Nutrient.Cu] = cu }),
        Nitrogen = default,
        Dissolves = true,
    };

    // Whipker et al. 2002 (seen): one corrective drench is 6.2 mg/L B; at 0.2 L a litre of medium (ours) that is 1.24 mg B a litre of medium.
    [Fact]
    public void No_mix_brings_more_boron_or_copper_than_a_season_may() =>
        Gen.Select(Gen.Double[0.001, 0.1], Gen.Double[0, 0.1], Gen.Double[0, 0.05], Gen.Double[0, 0.05], Gen.Double[0.3, 40], Gen.Double[0, 1.2]).Sample((fe, mn, b, cu, litres, given) =>
        {
            var request = SomePots.Ask(SomePots.Pot(litres), Trace(fe, mn, b, cu)) with { TraceGiven = new Dictionary<Nutrient, double> { [Nutrient.B] = given } };
            var grams = Dosing.For(request).Grams;
            return given + (grams * b * 1000 / litres) <= 1.24 && grams * cu * 1000 / litres <= 1.0 + 1e-9;
        });

    [Fact]
    public void Trace_elements_never_go_by_the_spoon()
    {
        var scoop = new Scoop("teaspoon", Volume.FromMillilitres(5), new Dictionary<string, Spread> { ["blend"] = Spread.Exactly(0.01) });
        Assert.Null(Dosing.For(SomePots.Ask(SomePots.Pot(10), Trace(0.1, 0, 0.001, 0)) with { Scoop = scoop }).Scoops);
    }

    // 2 g Epsom salt a litre, 15 mL a litre of pot (rule foliar-magnesium): 10 L get 150 mL with 0.3 g.
    [Fact]
    public void Epsom_salt_is_sprayed_at_the_strength_of_the_rule()
    {
        var epsom = Epsom();
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), epsom));
        Assert.Equal(2, dose.Spray!.GramsPerLitre, 2);
        Assert.Equal(150, dose.Spray.MillilitresPerPot, 9);
        Assert.Equal(0.3, dose.Grams, 2);
    }

    [Fact]
    public void Borates_are_kept_off_leaves()
    {
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), Epsom() with { Parts = new Dictionary<string, double> { ["epsom-salt"] = 0.9, ["borax-decahydrate"] = 0.1 } }));
        Assert.Equal(0, dose.Grams);
        Assert.Contains(dose.Notes, static n => n.Message.Contains("borax", StringComparison.OrdinalIgnoreCase));
    }

    private static Feed Epsom() => SomePots.Mineral(0) with
    {
        Kind = FeedKind.Foliar,
        Parts = new Dictionary<string, double> { ["epsom-salt"] = 1 },
        Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.Mg] = 0.0986, [Nutrient.S] = 0.13 }),
        Dissolves = true,
    };

    [Fact]
    public void First_aid_flushes_with_one_to_two_pot_volumes()
    {
        var aid = FirstAid.For(SomePots.Pot(8), RuleBook.Default);
        Assert.InRange(aid.LitresAPass * aid.Passes, 8, 16);
        Assert.Equal(2, aid.Passes);
    }
}
