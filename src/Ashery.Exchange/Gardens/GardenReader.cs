using System.Globalization;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Gardens;

/// <summary>From the shape of the file to the garden, with every problem named by its path.</summary>
internal sealed class GardenReader
{
    private readonly FieldReader fields = new();

    public Result<Garden> Read(GardenDto dto)
    {
        if (dto.Format != GardenFile.Format)
        {
            fields.Add(new("format", dto.Format is null ? "This is missing." : $"This file says \"{dto.Format}\".", $"This edition reads \"{GardenFile.Format}\"."));
        }

        var name = fields.Text(dto.Name, "name", 120);
        var place = new PlaceReader(fields).Read(dto.Place);
        var shelf = fields.All(dto.Shelf, "shelf", ReadBag);
        var scoops = fields.All(dto.Scoops, "scoops", ReadScoop);
        var pots = fields.All(dto.Pots, "pots", new PotReader(fields).Read);
        var feeds = fields.All(dto.Feeds, "feeds", (f, path) => new FeedReader(fields, shelf).Read(f, path));
        var waters = fields.All(dto.Waters, "waters", new WaterReader(fields).Read);
        Distinct(shelf, static b => b.Id, "shelf");
        Distinct(scoops, static s => s.Name, "scoops");
        Distinct(pots, static p => p.Id, "pots");
        Distinct(feeds, static f => f.Id, "feeds");
        Distinct(waters, static w => w.Id, "waters");
        var settings = ReadSettings(dto.Settings ?? new(), scoops, waters);
        if (fields.HasErrors)
        {
            return Result.Fail<Garden>(fields.Problems);
        }

        return Result.Of(
            new Garden
            {
                Name = name,
                Place = place,
                IsDemo = dto.Demo,
                Shelf = shelf,
                Scoops = scoops,
                Pots = pots,
                Feeds = feeds,
                Waters = waters,
                RuleChanges = dto.RuleChanges ?? new Dictionary<string, string>(),
                Settings = settings,
            },
            fields.Problems);
    }

    /// <summary>Bags alone, as a shelf file holds them.</summary>
    public Result<IReadOnlyList<Bag>> ReadShelf(IReadOnlyList<BagDto> bags)
    {
        var shelf = fields.All(bags, "shelf", ReadBag);
        Distinct(shelf, static b => b.Id, "shelf");
        return fields.HasErrors ? Result.Fail<IReadOnlyList<Bag>>(fields.Problems) : Result.Of<IReadOnlyList<Bag>>(shelf, fields.Problems);
    }

    private void Distinct<T>(List<T> items, Func<T, string> key, string path)
    {
        foreach (var twice in items.GroupBy(key, StringComparer.OrdinalIgnoreCase).Where(static g => g.Count() > 1))
        {
            fields.Add(new(path, $"\"{twice.Key}\" is there {twice.Count().ToString(CultureInfo.InvariantCulture)} times.", "Give each its own id."));
        }
    }

    private Bag? ReadBag(BagDto dto, string path)
    {
        var material = BagMaterial.Read(dto, path, fields);
        if (material is null)
        {
            return null;
        }

        return new Bag(
            dto.Id is null ? material.Id : fields.Text(dto.Id, path + ".id", 80),
            material,
            fields.Optional(dto.Stock, path + ".stock", 0, 1e8, "g") is { } stock ? new Mass(stock) : null,
            fields.Optional(dto.Price, path + ".price", 0, 1e9, ""),
            fields.Optional(dto.Size, path + ".size", 0.001, 1e8, "g") is { } size ? new Mass(size) : null);
    }

    private Scoop ReadScoop(ScoopDto dto, string path) => new(
        fields.Text(dto.Name, path + ".name", 60),
        Volume.FromMillilitres(fields.Number(dto.Volume, path + ".volume", 0.05, 5000, "mL")),
        (dto.Calibrations ?? new Dictionary<string, SpreadDto>()).ToDictionary(
            static c => c.Key,
            c => fields.Spread(c.Value, $"{path}.calibrations.{c.Key}", 0.001, 20000),
            StringComparer.OrdinalIgnoreCase));

    private GardenSettings ReadSettings(SettingsDto dto, List<Scoop> scoops, List<WaterReport> waters)
    {
        if (dto.Water is not null && !waters.Exists(w => w.Id == dto.Water))
        {
            fields.Add(new("settings.water", $"There is no water \"{dto.Water}\" in this garden.", "Name one of waters, or leave it out for pure water."));
        }

        if (dto.Scoop is not null && !scoops.Exists(s => s.Name == dto.Scoop))
        {
            fields.Add(new("settings.scoop", $"There is no scoop \"{dto.Scoop}\" in this garden.", "Name one of scoops, or leave it out to weigh."));
        }

        return new GardenSettings
        {
            Currency = dto.Currency is null ? "EUR" : fields.Text(dto.Currency, "settings.currency", 8),
            UsUnits = dto.UsUnits ?? false,
            ScaleStep = fields.Optional(dto.ScaleStep, "settings.scaleStep", 0.001, 100, "g") ?? 1,
            Scoop = dto.Scoop,
            Water = dto.Water,
        };
    }
}
