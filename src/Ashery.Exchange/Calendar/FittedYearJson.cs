using System.Text.Json.Serialization;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Planning.Fit;

namespace Ashery.Exchange.Calendar;

/// <summary>The answer of <c>ashery year --fit --json</c>. Days, bands and odds are those of the model, on made years the plan was not fitted to.</summary>
public sealed record FittedYearJson
{
    /// <summary>First day counted: the first of the year, or the day it was fitted again.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>False when nothing better than the plan beside it was found.</summary>
    public required bool Gained { get; init; }

    /// <summary>Made years the plans were judged on.</summary>
    public required int Draws { get; init; }

    /// <summary>Seed of the made years.</summary>
    public required int Seed { get; init; }

    /// <summary>Mean pot under the fitted plan.</summary>
    public required FitMeasureJson Fitted { get; init; }

    /// <summary>Mean pot under the plan beside it: the calendar rule of thumb, or after a replan the plan as it was.</summary>
    public required FitMeasureJson Beside { get; init; }

    /// <summary>What became of each round.</summary>
    public required IReadOnlyList<RoundChangeJson> Changes { get; init; }

    /// <summary>Pots in the order of the garden.</summary>
    public required IReadOnlyList<FittedPotJson> Pots { get; init; }

    /// <summary>The fitted plan, as <c>ashery year --json</c> prints it.</summary>
    public required YearJson Plan { get; init; }

    /// <summary>What was assumed and what to mind.</summary>
    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The JSON text of a fitted year.</summary>
    public static string Write(FittedYear year) => AsheryJson.Write(Of(year), FittedYearJsonContext.Shared.FittedYearJson);

    /// <summary>The shape of a fitted year.</summary>
    public static FittedYearJson Of(FittedYear year) => new()
    {
        Since = year.Since,
        Gained = year.Gained,
        Draws = year.Request.Draws,
        Seed = year.Request.Seed,
        Fitted = FitMeasureJson.Of(year.Fitted),
        Beside = FitMeasureJson.Of(year.BesideMeasure),
        Changes = [.. year.Changes.Select(static c => new RoundChangeJson(GardenWriter.Word(c.Kind), c.Before, c.Fitted, c.DoseRatio, c.Words))],
        Pots = [.. year.Pots.Select(p => FittedPotJson.Of(p, year.Plan.From))],
        Plan = YearJson.Of(year.Plan),
        Problems = ProblemJson.From(year.Problems),
    };
}

/// <summary>A year of a pot, or of the mean pot.</summary>
/// <param name="LostDays">Days of usual growth lost, against the same plant with all it wants to eat.</param>
/// <param name="HungryDays">Growing days with less nitrogen in the plant than nine tenths of what it wants.</param>
/// <param name="StrongDays">Days with more nitrogen in the pore water than the top of the crop's liquid range.</param>
/// <param name="SaltDays">Days with a saturated extract above the crop's limit.</param>
/// <param name="LeachedNitrogen">g N a litre of medium washed out.</param>
/// <param name="GivenNitrogen">g N a litre of medium given.</param>
/// <param name="Rounds">Days on which the garden is fed; 0 for one pot.</param>
/// <param name="Score">All of it in days; smaller is better.</param>
public sealed record FitMeasureJson(double LostDays, double HungryDays, double StrongDays, double SaltDays, double LeachedNitrogen, double GivenNitrogen, int Rounds, double Score)
{
    internal static FitMeasureJson Of(FitMeasure m) => new(
        Round(m.LostDays), Round(m.HungryDays), Round(m.StrongDays), Round(m.SaltDays), Math.Round(m.LeachedN, 4), Math.Round(m.GivenN, 4), m.Rounds, Round(m.Score));

    private static double Round(double days) => Math.Round(days, 2);
}

/// <summary>What became of a round.</summary>
/// <param name="Kind">Kind of feed.</param>
/// <param name="Before">Day in the plan beside it; null when it was added.</param>
/// <param name="Fitted">Day in the fitted plan; null when it was left out.</param>
/// <param name="DoseRatio">Nitrogen over that of the plan beside it; null when it was added.</param>
/// <param name="Words">What and why.</param>
public sealed record RoundChangeJson(string Kind, DateOnly? Before, DateOnly? Fitted, double? DoseRatio, string Words);

