using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>General rates of light, medium and heavy feeders: the yardstick of a dose, and the stand-in where a crop has no figure of its own.</summary>
public sealed class FeederRates
{
    private static readonly Lazy<FeederRates> Shipped = new(
        static () => new(DataRows.Read("data/crops/feeder-classes.json", ClassRates.Read)));

    // One place for each class of the enum.
    private readonly ClassRates[] rates = new ClassRates[3];

    private FeederRates(List<ClassRates> rows)
    {
        foreach (var row in rows)
        {
            rates[(int)row.Feeder] = row;
        }
    }

    public static FeederRates Default => Shipped.Value;

    /// <summary>g N per litre of medium a season for a class.</summary>
    public SourcedRange SeasonNitrogen(FeederClass feeder) => rates[(int)feeder].Season;

    /// <summary>mg N per litre of constant liquid feed for a class.</summary>
    public SourcedRange LiquidNitrogen(FeederClass feeder) => rates[(int)feeder].Liquid;

    /// <summary>The crop's own season rate, or that of its class.</summary>
    public CropRate SeasonNitrogen(Crop crop) => crop.SeasonNitrogen is { } own ? new(own, FromClass: false) : new(SeasonNitrogen(crop.Feeder), FromClass: true);

    /// <summary>The crop's own liquid rate, or that of its class.</summary>
    public CropRate LiquidNitrogen(Crop crop) => crop.LiquidNitrogen is { } own ? new(own, FromClass: false) : new(LiquidNitrogen(crop.Feeder), FromClass: true);

    private sealed record ClassRates(FeederClass Feeder, SourcedRange Season, SourcedRange Liquid)
    {
        public static ClassRates Read(JsonElement row) =>
            new(CropRow.Feeder(row.Text("feeder")), CropRow.Range(row, "seasonNitrogen")!, CropRow.Range(row, "liquidNitrogen")!);
    }
}

/// <summary>A rate for a crop.</summary>
/// <param name="Range">Low and high with source.</param>
/// <param name="FromClass">True when the crop has no figure and its feeder class stands in: say so where it is shown.</param>
public sealed record CropRate(SourcedRange Range, bool FromClass);
