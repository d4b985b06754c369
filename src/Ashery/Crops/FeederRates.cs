using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>General rates of light, medium and heavy feeders: the yardstick of a dose, and the stand-in where a crop has no figure of its own.</summary>
public sealed class FeederRates
{
    private static readonly Lazy<FeederRates> Shipped = new(
        static () => new(EmbeddedData.Read("data/crops/feeder-classes.json", CropJson.Default.FeederClassRowArray)));

    private readonly Dictionary<FeederClass, (SourcedRange Season, SourcedRange Liquid)> rates;

    private FeederRates(FeederClassRow[] rows) =>
        rates = rows.ToDictionary(static row => row.Feeder, static row => (row.SeasonNitrogen.ToRange(), row.LiquidNitrogen.ToRange()));

    public static FeederRates Default => Shipped.Value;

    /// <summary>g N per litre of medium a season for a class.</summary>
    public SourcedRange SeasonNitrogen(FeederClass feeder) => rates[feeder].Season;

    /// <summary>mg N per litre of constant liquid feed for a class.</summary>
    public SourcedRange LiquidNitrogen(FeederClass feeder) => rates[feeder].Liquid;

    /// <summary>The crop's own season rate, or that of its class.</summary>
    public CropRate SeasonNitrogen(Crop crop) => crop.SeasonNitrogen is { } own ? new(own, FromClass: false) : new(SeasonNitrogen(crop.Feeder), FromClass: true);

    /// <summary>The crop's own liquid rate, or that of its class.</summary>
    public CropRate LiquidNitrogen(Crop crop) => crop.LiquidNitrogen is { } own ? new(own, FromClass: false) : new(LiquidNitrogen(crop.Feeder), FromClass: true);
}

/// <summary>A rate for a crop.</summary>
/// <param name="Range">Low and high with source.</param>
/// <param name="FromClass">True when the crop has no figure and its feeder class stands in: say so where it is shown.</param>
public sealed record CropRate(SourcedRange Range, bool FromClass);
