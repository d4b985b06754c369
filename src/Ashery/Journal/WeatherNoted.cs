namespace Ashery.Journal;

/// <summary>What the grower saw of the day's weather, at the entry's pots or, with none, in the whole garden.</summary>
/// <param name="What">What.</param>
public sealed record WeatherNoted(WeatherSign What) : EntryFacts;

/// <summary>What of a day's weather changes the feeding.</summary>
public enum WeatherSign
{
    /// <summary>Heavy rain fell or is coming.</summary>
    Rain,

    /// <summary>A day too hot to feed.</summary>
    Heat,

    /// <summary>The medium is dry.</summary>
    DryMedium,
}
