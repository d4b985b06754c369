using Ashery.RootZone.Calibration;

namespace Ashery.Exchange.RootZone;

/// <summary>What the readings did.</summary>
public sealed record PotCalibrationJson
{
    /// <summary>Name and publication.</summary>
    public required string Method { get; init; }

    /// <summary>Readings taken in, with the forecast before and after.</summary>
    public required IReadOnlyList<PotReadingJson> Taken { get; init; }

    /// <summary>The last readings, foretold from those before them; empty with fewer than four days of readings.</summary>
    public required IReadOnlyList<PotReadingJson> Held { get; init; }

    /// <summary>Figures that moved, most first; change of the mean in standard deviations.</summary>
    public required IReadOnlyList<PotShiftJson> Shifts { get; init; }

    internal static PotCalibrationJson Of(CalibrationReport c, CalibrationReport? trial) => new()
    {
        Method = CalibrationReport.Method,
        Taken = [.. c.Taken.Select(Reading)],
        Held = [.. (trial?.Held ?? []).Select(Reading)],
        Shifts = [.. c.Shifts.Take(10).Select(static s => new PotShiftJson(s.Figure.Id, s.Figure.Name, Math.Round(s.Before.P50, 6), Math.Round(s.After.P50, 6), Math.Round(s.Moved, 2)))],
    };

    private static PotReadingJson Reading(ReadingFit f) => new(
        f.Reading.Date,
        f.Reading.Kind switch { ReadingKind.LeachateEc => "leachateEc", ReadingKind.LeachatePh => "leachatePh", _ => "kgBelowFull" },
        f.Reading.Value, PotJson.Band(f.Before, 3), PotJson.Band(f.After, 3));
}

/// <summary>A reading and the bands of the forecast before and after.</summary>
public sealed record PotReadingJson(DateOnly Date, string Kind, double Value, double[] Before, double[] After);

/// <summary>A figure and its median before and after.</summary>
public sealed record PotShiftJson(string Id, string Name, double Before, double After, double Moved);
