using Ashery.Nutrients;
using Ashery.Solutions.Can;
using Ashery.Sources;

namespace Ashery.Solutions.Foliar;

/// <summary>A spray as a whole: salt, pull, pH, chloride, biuret, ammonia, and what would block the nozzle.</summary>
internal static class SprayWhole
{
    // Ordinary urea: about 0.8 to 1 % biuret (a cooperative's page, seen, prints 0.8).
    private const double OrdinaryBiuret = 0.8;

    public static IReadOnlyList<SprayFinding> Judge(SprayRequest request, CanReport can)
    {
        var findings = new List<SprayFinding>();
        Salt(request, can, findings);
        Osmotic(can, findings);
        Acidity(can, findings);
        Chloride(request, can, findings);
        Biuret(request, can, findings);
        Ammonia(can, findings);
        Clear(can, findings);
        return findings;
    }

    private static void Salt(SprayRequest request, CanReport can, List<SprayFinding> findings)
    {
        var rule = request.Rules["spray-conductivity"];
        if (rule.IsOn)
        {
            var most = rule["milliSiemensPerCentimetre"];
            findings.Add(new("EC of the spray", Level(can.State.Ec25, most), can.State.Ec25, most, "mS/cm", "On soft leaves; " + Lower(rule.Differs), rule.SourceId, rule.Provenance));
        }
    }

    private static void Osmotic(CanReport can, List<SprayFinding> findings)
    {
        var load = SprayLoad.Of("osmotic");
        var pull = can.State.OsmoticPotential;
        findings.Add(new(load.Name, Level(-pull, -load.Value), pull, load.Value, load.Unit, load.Words, load.SourceId, load.Provenance));
    }

    private static void Acidity(CanReport can, List<SprayFinding> findings)
    {
        SprayLoad low = SprayLoad.Of("pH-low"), high = SprayLoad.Of("pH-high"), burns = SprayLoad.Of("pH-burns");
        var pH = can.State.PH;
        var (level, load) = pH < burns.Value ? (SprayLevel.Over, burns) : pH < low.Value ? (SprayLevel.Mind, low) : pH > high.Value ? (SprayLevel.Mind, high) : (SprayLevel.Fine, pH < 6.5 ? low : high);
        findings.Add(new("pH of the spray", level, pH, load.Value, string.Empty, load.Words, load.SourceId, load.Provenance));
    }

    private static void Chloride(SprayRequest request, CanReport can, List<SprayFinding> findings)
    {
        var chloride = can.Nutrients[Nutrient.Cl];
        if (chloride <= 0)
        {
            return;
        }

        var load = SprayLoad.Of("chloride");
        var sensitive = request.Crop?.ChlorideSensitive == true;
        var level = chloride > load.Value ? sensitive ? SprayLevel.Over : SprayLevel.Mind : SprayLevel.Fine;
        findings.Add(new(load.Name, level, chloride, load.Value, load.Unit, load.Words + (sensitive ? " This crop is one of them." : string.Empty), load.SourceId, load.Provenance));
    }

    private static void Biuret(SprayRequest request, CanReport can, List<SprayFinding> findings)
    {
        if (can.Nutrients.Urea <= 0)
        {
            return;
        }

        var load = SprayLoad.Of(request.Crop?.Id == "citrus" ? "biuret-citrus" : "biuret");
        findings.Add(request.BiuretPercent is { } percent
            ? new(load.Name, Level(percent, load.Value), percent, load.Value, load.Unit, load.Words, load.SourceId, load.Provenance)
            : new(load.Name, SprayLevel.Mind, OrdinaryBiuret, load.Value, load.Unit, "The bag does not say; ordinary urea has about 0.8 %. Buy foliar grade. " + load.Words, load.SourceId, load.Provenance));
    }

    private static void Ammonia(CanReport can, List<SprayFinding> findings)
    {
        if (can.Nutrients.Ammonium > 0)
        {
            var load = SprayLoad.Of("ammonia");
            findings.Add(new(load.Name, Level(can.State.FreeAmmonia, load.Value), can.State.FreeAmmonia, load.Value, load.Unit, load.Words, load.SourceId, load.Provenance));
        }
    }

    private static void Clear(CanReport can, List<SprayFinding> findings)
    {
        foreach (var mineral in can.Minerals)
        {
            if (mineral is { Mineral.Slow: false, Index: > 0 })
            {
                findings.Add(new(
                    $"{mineral.Mineral.Id} index", SprayLevel.Over, mineral.Index, 0, string.Empty,
                    "It comes out in the sprayer: the nozzle blocks and the leaf is left white. Spray the two apart, or take softer water.", "phreeqc", Provenance.Computed));
            }
        }
    }

    private static SprayLevel Level(double value, double limit) =>
        value > limit * (1 + 1e-9) ? SprayLevel.Over : value > limit * SpraySalts.Near ? SprayLevel.Mind : SprayLevel.Fine;

    private static string Lower(string? text) => string.IsNullOrEmpty(text) ? string.Empty : char.ToLowerInvariant(text[0]) + text[1..];
}
