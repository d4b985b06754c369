using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using CsCheck;

namespace Ashery.Tests.Pots;

public class DosingTests
{
    private static readonly Gen<Feed> AnyFeed =
        from n in Gen.Double[1, 46]
        from urea in Gen.Double[0, 1]
        from salt in Gen.Double[5, 120]
        from dissolves in Gen.Bool
        from organic in Gen.Bool
        select SomePots.Mineral(n, dissolves, salt, organic ? 0 : n / 100 * urea) with { Kind = organic ? FeedKind.Organic : FeedKind.Mineral };

    private static readonly Gen<DoseRequest> AnyRequest =
        from litres in Gen.Double[0.1, 60]
        from crop in SomePots.AnyCrop
        from stage in Gen.Enum<PlantStage>()
        from feed in AnyFeed
        from feeds in Gen.Double[1, 30]
        from step in Gen.OneOf(Gen.Const(0.01), Gen.Const(0.1), Gen.Const(0.5), Gen.Const(1.0), Gen.Const(5.0))
        from days in Gen.Int[3, 60]
        select SomePots.Ask(SomePots.Pot(litres, crop.Id, stage), feed, feeds) with { ScaleStep = step, IntervalDays = days };

    [Fact]
    public void No_cap_is_ever_passed() => AnyRequest.Sample(request =>
    {
        var dose = Dosing.For(request);
        return DoseCaps.Of(request).All(cap => dose.Grams <= cap.Grams * (1 + 1e-8));
    });

    // The caps said again in plain arithmetic, so that a slip in DoseCaps shows.
    [Fact]
    public void Urea_salt_and_the_rule_of_thumb_are_held_to_their_figures() => AnyRequest.Sample(request =>
    {
        var grams = Dosing.For(request).Grams;
        var litres = request.Pot.Volume.Litres;
        return request.Feed.Kind == FeedKind.Organic
            ? grams <= 4 * litres * (1 + 1e-8)
            : grams * request.Feed.Nitrogen.Urea <= 0.05 * litres * (1 + 1e-8)
                && grams * request.Feed.SaltIndex!.Value / 100 <= 0.5 * litres * (1 + 1e-8)
                && grams <= 0.5 * litres * request.IntervalDays / 14 * (1 + 1e-8);
    });

    [Fact]
    public void What_is_weighed_can_be_weighed() => AnyRequest.Sample(request =>
    {
        var dose = Dosing.For(request);
        var weighed = dose switch
        {
            { Grams: 0 } => request.ScaleStep,
            { Predilution: { } p } => p.Grams,
            { Method: DoseMethod.Can, Can: { } c } => c.GramsPer10Litres,
            _ => dose.Grams,
        };
        var steps = weighed / request.ScaleStep;
        return Math.Abs(steps - Math.Round(steps)) < 1e-6 && steps >= 1 - 1e-9;
    });

    [Fact]
    public void What_does_not_dissolve_never_goes_by_the_can() => AnyRequest.Sample(request =>
    {
        var dose = Dosing.For(request);
        return request.Feed.Dissolves || (dose is { Can: null, Predilution: null } && dose.Method == DoseMethod.TopDress);
    });

    [Fact]
    public void A_can_stays_within_the_liquid_rate_of_the_crop() => AnyRequest.Sample(request =>
    {
        var dose = Dosing.For(request);
        var most = FeederRates.Default.LiquidNitrogen(request.Crop).Range.High;
        var halfStep = dose.Method == DoseMethod.Can ? request.ScaleStep / 2 * request.Feed.Label[Nutrient.N] * 100 : 0;
        return dose.Can is not { } can || can.GramsPer10Litres * request.Feed.Label[Nutrient.N] * 100 <= most + halfStep + 1e-6;
    });

    [Theory]
    [InlineData(PlantStage.Seedling, 0.25)]
    [InlineData(PlantStage.Liner, 0.5)]
    [InlineData(PlantStage.Young, 0.75)]
    [InlineData(PlantStage.Mature, 1)]
    [InlineData(PlantStage.RootBound, 0.6)]
    [InlineData(PlantStage.Dormant, 0)]
    public void Young_and_resting_plants_get_their_fraction(PlantStage stage, double fraction)
    {
        var rules = SomePots.Without("rule-of-thumb");
        var full = Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral(), rules: rules)).WantedGrams;
        Assert.Equal(full * fraction, Dosing.For(SomePots.Ask(SomePots.Pot(10, stage: stage), SomePots.Mineral(), rules: rules)).WantedGrams, 9);
    }

    [Fact]
    public void Seedlings_get_a_dissolving_feed_by_the_can() =>
        Assert.Equal(DoseMethod.Can, Dosing.For(SomePots.Ask(SomePots.Pot(10, stage: PlantStage.Seedling), SomePots.Mineral(dissolves: true))).Method);

    [Fact]
    public void A_grower_may_choose_the_can_for_all()
    {
        var rules = RuleBook.Default.With(new Dictionary<string, string> { ["mineral-way"] = "can" }).Value!;
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral(dissolves: true), rules: rules));
        Assert.Equal(DoseMethod.Can, dose.Method);
        Assert.Equal(2, dose.Can!.LitresPerPot, 9);
        Assert.Equal(dose.Grams, dose.Can.GramsPer10Litres / 10 * dose.Can.LitresPerPot * dose.Can.Waterings, 6);
    }

    [Fact]
    public void Scoops_come_in_halves_by_the_growers_own_weighing()
    {
        var scoop = new Scoop("teaspoon", Volume.FromMillilitres(5), new Dictionary<string, Spread> { ["blend"] = Spread.Exactly(4.4) });
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral()) with { Scoop = scoop });
        Assert.Equal(1, dose.Scoops);
        Assert.Equal(4.4, dose.Grams, 9);
    }

    [Fact]
    public void A_feed_without_nitrogen_is_explained()
    {
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral(0)));
        Assert.Equal(0, dose.Grams);
        Assert.Contains(dose.Notes, static n => n.Field == "feed");
    }

    [Fact]
    public void An_unknown_salt_index_is_said() =>
        Assert.Contains("salt index", Assert.Single(Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral())).Notes).Message, StringComparison.Ordinal);

    [Fact]
    public void Too_little_to_weigh_is_given_from_a_bottle()
    {
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(0.5), SomePots.Mineral(dissolves: true), rules: SomePots.Without("rule-of-thumb")) with { ScaleStep = 1 });
        Assert.NotNull(dose.Predilution);
        Assert.Equal(dose.Grams, dose.Predilution!.Grams * dose.Predilution.MillilitresPerPot / dose.Predilution.WaterMillilitres, 9);
        Assert.InRange(dose.Grams, dose.WantedGrams * 0.94, dose.WantedGrams);
    }

    [Fact]
    public void Too_little_of_a_meal_is_said_and_not_guessed()
    {
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(0.5), SomePots.Mineral()) with { ScaleStep = 5 });
        Assert.Equal(0, dose.Grams);
        Assert.Contains(dose.Notes, static n => n.WayOut.Contains("finer scale", StringComparison.Ordinal));
    }
}
