using Ashery.Climate;
using Ashery.Gardens;
using Ashery.Records.Rows;

namespace Ashery.Records.Mapping;

/// <summary>A garden as rows and back. Lists keep their order; a dictionary or set has none to keep.</summary>
public static class GardenMapping
{
    /// <summary>The rows of a garden. Key, version and who stay with whoever saves them.</summary>
    public static StateRow ToRows(Garden garden, DateTimeOffset at, string what)
    {
        var row = new StateRow
        {
            SavedAtTicks = at.UtcTicks,
            What = what,
            Name = garden.Name,
            IsDemo = garden.IsDemo,
            PlaceName = garden.Place.Name,
            Latitude = garden.Place.Latitude,
            ElevationMetres = garden.Place.ElevationMetres,
            NearCoast = garden.Place.NearCoast,
            HasNormals = garden.Place.Normals is not null,
            Currency = garden.Settings.Currency,
            UsUnits = garden.Settings.UsUnits,
            ScaleStep = garden.Settings.ScaleStep,
            DefaultScoop = garden.Settings.Scoop,
            DefaultWater = garden.Settings.Water,
        };
        row.Normals.AddRange((garden.Place.Normals ?? []).Select((n, i) => new NormalRow
        {
            Position = i,
            MeanMax = n.MeanMax,
            MeanMin = n.MeanMin,
            RainMm = n.RainMm,
            WetDays = n.WetDays,
            WindMs = n.WindMs,
            Humidity = n.Humidity,
            RadiationMj = n.RadiationMj,
        }));
        row.Seasons.AddRange(garden.Place.Seasons.Select((s, i) => new SeasonRow
        {
            Position = i,
            Kind = s.Kind.ToString(),
            FromMonth = s.From.Month,
            FromDay = s.From.Day,
            ToMonth = s.To.Month,
            ToDay = s.To.Day,
        }));
        row.Bags.AddRange(garden.Shelf.Select(BagMapping.ToRow));
        row.Scoops.AddRange(garden.Scoops.Select(PotMapping.ToRow));
        row.Pots.AddRange(garden.Pots.Select(PotMapping.ToRow));
        row.Feeds.AddRange(garden.Feeds.Select(PotMapping.ToRow));
        row.Waters.AddRange(garden.Waters.Select(WaterMapping.ToRow));
        row.RuleChanges.AddRange(garden.RuleChanges.Select(r => new RuleChangeRow { RuleId = r.Key, Setting = r.Value }));
        return row;
    }

    public static Garden FromRows(StateRow row) => new()
    {
        Name = row.Name,
        IsDemo = row.IsDemo,
        Place = new Place
        {
            Name = row.PlaceName,
            Latitude = row.Latitude,
            ElevationMetres = row.ElevationMetres,
            NearCoast = row.NearCoast,
            Normals = row.HasNormals
                ? [.. row.Normals.OrderBy(n => n.Position).Select(n => new MonthlyNormal(n.MeanMax, n.MeanMin, n.RainMm)
                {
                    WetDays = n.WetDays, WindMs = n.WindMs, Humidity = n.Humidity, RadiationMj = n.RadiationMj,
                })]
                : null,
            Seasons = [.. row.Seasons.OrderBy(s => s.Position).Select(s => new Season(
                Enum.Parse<SeasonKind>(s.Kind), new MonthDay(s.FromMonth, s.FromDay), new MonthDay(s.ToMonth, s.ToDay)))],
        },
        Shelf = [.. row.Bags.OrderBy(b => b.Position).Select(BagMapping.FromRow)],
        Scoops = [.. row.Scoops.OrderBy(s => s.Position).Select(PotMapping.FromRow)],
        Pots = [.. row.Pots.OrderBy(p => p.Position).Select(PotMapping.FromRow)],
        Feeds = [.. row.Feeds.OrderBy(f => f.Position).Select(PotMapping.FromRow)],
        Waters = [.. row.Waters.OrderBy(w => w.Position).Select(WaterMapping.FromRow)],
        RuleChanges = row.RuleChanges.ToDictionary(r => r.RuleId, r => r.Setting),
        Settings = new GardenSettings
        {
            Currency = row.Currency,
            UsUnits = row.UsUnits,
            ScaleStep = row.ScaleStep,
            Scoop = row.DefaultScoop,
            Water = row.DefaultWater,
        },
    };
}
