using Ashery.Problems;

namespace Ashery.RootZone.Draws;

/// <summary>A pot's likely year: bands by day, and how likely its salts pass what the crop bears. All odds are the model's.</summary>
public sealed record PotForecastReport
{
    public required PotForecastRequest Request { get; init; }

    public required DrawSpace Space { get; init; }

    /// <summary>By figure, in the order of <see cref="PotFigure"/>.</summary>
    public required IReadOnlyList<DayBands> Bands { get; init; }

    /// <summary>Limit of the saturated extract, mS/cm.</summary>
    public required double EcLimit { get; init; }

    /// <summary>Share of draws above the limit, by day.</summary>
    public required IReadOnlyList<double> OverLimit { get; init; }

    /// <summary>Share of draws that are above the limit on at least one day.</summary>
    public required double OverLimitEver { get; init; }

    /// <summary>Days above the limit in the mean of all draws.</summary>
    public required double DaysOverLimit { get; init; }

    /// <summary>Every draw's days, kept for what is worked out afterwards.</summary>
    public required DrawTable Draws { get; init; }

    /// <summary>The run with every figure at its most likely value, in the weather of the first draw.</summary>
    public required PotRun Usual { get; init; }

    public IReadOnlyList<Problem> Notes { get; init; } = [];

    /// <summary>Shares of the figures, draw by draw.</summary>
    internal double[] Shares { get; init; } = [];

    /// <summary>Drawn values of a figure; null when it is not drawn.</summary>
    internal double[]? ColumnOf(string id)
    {
        var place = Space.PlaceOf(id);
        if (place < 0 || Shares.Length == 0)
        {
            return null;
        }

        var values = new double[Draws.Draws];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = Space.Figures[place].At(Shares[(i * Space.Count) + place]);
        }

        return values;
    }

    public DayBands this[PotFigure figure] => Bands[(int)figure];

    public DateOnly DateOf(int day) => Request.From.AddDays(day);
}
