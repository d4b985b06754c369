using Ashery.Climate;
using Ashery.Crops;
using Ashery.Exchange.Gardens;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Pots;
using Ashery.Quantities;
using CsCheck;

namespace Ashery.Exchange.Tests.Gardens;

/// <summary>Any garden that can be is written and read back as it was.</summary>
public class RoundTripTests
{
    private static readonly Gen<string> Name = Gen.Char[' ', '\u07ff'].Array[1, 20].Select(static c => new string([.. c.Where(static x => !char.IsControl(x))]) + "x");

    private static readonly Gen<Pot> AnyPot =
        from name in Name
        from litres in Gen.Double[0.02, 900]
        from medium in Gen.Enum<MediumKind>()
        from stage in Gen.Enum<PlantStage>()
        from crop in Gen.Int[0, CropCatalogue.Default.All.Count - 1]
        from day in Gen.Int[0, 40000]
        from count in Gen.Int[1, 300]
        from flag in Gen.Bool
        select new Pot
        {
            Id = name, Name = name, CropId = CropCatalogue.Default.All[crop].Id, Volume = new(litres), Medium = medium, Stage = stage,
            Planted = new DateOnly(1950, 1, 1).AddDays(day), Count = count, NeedsTraceElements = flag ? true : null, LowPhosphorus = flag ? null : false,
        };

    private static readonly Gen<Bag> AnyBag =
        from material in Gen.Int[0, 40]
        from stock in Gen.Double[0, 1e6]
        from known in Gen.Bool
        from part in Gen.Double[0.5, 1]
        let of = MaterialCatalogue.Default.All[material]
        let n = of.Label[Nutrient.N] * 100 * part
        select new Bag(
            of.Id,
            known || n <= 0 ? of : of with { Label = new LabelAnalysis(new Dictionary<Nutrient, double> { [Nutrient.N] = n / 100 }), Nitrogen = of.Nitrogen.WithTotal(n / 100) },
            known ? new Mass(stock) : null,
            known ? null : stock,
            new Mass(500));

    [Fact]
    public void Reading_what_was_written_gives_the_same_garden() =>
        Gen.Select(Name, AnyPot.Array[0, 5], AnyBag.Array[0, 4], Gen.Double[-90, 90]).Sample(
            (name, pots, bags, latitude) =>
            {
                var garden = new Garden
                {
                    Name = name,
                    Place = new Place { Name = name, Latitude = latitude, Seasons = [new(SeasonKind.Hot, new(2, 29), new(3, 4))] },
                    Pots = [.. pots.DistinctBy(static p => p.Id.ToUpperInvariant())],
                    Shelf = [.. bags.DistinctBy(static b => b.Id)],
                };
                var text = GardenFile.Write(garden);
                var read = GardenFile.Read(text);
                Assert.True(read.Ok, string.Join("\n", read.Problems));
                Assert.Equal(garden.Pots, read.Value.Pots);
                Assert.Equal(garden.Place.Seasons, read.Value.Place.Seasons);
                Assert.Equal(latitude, read.Value.Place.Latitude);
                foreach (var (was, now) in garden.Shelf.Zip(read.Value.Shelf))
                {
                    Assert.Equal((was.Id, was.Stock, was.Price, was.Size), (now.Id, now.Stock, now.Price, now.Size));
                    Assert.All(Enum.GetValues<Nutrient>(), n => Assert.Equal(was.Material.Label[n], now.Material.Label[n], 1e-12));
                    Assert.Equal(was.Material.Nitrogen.Urea, now.Material.Nitrogen.Urea, 1e-9);
                }

                Assert.Equal(text, GardenFile.Write(read.Value));
            },
            iter: 300);
}
