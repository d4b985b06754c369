namespace Ashery.Compatibility;

/// <summary>Storage is a moisture class with its reason, not an invented number of months.</summary>
/// <param name="Class">How it keeps.</param>
/// <param name="Reason">Why.</param>
/// <param name="CriticalRelativeHumidity">Percent at 30 °C above which the mix takes up water; null when unknown.</param>
/// <param name="Source">Where the figure is from.</param>
public sealed record Storage(StorageClass Class, string Reason, double? CriticalRelativeHumidity, string Source);

public enum StorageClass
{
    /// <summary>Keeps in a closed bag in an ordinary dry room.</summary>
    KeepsDry,

    /// <summary>Only airtight: takes up water from ordinary room air.</summary>
    Airtight,

    /// <summary>Mix on the day and use it up.</summary>
    OnTheDay,

    /// <summary>Never mix.</summary>
    Never,

    /// <summary>Nothing known of a part.</summary>
    Unknown,
}
