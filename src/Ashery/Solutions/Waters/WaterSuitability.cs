using Ashery.Crops;

namespace Ashery.Solutions.Waters;

/// <summary>Judges a water by what plants in pots bear.</summary>
public static class WaterSuitability
{
    /// <summary>Figures of a water for a crop, the worst first.</summary>
    public static IReadOnlyList<WaterFinding> Judge(WaterReading reading, Crop crop) => Judge(reading, WaterNeeds.Of(crop));

    /// <summary>Figures of a water for a class of plants, the worst first.</summary>
    public static IReadOnlyList<WaterFinding> Judge(WaterReading reading, WaterSensitivity sensitivity) => Judge(reading, WaterNeeds.Of(sensitivity));

    /// <summary>Figures of a water, the worst first; what was not measured and cannot be told is left out.</summary>
    public static IReadOnlyList<WaterFinding> Judge(WaterReading reading, WaterNeeds needs)
    {
        var findings = new List<WaterFinding>();
        foreach (var kind in WaterFigureKind.All)
        {
            if (ValueOf(reading, kind.Id) is var (value, estimated) && Finding(kind, value, estimated, needs) is { } finding)
            {
                findings.Add(finding);
            }
        }

        // A stable sort: within a level the order of the data.
        return [.. findings.OrderByDescending(static f => f.Level)];
    }

    /// <summary>The worst level of some findings.</summary>
    public static WaterLevel Worst(IReadOnlyList<WaterFinding> findings) => findings.Count == 0 ? WaterLevel.Fine : findings.Max(static f => f.Level);

    private static WaterFinding? Finding(WaterFigureKind kind, WaterRange value, bool estimated, WaterNeeds needs)
    {
        var sensitivity = needs.By(kind.ClassBy).ToString().ToLowerInvariant();
        var watch = WaterLimit.Of(kind.Id, sensitivity, "watch");
        var trouble = WaterLimit.Of(kind.Id, sensitivity, "trouble");
        var level = Level(value.Typical);

        // Little alkalinity is told only where it is so: the strip of alkalinity shows the rest.
        if (kind.Below && level == WaterLevel.Fine)
        {
            return null;
        }

        var worst = Level(kind.Below ? value.Low : value.High);
        return new()
        {
            Kind = kind,
            Value = value,
            Estimated = estimated,
            Level = level,
            Worst = worst > level ? worst : level,
            Watch = watch,
            Trouble = trouble,
            RainShare = kind.Thins && watch is not null && value.Typical > watch.Value ? 1 - (watch.Value / value.Typical) : null,
        };

        WaterLevel Level(double at) => Passes(trouble, at) ? WaterLevel.Trouble : Passes(watch, at) ? WaterLevel.Watch : WaterLevel.Fine;

        bool Passes(WaterLimit? limit, double at) => limit is not null && (kind.Below ? at < limit.Value : at > limit.Value);
    }

    private static (WaterRange Value, bool Estimated)? ValueOf(WaterReading reading, string figure) => figure switch
    {
        "ec" => reading.MeasuredEc is { } measured ? (new(measured, measured, measured), false) : (reading.ComputedEc, !reading.ComputedEc.IsCertain),
        "alkalinity" or "leaf-spots" or "buffer" => (reading.Alkalinity, reading.Water.Estimated.Contains("alkalinity")),
        "hardness" => (reading.Hardness, !reading.Hardness.IsCertain),
        "sar" => reading.Sar is { } sar ? (sar, !sar.IsCertain) : null,
        "residual" => (Certain(reading.ResidualAlkalinity), reading.Water.Estimated.Any(static e => e is "alkalinity" or "calcium")),
        "ph" => reading.Report.PH is { } pH ? (Certain(pH), false) : null,
        "nitrate" => Ion(reading, "nitrate", 14.007 / 62.004),
        _ => Ion(reading, figure, 1),
    };

    private static WaterRange Certain(double value) => new(value, value, value);

    // Traces are judged only when the report lists them; nobody guesses boron.
    private static (WaterRange Value, bool Estimated)? Ion(WaterReading reading, string quantity, double factor)
    {
        var component = WaterDraft.QuantityOf(quantity).Component!;
        foreach (var estimate in reading.Estimates)
        {
            if (estimate.Quantity == component)
            {
                var mg = estimate.MgPerLitre;
                return (new(mg.Typical * factor, mg.Low * factor, mg.High * factor), true);
            }
        }

        var amount = reading.MgPerLitre(component) * factor;
        return amount > 0 || WaterDraft.Majors.Contains(component) ? (Certain(amount), false) : null;
    }
}
