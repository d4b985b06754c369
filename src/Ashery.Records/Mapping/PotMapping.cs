using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using Ashery.Records.Rows;

namespace Ashery.Records.Mapping;

/// <summary>Pots, scoops and feeds as rows and back.</summary>
internal static class PotMapping
{
    public static PotRow ToRow(Pot pot, int position) => new()
    {
        Position = position,
        PotId = pot.Id,
        Name = pot.Name,
        CropId = pot.CropId,
        Litres = pot.Volume.Litres,
        Medium = pot.Medium.ToString(),
        Stage = pot.Stage.ToString(),
        Planted = pot.Planted,
        LastRepotted = pot.LastRepotted,
        Count = pot.Count,
        Place = pot.Place,
        TopDiameter = pot.Size?.TopDiameter,
        Height = pot.Size?.Height,
        BottomDiameter = pot.Size?.BottomDiameter,
        NeedsTraceElements = pot.NeedsTraceElements,
        LowPhosphorus = pot.LowPhosphorus,
    };

    public static Pot FromRow(PotRow row) => new()
    {
        Id = row.PotId,
        Name = row.Name,
        CropId = row.CropId,
        Volume = new Volume(row.Litres),
        Medium = Enum.Parse<MediumKind>(row.Medium),
        Stage = Enum.Parse<PlantStage>(row.Stage),
        Planted = row.Planted,
        LastRepotted = row.LastRepotted,
        Count = row.Count,
        Place = row.Place,
        Size = row is { TopDiameter: { } top, Height: { } height } ? new PotSize(top, height, row.BottomDiameter) : null,
        NeedsTraceElements = row.NeedsTraceElements,
        LowPhosphorus = row.LowPhosphorus,
    };

    public static ScoopRow ToRow(Scoop scoop, int position)
    {
        var row = new ScoopRow { Position = position, Name = scoop.Name, Litres = scoop.Volume.Litres };
        row.Calibrations.AddRange(scoop.Calibrations.Select(c => new CalibrationRow
        {
            MaterialId = c.Key, Min = c.Value.Min, Typical = c.Value.Typical, Max = c.Value.Max,
        }));
        return row;
    }

    public static Scoop FromRow(ScoopRow row) => new(
        row.Name,
        new Volume(row.Litres),
        row.Calibrations.ToDictionary(c => c.MaterialId, c => new Spread(c.Min, c.Typical, c.Max)));

    public static FeedRow ToRow(Feed feed, int position)
    {
        var row = new FeedRow
        {
            Position = position,
            FeedId = feed.Id,
            Name = feed.Name,
            Kind = feed.Kind.ToString(),
            NitrogenAmmonium = feed.Nitrogen.Ammonium,
            NitrogenNitrate = feed.Nitrogen.Nitrate,
            NitrogenUrea = feed.Nitrogen.Urea,
            NitrogenOrganic = feed.Nitrogen.Organic,
            NitrogenSlow = feed.Nitrogen.SlowSynthetic,
            SaltIndex = feed.SaltIndex,
            LimeEquivalent = feed.LimeEquivalent,
            BulkDensity = feed.BulkDensity,
            Dissolves = feed.Dissolves,
        };
        row.Parts.AddRange(feed.Parts.Select(p => new FeedPartRow { MaterialId = p.Key, Share = p.Value }));
        row.Contents.AddRange(feed.Label.Present.Select(n => new FeedContentRow { Nutrient = n.ToString(), Fraction = feed.Label[n] }));
        return row;
    }

    public static Feed FromRow(FeedRow row) => new()
    {
        Id = row.FeedId,
        Name = row.Name,
        Kind = Enum.Parse<FeedKind>(row.Kind),
        Parts = row.Parts.ToDictionary(p => p.MaterialId, p => p.Share),
        Label = new LabelAnalysis(row.Contents.ToDictionary(c => Enum.Parse<Nutrient>(c.Nutrient), c => c.Fraction)),
        Nitrogen = new NitrogenForms(
            row.NitrogenAmmonium, row.NitrogenNitrate, row.NitrogenUrea, row.NitrogenOrganic, row.NitrogenSlow),
        SaltIndex = row.SaltIndex,
        LimeEquivalent = row.LimeEquivalent,
        BulkDensity = row.BulkDensity,
        Dissolves = row.Dissolves,
    };
}
