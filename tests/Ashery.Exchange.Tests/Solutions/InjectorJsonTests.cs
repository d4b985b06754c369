using Ashery.Exchange.Json;
using Ashery.Exchange.Solutions;
using Ashery.Materials;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Foliar;
using Ashery.Solutions.Tanks;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Tests.Solutions;

/// <summary>What is written field by field is what the generated serialiser writes of the same record.</summary>
public class InjectorJsonTests
{
    [Theory]
    [InlineData("nitric", 0.6, 100.0)]
    [InlineData("citric", 1, null)]
    public void Acid(string id, double strength, double? ratio)
    {
        var report = AcidTreatment.Find(new(Hard.ToInput(), AcidBottle.OfStrength(Ashery.Solutions.Acids.Acid.Find(id)!, strength).Value!, AcidTarget.ToAlkalinity(120)) { InjectorRatio = ratio }).Value!;
        Assert.Equal(AsheryJson.Write(AcidJson.From(report, "hard"), InjectorJsonContext.Shared.AcidJson), AcidJson.Write(report, "hard"));
    }

    [Theory]
    [InlineData(1, "urea")]
    [InlineData(2, "calcium-nitrate-double", "mkp", "iron-edta", "potassium-nitrate")]
    public void Tanks(int tanks, params string[] ids)
    {
        var report = TankSplit.Find(new() { Feed = [.. ids.Select(static id => new TankMaterial(Of(id), 0.4))], Tanks = tanks, Water = Hard.ToInput() }).Value!;
        Assert.Equal(AsheryJson.Write(TanksJson.From(report), InjectorJsonContext.Shared.TanksJson), TanksJson.Write(report));
    }

    [Theory]
    [InlineData("epsom-salt", 3.0, 31.0)]
    [InlineData("dap-technical", null, null)]
    public void Spray(string id, double? pot, double? air)
    {
        var report = SprayCheck.Judge(new() { Additions = [new(Of(id), 2), new(Of("urea"), 1)], PotLitres = pot, AirCelsius = air, Water = Hard.ToInput() }).Value!;
        Assert.Equal(AsheryJson.Write(SprayJson.From(report), InjectorJsonContext.Shared.SprayJson), SprayJson.Write(report));
    }

    private static SourceWater Hard => SourceWaters.Default.Find("hard")!;

    private static MaterialInWater Of(string id) => MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!;
}
