using Ashery.Climate;
using Ashery.Crops;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.RootZone;
using Ashery.RootZone.Draws;
using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.RootZone;

/// <summary>From the names of a pot file to what the model runs on.</summary>
public static class PotBuild
{
    /// <summary>The forecast a file asks for.</summary>
    /// <param name="pot">The file.</param>
    /// <param name="measured">Weather of its weather file, read by the caller; null without one.</param>
    /// <param name="seed">Of weather and draws.</param>
    public static Result<PotForecastRequest> Forecast(PotDocument pot, WeatherSeries? measured, int seed)
    {
        var shape = pot is { HeightCm: { } height, MouthCm: { } mouth } ? new PotShape(pot.Litres, height, mouth) : PotShape.OfLitres(pot.Litres);
        if (Water(pot) is not { Ok: true } water)
        {
            return Result.Fail<PotForecastRequest>(Water(pot).Problems);
        }

        var scenario = new PotScenario
        {
            Name = pot.Name,
            Shape = shape,
            Medium = Medium.Find(pot.Medium)!,
            Plant = Plant(pot.Plant, shape),
            Irrigation = pot.Watering,
            Exposure = pot.Standing,
            Water = water.Value,
            Start = pot.Start,
            Events = [.. pot.Events.SelectMany(e => Events(e, pot))],
            StepsPerDay = pot.StepsPerDay ?? 1,
        };
        var weather = Weather(pot, measured, seed);
        return !weather.Ok ? Result.Fail<PotForecastRequest>(weather.Problems) : Result.Of(new PotForecastRequest
        {
            Scenario = scenario,
            Weather = weather.Value,
            From = pot.From,
            Days = pot.Days ?? 365,
            Seed = seed,
            Space = Space(pot, scenario),
            EcLimit = scenario.Plant.SaltThreshold,
        });
    }

    private static Result<WaterSupply> Water(PotDocument pot)
    {
        if (pot.OwnWater is { } report)
        {
            var read = WaterReports.Read(report);
            return read.Ok ? Result.Of(WaterSupply.Of(report.Name, read.Value.Water.ToInput())) : Result.Fail<WaterSupply>([.. read.Problems.Select(static p => p with { Field = "water." + p.Field })]);
        }

        return Result.Of(pot.Water is { } id && SourceWaters.Default.Find(id) is { } shipped ? WaterSupply.Of(id, shipped.ToInput()) : WaterSupply.Pure);
    }

    private static PlantSpec Plant(PotPlant told, PotShape shape)
    {
        var usual = told.Crop is { } id && CropCatalogue.Default.Find(id) is { } crop
            ? PlantSpec.Of(crop, shape, told.Filled ?? 0.6)
            : new PlantSpec { CanopyMost = PlantSpec.UsualCanopy(shape), CanopyStart = PlantSpec.UsualCanopy(shape) * (told.Filled ?? 0.6) };
        var most = told.CanopyMost ?? Math.Max(usual.CanopyMost, told.Canopy ?? 0);
        return usual with
        {
            CanopyMost = most,
            CanopyStart = told.Canopy ?? (most * (told.Filled ?? 0.6)),
            FlowerLoad = told.FlowerLoad ?? usual.FlowerLoad,
            SaltThreshold = told.EcLimit ?? usual.SaltThreshold,
            SaltSlope = told.SaltSlope ?? usual.SaltSlope,
            Vigour = told.Vigour ?? usual.Vigour,
        };
    }

    private static IEnumerable<PotEvent> Events(PotDocumentEvent e, PotDocument pot)
    {
        switch (e.Kind)
        {
            case PotEventKind.Feed:
                foreach (var (id, grams) in e.Parts)
                {
                    yield return new DryFeedEvent(e.Date, FeedBuilder.Of(PotParts.Material(id)), grams);
                }

                break;
            case PotEventKind.Can:
                var (ions, strength) = (default(Ions), PotParts.Strength(e));
                foreach (var (id, part) in e.Parts)
                {
                    ions = ions.Plus(FeedBuilder.Liquid(FeedBuilder.Of(PotParts.Material(id)), part * strength));
                }

                yield return new LiquidFeedEvent(e.Date, ions, e.Litres);
                break;
            case PotEventKind.Coated:
                // Half of the nitrogen as nitrate, half as ammonium, where a label tells no forms.
                var n = Percent(e, "N");
                var label = LabelAnalysis.Grade(n, Percent(e, "P2O5"), Percent(e, "K2O"));
                yield return new DryFeedEvent(e.Date, FeedBuilder.Coated(label, new(n / 200, n / 200, 0, 0, 0), e.CoatDays), e.Grams);
                break;
            case PotEventKind.Flush:
                yield return new FlushEvent(e.Date, e.Litres);
                break;
            case PotEventKind.Prune:
                yield return new PruneEvent(e.Date, e.Share);
                break;
            default:
                yield return new RepotEvent(e.Date, PotShape.OfLitres(e.Litres), Medium.Find(e.Medium ?? pot.Medium)!, e.Share);
                break;
        }
    }

    private static double Percent(PotDocumentEvent e, string nutrient) => e.Parts.FirstOrDefault(p => p.Key == nutrient).Value;

    // The market's spread of a material's nitrogen, laid around what its row says.
    private static DrawSpace Space(PotDocument pot, PotScenario scenario)
    {
        var space = DrawSpace.Of(scenario);
        foreach (var id in pot.Events.Where(static e => e.Kind == PotEventKind.Feed).SelectMany(static e => e.Parts).Select(static p => p.Key).Distinct())
        {
            var material = PotParts.Material(id);
            if (!PotParts.HasOwnLabel(id) && material.LabelSpread.TryGetValue(Nutrient.N, out var spread) && spread.Typical > 0 && spread.Min < spread.Max)
            {
                space = space.WithAnalysis(scenario, FeedBuilder.Of(material), material.Name, spread.Min / spread.Typical, spread.Max / spread.Typical);
            }
        }

        return space;
    }

    private static Result<DrawnWeather> Weather(PotDocument pot, WeatherSeries? measured, int seed)
    {
        if (pot.Place is not { Normals: not null } place)
        {
            return measured is not null
                ? Result.Of(DrawnWeather.Known(measured))
                : Result.Fail<DrawnWeather>("place.normals", "There is no weather to go by.", "Give twelve monthly normals, January first, or a weatherFile.");
        }

        var made = WeatherGenerator.For(place);
        return !made.Ok ? Result.Fail<DrawnWeather>(made.Problems)
            : Result.Of(measured is null ? DrawnWeather.Of(made.Value, seed) : DrawnWeather.KnownThenMade(measured, made.Value, seed));
    }
}
