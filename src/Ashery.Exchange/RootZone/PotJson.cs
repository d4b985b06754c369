using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.RootZone.Calibration;
using Ashery.RootZone.Draws;

namespace Ashery.Exchange.RootZone;

/// <summary>The answer of <c>ashery pot --json</c>.</summary>
/// <remarks>Units: mS/cm at 25 °C, mg N/L, g N a pot, g N a litre of medium, L. Days as YYYY-MM-DD. Bands: 5, 25, 50, 75 and 95 % of draws lie below.</remarks>
public sealed record PotJson
{
    /// <summary>Name of the pot.</summary>
    public required string Name { get; init; }

    public required DateOnly From { get; init; }

    public required int Draws { get; init; }

    public required int Seed { get; init; }

    /// <summary>EC of the saturated extract that the crop bears.</summary>
    public required double EcLimit { get; init; }

    /// <summary>Share of draws above it on at least one day; the model's own odds.</summary>
    public required double OverLimitEver { get; init; }

    /// <summary>Days above it in the mean of draws.</summary>
    public required double DaysOverLimit { get; init; }

    public required IReadOnlyList<PotMonthJson> Months { get; init; }

    public required IReadOnlyList<PotDayJson> Days { get; init; }

    /// <summary>Who makes the variance, before any reading.</summary>
    public required IReadOnlyList<PotSharesJson> Shares { get; init; }

    /// <summary>What a measurement would narrow.</summary>
    public required PotMeasureJson Measure { get; init; }

    /// <summary>Null without readings.</summary>
    public required PotCalibrationJson? Calibration { get; init; }

    /// <summary>Of the run with every figure at its most likely value.</summary>
    public required PotBudget Budget { get; init; }

    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The shape of an outlook.</summary>
    public static PotJson Of(PotOutlook outlook)
    {
        var f = outlook.Forecast;
        return new()
        {
            Name = f.Request.Scenario.Name,
            From = f.Request.From,
            Draws = f.Request.Draws,
            Seed = f.Request.Seed,
            EcLimit = f.EcLimit,
            OverLimitEver = f.OverLimitEver,
            DaysOverLimit = Tidy(f.DaysOverLimit, 2),
            Months = [.. outlook.Months.Select(static m => new PotMonthJson(m.First, m.Days, Band(m.ExtractEc, 2), Band(m.MineralN, 0), Band(m.PH, 2), Band(m.LeachedN, 3), Tidy(m.DaysOver, 2)))],
            Days = [.. Enumerable.Range(0, f.Draws.Days).Select(d => new PotDayJson(
                f.DateOf(d), Band(f[PotFigure.MineralN].Days[d], 1), Band(f[PotFigure.MineralNPerLitre].Days[d], 4), Band(f[PotFigure.PoreEc].Days[d], 3), Band(f[PotFigure.ExtractEc].Days[d], 3),
                Band(f[PotFigure.PH].Days[d], 2), Band(f[PotFigure.WaterShare].Days[d], 3), Band(f[PotFigure.LeachedN].Days[d], 4), f.OverLimit[d]))],
            Shares = [.. outlook.Shares.Select(static t => new PotSharesJson(
                Word(t.Target.ToString()), Tidy(t.Mean, 3), Tidy(t.Deviation, 3), [.. t.Groups.Select(static g => new PotShareJson(Word(g.Group.ToString()), g.Name, Tidy(g.Share.First, 3), Tidy(g.Share.Total, 3)))]))],
            Measure = new(outlook.MeasureOn, [.. outlook.ForEc.Select(Worth)], [.. outlook.ForNitrogen.Select(Worth)]),
            Calibration = outlook.Calibration is { } c ? PotCalibrationJson.Of(c, outlook.Trial) : null,
            Budget = outlook.Budget,
            Problems = ProblemJson.From(f.Notes),
        };
    }

    /// <summary>The JSON text.</summary>
    public static string Write(PotOutlook outlook) => JsonSerializer.Serialize(Of(outlook), PotJsonContext.Shared.PotJson) + "\n";

    internal static double[] Band(DayBand b, int digits) => [Tidy(b.P5, digits), Tidy(b.P25, digits), Tidy(b.P50, digits), Tidy(b.P75, digits), Tidy(b.P95, digits)];

    private static PotWorthJson Worth(Worth w) => new(Word(w.Kind.ToString()), w.Name, Tidy(w.Before, 3), Tidy(w.After, 3), Tidy(w.Known, 3));

    private static double Tidy(double value, int digits) => Math.Round(value, digits) + 0.0;

    private static string Word(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}

/// <summary>A month: bands of each draw's mean over its days, leached nitrogen as what it adds.</summary>
public sealed record PotMonthJson(DateOnly First, int Days, double[] ExtractEc, double[] MineralN, double[] PH, double[] LeachedN, double DaysOver);

/// <summary>An evening: bands over the draws, and the share of draws above the limit.</summary>
public sealed record PotDayJson(
    DateOnly Date, double[] MineralN, double[] MineralNPerLitre, double[] PoreEc, double[] ExtractEc, double[] PH, double[] WaterShare, double[] LeachedN, double OverLimit);

/// <summary>A target with its groups, largest total share first.</summary>
public sealed record PotSharesJson(string Target, double Mean, double Deviation, IReadOnlyList<PotShareJson> Groups);

/// <summary>First-order and total share of a group.</summary>
public sealed record PotShareJson(string Group, string Name, double First, double Total);

/// <summary>What measurements on a day would do to mean EC and mean mineral nitrogen after it.</summary>
public sealed record PotMeasureJson(DateOnly On, IReadOnlyList<PotWorthJson> ForEc, IReadOnlyList<PotWorthJson> ForNitrogen);

/// <summary>One measurement: standard deviation before and after, part of the variance it takes away.</summary>
public sealed record PotWorthJson(string Kind, string Name, double Before, double After, double Known);

/// <summary>Generated descriptions of the records of pots.</summary>
[JsonSerializable(typeof(PotJson))]
public sealed partial class PotJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static PotJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
