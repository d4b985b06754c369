using Ashery.Materials;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;
using Ashery.Solutions.Waters;

namespace Ashery.Tests.Solutions.Targets;

internal static class TargetKit
{
    public static TargetOffer Offer(string idOrFormula)
    {
        var made = MaterialCatalogue.Default.Find(idOrFormula) is { } material ? MaterialInWater.Of(material) : MaterialInWater.OfFormula(idOrFormula);
        Assert.True(made.Ok, string.Join(" ", made.Problems));
        return new(made.Value);
    }

    public static PhAgent Acid(string id, double strength) => PhAgent.Of(AcidBottle.OfStrength(Ashery.Solutions.Acids.Acid.Find(id)!, strength).Value!);

    public static TargetRequest Request(string wishes, string water, params string[] from)
    {
        var read = TargetReader.ReadAll(wishes);
        Assert.True(read.Ok, string.Join(" ", read.Problems));
        var source = SourceWaters.Default.Find(water)!;
        return new() { Target = new(read.Value), Water = source.ToInput(), WaterName = source.Name, Offers = [.. from.Select(Offer)] };
    }

    public static TargetAnswer Find(TargetRequest request)
    {
        var answer = TargetSearch.Find(request);
        Assert.True(answer.Ok, string.Join(" ", answer.Problems));
        return answer.Value;
    }


}