/// <summary>A pot of a fitted year.</summary>
/// <param name="Pot">Which pot.</param>
/// <param name="MostEc">EC limit of the saturated extract, mS/cm.</param>
/// <param name="MostNitrogen">Top of the crop's liquid range, mg N/L.</param>
/// <param name="WorstOdds">Largest chance on any day that the EC limit is passed, in the model.</param>
/// <param name="WorstOddsBeside">The same under the plan beside it.</param>
/// <param name="Fitted">Under the fitted plan.</param>
/// <param name="Beside">Under the plan beside it.</param>
/// <param name="Weeks">Every seventh evening.</param>
/// <param name="Flush">A flush that helps; null when none does.</param>
/// <param name="Assumed">What the garden does not tell and was taken.</param>
public sealed record FittedPotJson(
    string Pot,
    double MostEc,
    double MostNitrogen,
    double WorstOdds,
    double WorstOddsBeside,
    FitMeasureJson Fitted,
    FitMeasureJson Beside,
    IReadOnlyList<RootDayJson> Weeks,
    FlushJson? Flush,
    IReadOnlyList<string> Assumed)
{
    private const int Week = 7;

    internal static FittedPotJson Of(FittedPot p, DateOnly from) => new(
        p.Fitted.PotId,
        p.Fitted.Limits.MostEc,
        p.Fitted.Limits.MostNitrogen,
        p.Fitted.WorstOdds,
        p.Beside.WorstOdds,
        FitMeasureJson.Of(p.Fitted.Measure),
        FitMeasureJson.Of(p.Beside.Measure),
        [.. p.Fitted.Days.Select((d, i) => (d, i)).Where(static x => x.i % Week == 0).Select(x => RootDayJson.Of(from.AddDays(x.i), x.d))],
        p.Flush is { } f ? new(f.Date, f.Litres, Math.Round(f.SaltDaysBefore, 2), Math.Round(f.SaltDaysAfter, 2), Math.Round(f.LeachedMore, 4), f.Words) : null,
        p.Assumed);
}

/// <summary>An evening in the root zone: low, median and high of nine made years in ten.</summary>
/// <param name="Date">The day.</param>
/// <param name="Ec">Saturated extract, mS/cm.</param>
/// <param name="Nitrogen">Nitrate and ammonium in the pore water, mg N/L.</param>
/// <param name="Status">Nitrogen in the plant over what it wants.</param>
public sealed record RootDayJson(DateOnly Date, BandJson Ec, BandJson Nitrogen, BandJson Status)
{
    internal static RootDayJson Of(DateOnly date, FitDay d) => new(date, BandJson.Of(d.Ec, 3), BandJson.Of(d.Nitrogen, 1), BandJson.Of(d.Status, 3));
}

/// <summary>Low, median and high of nine made years in ten.</summary>
public sealed record BandJson(double Low, double Median, double High)
{
    internal static BandJson Of(FitBand b, int digits) => new(Math.Round(b.Low, digits), Math.Round(b.Median, digits), Math.Round(b.High, digits));
}

/// <summary>A flush, run with and without.</summary>
/// <param name="Date">When.</param>
/// <param name="Litres">L of plain water for one pot.</param>
/// <param name="SaltDaysBefore">Days over the EC limit without.</param>
/// <param name="SaltDaysAfter">With.</param>
/// <param name="LeachedNitrogen">g N a litre of medium washed out besides.</param>
/// <param name="Words">The advice.</param>
public sealed record FlushJson(DateOnly Date, double Litres, double SaltDaysBefore, double SaltDaysAfter, double LeachedNitrogen, string Words);

/// <summary>Generated descriptions of the records of <c>year --fit</c>.</summary>
[JsonSerializable(typeof(FittedYearJson))]
public sealed partial class FittedYearJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static FittedYearJsonContext Shared { get; } = new(new System.Text.Json.JsonSerializerOptions(AsheryJson.Options));
}
