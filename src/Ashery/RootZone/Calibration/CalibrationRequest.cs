using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>Wish to pull a forecast to a pot that was measured.</summary>
public sealed record CalibrationRequest
{
    /// <summary>Fewest draws with which covariances are worth using.</summary>
    public const int FewestDraws = 50;

    public required PotForecastRequest Forecast { get; init; }

    /// <summary>Readings that are taken in.</summary>
    public required IReadOnlyList<PotReading> Readings { get; init; }

    /// <summary>Readings that are kept back to judge by.</summary>
    public IReadOnlyList<PotReading> Held { get; init; } = [];

    /// <summary>How often the readings are taken in.</summary>
    public int Rounds { get; init; } = 4;
}
