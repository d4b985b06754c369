using Ashery.Crops;
using Ashery.Pots;
using CsCheck;

namespace Ashery.Tests.Pots;

public class PublishedRateTests
{
    // McBride et al. 2014, HortScience 49:1518 (seen): desert rose grew best with 1.08 g N/L in 1.25 L pots and 0.36 to 0.72 g N/L in 3 L pots.
    [Fact]
    public void Desert_rose_gets_what_the_trial_found_in_both_pot_sizes()
    {
        var crop = SomePots.Crop("desert-rose");
        Assert.Equal(1.08, SeasonRate.For(crop, new(1.25), RuleBook.Default).GramsPerLitre, 6);
        Assert.InRange(SeasonRate.For(crop, new(3), RuleBook.Default).GramsPerLitre, 0.36, 0.72 + 1e-9);
    }

    [Fact]
    public void Smaller_pots_never_get_less_a_litre() =>
        Gen.Select(Gen.Double[0.1, 40], Gen.Double[0.1, 40], SomePots.AnyCrop).Sample((a, b, crop) =>
        {
            var (small, large) = (Math.Min(a, b), Math.Max(a, b));
            var (of, to) = (SeasonRate.For(crop, new(small), RuleBook.Default), SeasonRate.For(crop, new(large), RuleBook.Default));
            return of.GramsPerLitre >= to.GramsPerLitre - 1e-12
                && of.GramsPerLitre <= of.Published.Range.High + 1e-12
                && to.GramsPerLitre >= to.Published.Range.Low - 1e-12;
        });

    // Southern Nursery Association, Best management practices, 3rd ed. (from memory): low 0.3 to 0.6, medium 0.6 to 1.2, high 1.0 to 1.8 g N/L a season.
    [Theory]
    [InlineData(0.2, "below low")]
    [InlineData(0.45, "low")]
    [InlineData(0.9, "medium")]
    [InlineData(1.1, "medium to high")]
    [InlineData(1.5, "high")]
    [InlineData(2.0, "above high")]
    public void Bands_follow_the_published_classes(double gramsPerLitre, string band) => Assert.Equal(band, RateBands.Of(gramsPerLitre));

    // The same guide's arithmetic as the reference prints it: 0.9 g N/L over six months is 0.15 g N/L a month.
    [Fact]
    public void A_season_of_point_nine_is_point_one_five_a_month()
    {
        var rules = SomePots.Without("rule-of-thumb");
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(10), SomePots.Mineral(), rules: rules));
        Assert.Equal(0.9, dose.NitrogenPerLitreSeason, 6);
        Assert.Equal(0.15, dose.NitrogenPerLitreMonth, 6);
        Assert.Equal("medium", dose.RateBand);
    }

    // A printed dose table (seen): 6 g N from ammonium nitrate with 34 % N are 17.65 g, rounded 18 g.
    [Fact]
    public void Six_grams_of_nitrogen_from_34_percent_are_18_grams()
    {
        var rules = SomePots.Without("rule-of-thumb", "shortest-season", "salt-per-feed");
        var dose = Dosing.For(SomePots.Ask(SomePots.Pot(6 / 0.9), SomePots.Mineral(34), feeds: 1, rules: rules) with { ScaleStep = 1 });
        Assert.Equal(17.647, dose.WantedGrams, 3);
        Assert.Equal(18, dose.Grams);
    }

    // Common practice, no source: 5 g a fortnight for a mature potted plant, a quarter of it for a young one. It suits 10 L, not 3 L.
    [Theory]
    [InlineData(10, PlantStage.Mature, 5)]
    [InlineData(10, PlantStage.Young, 1.25)]
    [InlineData(3, PlantStage.Mature, 1.5)]
    [InlineData(30, PlantStage.Mature, 5)]
    [InlineData(10, PlantStage.Dormant, 0)]
    public void Rule_of_thumb_fits_the_pot(double litres, PlantStage stage, double grams) =>
        Assert.Equal(grams, RuleOfThumb.Grams(new(litres), stage, 14, RuleBook.Default), 9);

    [Theory]
    [InlineData(10, 5)]
    [InlineData(3, 1.5)]
    public void A_dose_by_the_rule_of_thumb_is_weighed_so(double litres, double grams) =>
        Assert.Equal(grams, Dosing.For(SomePots.Ask(SomePots.Pot(litres), SomePots.Mineral()) with { Basis = DoseBasis.RuleOfThumb }).Grams, 9);
}
