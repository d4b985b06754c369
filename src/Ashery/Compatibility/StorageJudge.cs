using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>
/// How a mix keeps: a moisture class with its reason. The humidity of a mixture lies below that of its parts, so where the mixture
/// itself was not measured the lowest figure of its parts and pairs is only an upper bound, and the words say so.
/// </summary>
public static class StorageJudge
{
    /// <summary>Below this critical humidity (percent) a salt turns wet in any room, and its bag is kept airtight.</summary>
    private const double RunsInAnyRoom = 50;

    /// <summary>Judges a mix of materials by mass fraction; parts of no mass do not count.</summary>
    public static Storage Judge(IReadOnlyList<(Material Material, double Share)> parts, CompatibilityChart chart)
    {
        var present = parts.Where(static p => p.Share > 0).Select(static p => p.Material).DistinctBy(static m => m.Id).ToArray();
        if (present.Length == 0)
        {
            return new(StorageClass.Unknown, "There is nothing in the mix.", null, Citations.NothingFound);
        }

        var pairs = DryPairs(present, chart);
        return Stopped(pairs, Humidity(present, chart)) ?? Moist(present) ?? ByHumidity(present, pairs, chart);
    }

    private static List<DryPair> DryPairs(Material[] present, CompatibilityChart chart)
    {
        var pairs = new List<DryPair>();
        for (var i = 0; i < present.Length; i++)
        {
            for (var j = i + 1; j < present.Length; j++)
            {
                var (today, stored) = chart.JudgeDry(present[i], present[j]);
                pairs.Add(new(present[i].Name, present[j].Name, today, stored));
            }
        }

        return pairs;
    }

    // A pair that may not be mixed at all, or not kept, decides before anything else.
    private static Storage? Stopped(List<DryPair> pairs, double? humidity)
    {
        if (pairs.Find(static p => p.Today.Verdict == Verdict.Stop) is { } never)
        {
            return new(StorageClass.Never, $"{never.A} with {never.B}: {never.Today.Reason}", humidity, never.Today.Source);
        }

        return pairs.Find(static p => p.Stored.Verdict == Verdict.Stop) is { } today
            ? new(StorageClass.OnTheDay, $"{today.A} with {today.B}: {today.Stored.Reason}", humidity, today.Stored.Source)
            : null;
    }

    private static double? Humidity(Material[] present, CompatibilityChart chart)
    {
        var lowest = Lowest(present, chart, out _, out var figure);
        return figure is null ? null : lowest;
    }

    private static Storage? Moist(Material[] present)
    {
        if (present.FirstOrDefault(static m => m.IsLiquid) is { } liquid)
        {
            return present.Length == 1
                ? new(StorageClass.Airtight, $"{liquid.Name} is a liquid: keep it in its own closed and labelled container.", null, Citations.Of(["chemistry"]))
                : new(StorageClass.OnTheDay, $"{liquid.Name} is a liquid: make the mixture when it is used.", null, Citations.Of(["chemistry"]));
        }

        return present.FirstOrDefault(static m => MaterialTraits.Of(m).HasFlag(Traits.Moist)) is { } moist
            ? present.Length == 1
                ? new(StorageClass.OnTheDay, $"{moist.Name} is moist and alive: keep it damp, aired and shaded, and take what the day needs.", null, Citations.Of(["growers-practice"]))
                : new(StorageClass.OnTheDay, $"{moist.Name} is moist: meals ferment and salts dissolve in it. Make the mix on the day.", null, Citations.Of(["growers-practice"]))
            : null;
    }

    private static Storage ByHumidity(Material[] present, List<DryPair> pairs, CompatibilityChart chart)
    {
        var lowest = Lowest(present, chart, out var of, out var figure);
        var exact = present.Length == 1 || (present.Length == 2 && chart.Humidity.Of(present[0], present[1]) is { } pair && ReferenceEquals(pair, figure));
        var bound = figure is null ? null : exact
            ? FormattableString.Invariant($"It takes up water from air above {lowest} % relative humidity ({of}, 30 °C).")
            : FormattableString.Invariant($"It takes up water from air above {lowest} % relative humidity or lower: that is the figure of {of} (30 °C); the whole mix was not measured.");
        var source = figure is null ? Citations.NothingFound : Citations.Of([figure.SourceId]);

        if (present.FirstOrDefault(static m => m.Hazards.Contains(Hazard.Deliquescent)) is { } runs)
        {
            return new(StorageClass.Airtight, Words($"{runs.Name} runs in the air of any room.", bound), figure?.Value, source);
        }

        if (figure is { Value: < MixtureHumidity.DryRoom })
        {
            return new(StorageClass.Airtight, Words(lowest < RunsInAnyRoom ? "It runs in the air of any room." : "A room may be damper than it bears.", bound), lowest, source);
        }

        if (pairs.Find(static p => p.Stored.Verdict == Verdict.Limited) is { } limited)
        {
            return new(StorageClass.Airtight, Words($"{limited.A} with {limited.B}: {limited.Stored.Reason}", bound), figure?.Value, limited.Stored.Source);
        }

        if (pairs.Find(static p => p.Stored.Verdict == Verdict.Unknown) is { } unknown)
        {
            return new(StorageClass.Unknown, Words($"Nothing published says how {unknown.A} and {unknown.B} keep together; keep it closed and use it soon.", bound), figure?.Value, Citations.NothingFound);
        }

        return TakesNoWater(present, figure)
            ? new(StorageClass.KeepsDry, "Its parts do not take up water from the air of a dry room; damp, meals mould.", null, Citations.Of(["chemistry"]))
            : figure is null
                ? new(StorageClass.Unknown, "No humidity figure was found for its parts; keep it closed.", null, Citations.NothingFound)
                : new(StorageClass.KeepsDry, bound!, lowest, source);
    }

    private static bool TakesNoWater(Material[] present, Figure? figure) =>
        figure is null && present.All(static m => m.IsOrganic || m.CompatibilityGroup is "INERT" or "LIME" or "GYP" or "ROCKP" or "SUL" or "TROX");

    private static string Words(string first, string? bound) => bound is null ? first : $"{first} {bound}";

    /// <summary>The lowest humidity figure of any part or any measured pair of parts.</summary>
    private static double Lowest(Material[] present, CompatibilityChart chart, out string of, out Figure? figure)
    {
        var lowest = double.MaxValue;
        of = "";
        figure = null;
        for (var i = 0; i < present.Length; i++)
        {
            for (var j = i; j < present.Length; j++)
            {
                var found = i == j ? present[i].CriticalRelativeHumidity : chart.Humidity.Of(present[i], present[j]);
                if (found is not null && found.Value < lowest)
                {
                    lowest = found.Value;
                    figure = found;
                    of = i == j ? present[i].Name : $"{present[i].Name} with {present[j].Name}";
                }
            }
        }

        return lowest;
    }

    private sealed record DryPair(string A, string B, Judgement Today, Judgement Stored);
}
