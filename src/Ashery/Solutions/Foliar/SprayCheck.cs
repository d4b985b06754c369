using Ashery.Cautions;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Foliar;

/// <summary>Judges a leaf spray against published strengths, by salt, by crop and as a whole.</summary>
public static class SprayCheck
{
    /// <summary>Strongest that is taken for a spray and not a slip, g of one material a litre.</summary>
    public const double MostGrams = 200;

    public static Result<SprayReport> Judge(SprayRequest request)
    {
        var wrong = Refuse(request);
        if (wrong.Count > 0)
        {
            return Result.Fail<SprayReport>(wrong);
        }

        var can = CanMaker.Make(new() { Water = request.Water, WaterName = request.WaterName, Additions = request.Additions, Celsius = request.Celsius });
        if (!can.Ok)
        {
            return Result.Fail<SprayReport>(can.Problems);
        }

        IReadOnlyList<SprayFinding> findings = [.. SpraySalts.Judge(request), .. SprayWhole.Judge(request, can.Value)];
        return Result.Of(new SprayReport
        {
            Request = request,
            Can = can.Value,
            Findings = findings,
            Volume = Volume(request),
            Gates = Gates(request),
            Cautions = Cautions(request),
            Weaken = Weaken(findings),
        });
    }

    private static List<Problem> Refuse(SprayRequest request)
    {
        var wrong = new List<Problem>();
        if (request.Additions.Count == 0)
        {
            wrong.Add(new("add", "Nothing is in the spray.", "Name a material with its grams in a litre, as in epsom-salt=2."));
        }

        foreach (var (material, grams) in request.Additions)
        {
            if (!(grams > 0 && grams <= MostGrams))
            {
                wrong.Add(new($"add {material.Id}", FormattableString.Invariant($"{grams} g/L is not the strength of a spray: it is above 0 and at most {MostGrams:0} g a litre."), "Give grams in a litre of the spray, as in epsom-salt=2."));
            }
        }

        Within(request.Celsius, "celsius", Speciation.Coldest, Speciation.Warmest, "°C", "the temperature of the spray, as in 20");
        Within(request.PotLitres, "pot", 0.05, 1000, "L", "the litres of the pot, as in 3");
        Within(request.PlantWidthCm, "width", 1, 500, "cm", "the width of one plant, as in 30");
        Within(request.Pots, "pots", 1, 100_000, "pots", "how many pots, as in 12");
        Within(request.BiuretPercent, "biuret", 0, 10, "%", "the biuret of the urea, as in 0.3");
        Within(request.AirCelsius, "air", -30, 60, "°C", "the temperature of the air, as in 18");
        return wrong;

        void Within(double? value, string field, double least, double most, string unit, string what)
        {
            if (value is { } v && !(v >= least && v <= most))
            {
                wrong.Add(new(field, FormattableString.Invariant($"{v:0.###} {unit} is outside {least} to {most} {unit}."), $"Give {what}."));
            }
        }
    }

    private static SprayVolume? Volume(SprayRequest request)
    {
        if (request.PlantWidthCm is { } width)
        {
            var load = SprayLoad.Of("run-off");
            var plant = Math.PI * width * width / 4 / 1e4 * load.Value * 1000;
            return new(plant, plant * request.Pots / 1000, FormattableString.Invariant($"{load.Value} L a square metre over a plant {width:0.#} cm wide"));
        }

        if (request.PotLitres is { } litres)
        {
            var each = request.Rules["foliar-magnesium"]["millilitresPerLitreOfPot"];
            var pot = Math.Min(1000, each * litres);
            return new(pot, pot * request.Pots / 1000, FormattableString.Invariant($"{each:0.#} mL a litre of pot, our estimate"));
        }

        return null;
    }

    private static List<SprayGate> Gates(SprayRequest request)
    {
        var gates = new List<SprayGate>();
        Add("heat-spray", request.AirCelsius is { } air ? air > request.Rules["heat-spray"]["celsius"] : null);
        Add("cold", request.AirCelsius is { } cold && request.Crop?.BaseCelsius is { } least ? cold < least + request.Rules["cold"]["margin"] : null);
        foreach (var id in (ReadOnlySpan<string>)["dry-medium", "wilted", "heavy-rain", "early-morning", "one-spray-test"])
        {
            Add(id, null);
        }

        return gates;

        void Add(string id, bool? holds)
        {
            if (request.Rules[id] is { IsOn: true } rule)
            {
                gates.Add(new(id, rule.Statement, holds));
            }
        }
    }

    private static List<string> Cautions(SprayRequest request)
    {
        var ids = new List<string>(CautionIndex.Default.CautionsFor(
            request.Additions.Select(static a => a.Material.Material).OfType<Material>(), CautionUse.Dissolving, CautionUse.Spraying));

        // Said of roots and top-dressing: here the leaf is the place it goes to.
        ids.Remove("leaf-burn");
        return ids;
    }

    private static double Weaken(IReadOnlyList<SprayFinding> findings)
    {
        var part = 1.0;
        foreach (var finding in findings)
        {
            if (finding is { Level: SprayLevel.Over, Limit: { } limit, Unit: "g/L" or "mS/cm" })
            {
                part = Math.Min(part, limit / finding.Value);
            }
        }

        return part;
    }
}
