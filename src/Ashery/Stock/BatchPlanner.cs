using Ashery.Compatibility;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Recipes;

namespace Ashery.Stock;

/// <summary>Works out what to weigh for so many grams of a feed, out of the bags that expire first.</summary>
public static class BatchPlanner
{
    /// <summary>Heaviest batch taken, g.</summary>
    public const double MostGrams = 100_000;

    /// <summary>The proposal, or what stands in its way.</summary>
    /// <param name="garden">The garden.</param>
    /// <param name="ledger">Its book.</param>
    /// <param name="feedId">Feed to mix.</param>
    /// <param name="grams">How much.</param>
    /// <param name="day">The day it is made.</param>
    public static Result<BatchProposal> For(Garden garden, StockLedger ledger, string feedId, double grams, DateOnly day)
    {
        if (garden.Feeds.FirstOrDefault(f => f.Id == feedId) is not { } feed)
        {
            return Result.Fail<BatchProposal>(
                "feed", $"'{NumberReader.Shown(feedId)}' is not a feed of this garden.",
                garden.Feeds.Count == 0 ? "Keep a recipe as a feed first." : $"Its feeds are {string.Join(", ", garden.Feeds.Select(static f => f.Id))}.");
        }

        if (!(grams > 0 && grams <= MostGrams))
        {
            return Result.Fail<BatchProposal>("grams", FormattableString.Invariant($"A batch weighs more than 0 and at most {MostGrams:0} g."), "Write it in grams, as in 500.");
        }

        List<ProposedWeighing> weighings = [];
        List<Problem> notes = [];
        foreach (var (materialId, share) in feed.Parts.OrderByDescending(static p => p.Value).ThenBy(static p => p.Key, StringComparer.Ordinal))
        {
            Part(garden, ledger, materialId, share * grams, day, weighings, notes);
        }

        var known = weighings.Where(w => BatchMaterials.Find(garden, w.BagId, w.MaterialId) is not null).ToList();
        var recipe = RecipeByParts.Weighed(BatchMaterials.Offers(garden, known.Select(static w => (w.BagId, w.MaterialId, w.Grams))), use: BlendUse.DryStored);
        if (!recipe.Ok || known.Count < weighings.Count)
        {
            return Result.Fail<BatchProposal>("feed", "A part of this feed is neither on the shelf nor in the catalogue.", "Add the bag to the shelf, or make the feed anew.");
        }

        return Result.Of(new BatchProposal
        {
            Feed = feed,
            Grams = grams,
            Day = day,
            Weighings = weighings,
            Recipe = recipe.Value,
            Stops = [.. recipe.Value.Pairs.Where(static p => p.DryToday.Verdict == Verdict.Stop).OrderByDescending(static p => p.DryToday.IsHardStop)],
            Lot = LotNumber.Next(day, ledger.Batches.Batches),
            UseBy = UseBy.Of(day, recipe.Value.Storage, weighings.Select(static w => w.Bag).OfType<StockBag>()),
            Notes = notes,
        });
    }

    private static void Part(Garden garden, StockLedger ledger, string materialId, double wanted, DateOnly day, List<ProposedWeighing> weighings, List<Problem> notes)
    {
        var lines = ledger.Lines.Where(l => l.Shelf?.Material.Id == materialId).ToList();
        var name = lines.FirstOrDefault()?.Name ?? MaterialCatalogue.Default.Find(materialId)?.Name ?? materialId;
        var grams = OnScale(wanted, garden.Settings.ScaleStep, name, notes);
        if (lines.Count == 0)
        {
            weighings.Add(new(materialId, materialId, name, grams, null, IsShort: true));
            notes.Add(new(materialId, $"{name} is not on the shelf.", "Add the bag, or the book cannot say where it came from.", Severity.Warning));
            return;
        }

        var rest = grams;
        foreach (var bag in FirstExpired.Order(lines.SelectMany(static l => l.Bags).Where(b => b.Left is null or > FirstExpired.Dust && !(b.BoughtOn > day))))
        {
            var take = Math.Min(rest, bag.Left ?? rest);
            weighings.Add(new(bag.LineId, materialId, lines.Find(l => l.Id == bag.LineId)!.Name, take, bag, IsShort: false));
            rest -= take;
            if (bag.BestBefore < day)
            {
                notes.Add(new(bag.LineId, FormattableString.Invariant($"{name}: this bag was best before {bag.BestBefore:yyyy-MM-dd}."), "Look whether it still runs freely; throw it away if it is caked or smells.", Severity.Warning));
            }

            if (rest <= FirstExpired.Dust)
            {
                return;
            }
        }

        weighings.Add(new(lines[0].Id, materialId, lines[0].Name, rest, null, IsShort: true));
        notes.Add(new(lines[0].Id, FormattableString.Invariant($"{name}: the bags hold {grams - rest:0.##} g of the {grams:0.##} g it takes."), "Buy some, make less, or weigh what is left if the book is wrong.", Severity.Warning));
    }

    private static double OnScale(double wanted, double step, string name, List<Problem> notes)
    {
        if (!(step > 0))
        {
            return wanted;
        }

        var whole = Math.Round(wanted / step, MidpointRounding.AwayFromZero) * step;
        if (whole > 0)
        {
            // A step such as 0.1 is not a binary fraction: what the scale shows has no more decimals than the step.
            return Math.Round(whole, 6);
        }

        notes.Add(new(
            "grams", FormattableString.Invariant($"{wanted:0.####} g of {name} is less than your scale shows ({step:0.###} g)."),
            "Make a larger batch, or weigh it on a finer scale.", Severity.Warning));
        return wanted;
    }
}
