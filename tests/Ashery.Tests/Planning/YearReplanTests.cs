using Ashery.Climate;
using Ashery.Planning.Fit;

namespace Ashery.Tests.Planning;

/// <summary>A year that has begun is fitted again: the past stays, what really happened is carried on.</summary>
public class YearReplanTests
{
    private static readonly FittedYear Before = FitGardens.Fit(FitGardens.Mild());

    private static readonly DateOnly Today = FitGardens.From.AddDays(120);

    [Fact]
    public void What_was_done_stays()
    {
        var again = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today));
        Assert.Equal(Past(Before), Past(again));
        Assert.Equal(Today, again.Since);
        Assert.True(again.Fitted.Score <= again.BesideMeasure.Score * 1.05);
    }

    [Fact]
    public void A_missed_feed_is_gone_from_the_past_and_the_rest_of_the_year_answers()
    {
        var missed = FitGardens.Rounds(Before.Plan).Last(d => d < Today);
        var again = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today) { Missed = [missed] });
        Assert.DoesNotContain(missed, FitGardens.Rounds(again.Plan));
        Assert.Equal(
            Past(Before).Where(d => !d.StartsWith(FormattableString.Invariant($"{missed:yyyy-MM-dd}"), StringComparison.Ordinal)),
            Past(again));

        // Beside it stands the plan as it was: the same rounds to come, the same past without the missed one.
        Assert.Equal(FitGardens.Rounds(Before.Plan).Where(d => d != missed), FitGardens.Rounds(again.Beside));
    }

    [Fact]
    public void A_storm_that_washed_the_pots_out_is_carried_in_the_state()
    {
        var generator = WeatherGenerator.For(FitGardens.Mild().Place).Value!;
        var calm = generator.Series(FitGardens.From, 120, 5);
        var storm = calm with { Days = [.. calm.Days.Select((d, i) => i >= 113 ? d with { RainMm = 90 } : d)] };
        var dry = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today) { Observed = calm });
        var wet = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today) { Observed = storm });
        var day = Today.DayNumber - FitGardens.From.DayNumber - 1;
        Assert.True(wet.Pots[0].Fitted.Days[day].Nitrogen.Median < 0.5 * dry.Pots[0].Fitted.Days[day].Nitrogen.Median);

        // Rain at the pot is uncertain by a factor: walls and eaves.
        Assert.InRange(wet.Pots[0].Fitted.Days[day].RainMm, 70, 110);
    }

    [Fact]
    public void A_storm_and_a_heat_wave_may_be_told_without_an_instrument()
    {
        var stormDay = Today.AddDays(-6);
        var plain = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today));
        var told = FitGardens.Fit(FitGardens.Mild(), replan: new(Before, Today) { Told = [new(stormDay, RainMm: 90), .. ToldDay.Heat(Today.AddDays(-5), Today.AddDays(-1), 38)] });
        var day = Today.DayNumber - FitGardens.From.DayNumber - 1;
        var storm = stormDay.DayNumber - FitGardens.From.DayNumber;
        Assert.InRange(told.Pots[0].Fitted.Days[storm].RainMm, 70, 110);
        Assert.True(told.Pots[0].Fitted.Days[storm].Nitrogen.Median < plain.Pots[0].Fitted.Days[storm].Nitrogen.Median);
        Assert.NotEqual(plain.Pots[0].Fitted.Days[day].Ec.Median, told.Pots[0].Fitted.Days[day].Ec.Median);
        var future = YearFit.Plan(new FitRequest(FitGardens.Mild(), FitGardens.From) { Draws = 40, Replan = new(Before, Today) { Told = [new(Today, RainMm: 5)] } });
        Assert.Equal("told", Assert.Single(future.Problems).Field);
    }

    [Fact]
    public void A_told_heat_dries_as_the_equation_says()
    {
        var generator = WeatherGenerator.For(FitGardens.Mild().Place).Value!;
        var made = generator.Series(Today, 1, 3).Days[0];
        var hot = generator.With(in made, new(Today, MaxCelsius: made.MaxCelsius + 10));
        Assert.Equal(made.MinCelsius + 10, hot.MinCelsius, 1e-9);
        Assert.True(hot.ReferenceEtMm > 1.15 * made.ReferenceEtMm);
        Assert.Equal(made, generator.With(in made, new(Today)));
    }

    [Fact]
    public void A_day_outside_the_year_is_refused()
    {
        var wrong = YearFit.Plan(new FitRequest(FitGardens.Mild(), FitGardens.From) { Draws = 40, Replan = new(Before, FitGardens.From.AddDays(-1)) });
        Assert.Equal("today", Assert.Single(wrong.Problems).Field);
    }

    private static List<string> Past(FittedYear year) => [.. YearFitTests.Doses(year.Plan).Where(static d => string.CompareOrdinal(d, FormattableString.Invariant($"{Today:yyyy-MM-dd}")) < 0)];
}
