using Ashery.Problems;
using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>A forecast before and after it was pulled to the readings.</summary>
public sealed record CalibrationReport
{
    /// <summary>Name and publication of the method.</summary>
    public const string Method = "ensemble smoother with multiple data assimilation (Emerick and Reynolds 2013)";

    public required CalibrationRequest Request { get; init; }

    public required PotForecastReport Before { get; init; }

    public required PotForecastReport After { get; init; }

    /// <summary>Readings taken in, by day.</summary>
    public required IReadOnlyList<ReadingFit> Taken { get; init; }

    /// <summary>Readings kept back, by day.</summary>
    public required IReadOnlyList<ReadingFit> Held { get; init; }

    /// <summary>Figures that moved, most first.</summary>
    public required IReadOnlyList<FigureShift> Shifts { get; init; }

    public IReadOnlyList<Problem> Notes { get; init; } = [];

    /// <summary>Root mean square of median less reading, before and after, of one kind; not a number without such readings.</summary>
    public static (double Before, double After) Error(IReadOnlyList<ReadingFit> fits, ReadingKind kind)
    {
        double before = 0, after = 0;
        var count = 0;
        foreach (var fit in fits)
        {
            if (fit.Reading.Kind == kind)
            {
                before += Math.Pow(fit.Before.P50 - fit.Reading.Value, 2);
                after += Math.Pow(fit.After.P50 - fit.Reading.Value, 2);
                count++;
            }
        }

        return (Math.Sqrt(before / count), Math.Sqrt(after / count));
    }
}

/// <summary>A reading beside what the forecast said of it, the error of the reading not counted.</summary>
public sealed record ReadingFit(PotReading Reading, DayBand Before, DayBand After);

/// <summary>How a figure moved.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Before">5, 50 and 95 % of it before.</param>
/// <param name="After">And after.</param>
/// <param name="Moved">Change of its mean in standard deviations it had before.</param>
public sealed record FigureShift(UncertainFigure Figure, DayBand Before, DayBand After, double Moved);
