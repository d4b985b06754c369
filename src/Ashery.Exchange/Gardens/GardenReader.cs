using System.Globalization;
using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;

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
        var place = ReadPlace(dto.Place);
        var shelf = All(dto.Shelf, "shelf", ReadBag);
        var scoops = All(dto.Scoops, "scoops", ReadScoop);
        var pots = All(dto.Pots, "pots", ReadPot);
        var feeds = All(dto.Feeds, "feeds", (f, path) => new FeedReader(fields, shelf).Read(f, path));
        Distinct(shelf, static b => b.Id, "shelf");
        Distinct(scoops, static s => s.Name, "scoops");
        Distinct(pots, static p => p.Id, "pots");
        Distinct(feeds, static f => f.Id, "feeds");
        var settings = ReadSettings(dto.Settings ?? new(), scoops);
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
                RuleChanges = dto.RuleChanges ?? new Dictionary<string, string>(),
                Settings = settings,
            },
            fields.Problems);
    }

    /// <summary>Bags alone, as a shelf file holds them.</summary>
    public Result<IReadOnlyList<Bag>> ReadShelf(IReadOnlyList<BagDto> bags)
    {
        var shelf = All(bags, "shelf", ReadBag);
        Distinct(shelf, static b => b.Id, "shelf");
        return fields.HasErrors ? Result.Fail<IReadOnlyList<Bag>>(fields.Problems) : Result.Of<IReadOnlyList<Bag>>(shelf, fields.Problems);
    }

    private List<T> All<TDto, T>(IReadOnlyList<TDto>? items, string path, Func<TDto, string, T?> read)
        where T : class
    {
        var all = new List<T>();
        for (var i = 0; i < (items?.Count ?? 0); i++)
        {
            var at = FormattableString.Invariant($"{path}[{i}]");
            if (items![i] is null)
            {
                fields.Missing(at, "Take out the null.");
            }
            else if (read(items[i], at) is { } item)
            {
                all.Add(item);
            }
        }

        return all;
    }

    private void Distinct<T>(List<T> items, Func<T, string> key, string path)
    {
        foreach (var twice in items.GroupBy(key, StringComparer.OrdinalIgnoreCase).Where(static g => g.Count() > 1))
        {
            fields.Add(new(path, $"\"{twice.Key}\" is there {twice.Count().ToString(CultureInfo.InvariantCulture)} times.", "Give each its own id."));
        }
    }

    private Place ReadPlace(PlaceDto? dto)
    {
        if (dto is null)
        {
            fields.Missing("place", "Give name and latitude, such as { \"name\": \"Terrace\", \"latitude\": 41.2 }.");
            dto = new() { Name = "?", Latitude = 0 };
        }

        var normals = dto.Normals is { } months
            ? All(months, "place.normals", ReadMonth)
            : null;
        if (normals is not null && normals.Count != 12 && !fields.HasErrors)
        {
            fields.Add(new("place.normals", FormattableString.Invariant($"There are {normals.Count} months."), "Give twelve, January first, or leave them out."));
        }

        return new Place
        {
            Name = fields.Text(dto.Name, "place.name", 120),
            Latitude = fields.Number(dto.Latitude, "place.latitude", -90, 90, "degrees"),
            Normals = normals,
            Seasons = All(dto.Seasons, "place.seasons", ReadSeason),
        };
    }

    private MonthlyNormal ReadMonth(MonthDto m, string path)
    {
        var max = fields.Number(m.MeanMax, path + ".meanMax", -60, 60, "°C");
        var min = fields.Number(m.MeanMin, path + ".meanMin", -60, 60, "°C");
        if (min > max)
        {
            fields.Add(new(path, "The mean minimum is above the mean maximum.", "Check whether the two were swapped."));
        }

        return new(max, min, fields.Number(m.Rain, path + ".rain", 0, 3000, "mm"));
    }

    private Season ReadSeason(SeasonDto s, string path) =>
        new(fields.Word<SeasonKind>(s.Kind, path + ".kind"), ReadDay(s.From, path + ".from"), ReadDay(s.To, path + ".to"));

    private MonthDay ReadDay(string? text, string path)
    {
        // 2024 was a leap year, so that 02-29 is a day.
        if (text is { Length: 5 } && DateOnly.TryParseExact("2024-" + text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var d))
        {
            return new(d.Month, d.Day);
        }

        fields.Add(new(path, text is null ? "This is missing." : $"\"{text}\" is not a day of the year.", "Write month and day as 03-15."));
        return new(1, 1);
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

    private Pot ReadPot(PotDto dto, string path)
    {
        var cropId = fields.Text(dto.Crop, path + ".crop", 80);
        if (dto.Crop is not null && CropCatalogue.Default.Find(cropId) is null)
        {
            var near = CropCatalogue.Default.Suggest(cropId);
            fields.Add(new(path + ".crop", $"There is no crop \"{cropId}\" in the catalogue.", near.Count > 0 ? "Did you mean " + string.Join(" or ", near) + "?" : "List crops with `ashery crops`."));
        }

        var id = fields.Text(dto.Id, path + ".id", 80);
        var size = dto.Volume is null && (dto.Diameter is not null || dto.Height is not null)
            ? new PotSize(fields.Number(dto.Diameter, path + ".diameter", 3, 200, "cm"), fields.Number(dto.Height, path + ".height", 3, 200, "cm"), dto.BottomDiameter)
            : null;
        return new Pot
        {
            Id = id,
            Name = dto.Name is null ? id : fields.Text(dto.Name, path + ".name", 120),
            CropId = cropId,
            Volume = ReadVolume(dto, size, path),
            Size = size,
            Medium = fields.Word<MediumKind>(dto.Medium, path + ".medium"),
            Stage = fields.Word<PlantStage>(dto.Stage, path + ".stage", PlantStage.Mature),
            Planted = fields.Date(dto.Planted, path + ".planted"),
            LastRepotted = fields.Date(dto.LastRepotted, path + ".lastRepotted"),
            Count = (int)(fields.Optional(dto.Count, path + ".count", 1, 10000, "pots") ?? 1),
            Place = dto.Place is null ? null : fields.Text(dto.Place, path + ".place", 80),
            NeedsTraceElements = dto.NeedsTraceElements,
            LowPhosphorus = dto.LowPhosphorus,
        };
    }

    private Volume ReadVolume(PotDto dto, PotSize? size, string path)
    {
        if (dto.Volume is null && size is null)
        {
            fields.Missing(path + ".volume", "Give the litres of medium, or diameter and height in cm.");
            return new(1);
        }

        var before = fields.Problems.Count;
        var volume = size is null ? PotVolume.Check(new(dto.Volume!.Value), path) : PotVolume.From(size, path);
        if (!volume.Ok && before == fields.Problems.Count)
        {
            fields.AddRange(volume.Problems);
        }

        return volume.Ok ? volume.Value : new(1);
    }

    private GardenSettings ReadSettings(SettingsDto dto, List<Scoop> scoops)
    {
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
        };
    }
}
