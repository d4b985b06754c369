using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>Acidity that the year's feeds leave in a pot, counted from the first day of the plan.</summary>
/// <param name="PotId">Which pot.</param>
/// <param name="Grams">g CaCO3 that would neutralise the year's feeds; positive is acid.</param>
/// <param name="GramsPerLitre">The same a litre of medium.</param>
/// <param name="IsComplete">False when a feed has no figure, so that the debt may be larger or smaller.</param>
/// <param name="Corrections">When and how to correct it.</param>
/// <param name="Words">What to make of it.</param>
public sealed record LimeDebt(string PotId, double Grams, double GramsPerLitre, bool IsComplete, IReadOnlyList<LimeCorrection> Corrections, string Words);

/// <summary>Lime on a day.</summary>
/// <param name="Date">When; never on a day with ammonium, urea or organic feed.</param>
/// <param name="MaterialId">Which liming material.</param>
/// <param name="MaterialName">Its name.</param>
/// <param name="Grams">g for one pot.</param>
/// <param name="Words">How.</param>
public sealed record LimeCorrection(DateOnly Date, string MaterialId, string MaterialName, double Grams, string Words);

/// <summary>Adds up the acidity of feeds by pot (lime equivalents after Pierre 1933, made for field soils) and sets dates to correct it.</summary>
internal static class LimeDebtBook
{
    // What a grower may scratch in without gloves and goggles; hydrated lime, quicklime and ash are not offered.
    private static readonly string[] Limes = ["dolomitic-lime", "calcitic-lime"];

    public static LimeDebt Of(Pot pot, Crop crop, IReadOnlyList<(DateOnly Day, double? Lime, bool Ammoniacal)> feeds, DateOnly to, Garden garden, RuleBook rules)
    {
        var litres = pot.Volume.Litres;
        var complete = feeds.All(static f => f.Lime is not null);
        var total = feeds.Sum(static f => f.Lime ?? 0);
        List<LimeCorrection> corrections = [];
        if (!crop.AcidLoving && rules["lime-debt-correct"].IsOn)
        {
            Correct(pot, feeds, to, garden, rules, corrections);
        }

        return new(pot.Id, total, total / litres, complete, corrections, Words(crop, total / litres, complete, corrections.Count, rules));
    }

    private static void Correct(Pot pot, IReadOnlyList<(DateOnly Day, double? Lime, bool Ammoniacal)> feeds, DateOnly to, Garden garden, RuleBook rules, List<LimeCorrection> corrections)
    {
        var rule = rules["lime-debt-correct"];
        var lime = Choose(garden);
        var neutralises = -(lime?.LimeEquivalent?.Value ?? 0);
        if (lime is null || neutralises <= 0)
        {
            return;
        }

        var debt = 0.0;
        foreach (var (day, grams, _) in feeds)
        {
            debt += grams ?? 0;
            if (debt < rule["gramsPerLitre"] * pot.Volume.Litres || Free(day, feeds, to, (int)rules["lime-apart"]["days"]) is not { } free)
            {
                continue;
            }

            if (corrections.Count > 0 && corrections[^1].Date >= free)
            {
                continue;
            }

            var pays = Math.Min(debt, rule["largestSingleDose"] * pot.Volume.Litres);
            debt -= pays;
            corrections.Add(new(free, lime.Id, lime.Name, pays / neutralises, rules["lime-how"].Statement));
        }
    }

    /// <summary>Dolomite first, since it brings magnesium; from the shelf before the shop.</summary>
    private static Material? Choose(Garden garden)
    {
        foreach (var id in Limes)
        {
            if (garden.Shelf.FirstOrDefault(b => b.Material.Id == id) is { } bag)
            {
                return bag.Material;
            }
        }

        return MaterialCatalogue.Default.Find(Limes[0]);
    }

    /// <summary>The first day after <paramref name="after"/> far enough from every ammoniacal feed, or else the one farthest from them.</summary>
    private static DateOnly? Free(DateOnly after, IReadOnlyList<(DateOnly Day, double? Lime, bool Ammoniacal)> feeds, DateOnly to, int apart)
    {
        DateOnly? best = null;
        var bestDistance = 0;
        for (var day = after.AddDays(1); day <= to && day.DayNumber <= after.DayNumber + 120; day = day.AddDays(1))
        {
            var distance = int.MaxValue;
            foreach (var feed in feeds)
            {
                if (feed.Ammoniacal)
                {
                    distance = Math.Min(distance, Math.Abs(feed.Day.DayNumber - day.DayNumber));
                }
            }

            if (distance >= apart)
            {
                return day;
            }

            if (distance > bestDistance)
            {
                bestDistance = distance;
                best = day;
            }
        }

        return best;
    }

    private static string Words(Crop crop, double perLitre, bool complete, int corrections, RuleBook rules)
    {
        var start = FormattableString.Invariant($"The year's feeds leave {(perLitre < 0 ? "base" : "acid")} worth {Math.Abs(perLitre):0.##} g CaCO3 a litre of medium{(complete ? "" : ", as far as is known")}.");
        if (perLitre < -rules["lime-debt-watch"]["gramsPerLitre"])
        {
            return start + " Watch for pale new leaves; a feed with more ammonium brings the pH down.";
        }

        if (perLitre < rules["lime-debt-watch"]["gramsPerLitre"])
        {
            return start + " Nothing to do.";
        }

        if (crop.AcidLoving)
        {
            return start + FormattableString.Invariant($" {crop.Name} wants an acid medium: test first, and lime only below {(crop.MediumPh is { } ph ? "pH " + ph.Low.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture) : "its range")}.");
        }

        return start + (corrections > 0 ? " " + rules["lime-debt-correct"].Statement : " " + rules["lime-debt-watch"].Statement);
    }
}
