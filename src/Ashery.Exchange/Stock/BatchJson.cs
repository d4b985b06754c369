using Ashery.Cautions;
using Ashery.Compatibility;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Json;
using Ashery.Exchange.Mix;
using Ashery.Journal;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Stock;

namespace Ashery.Exchange.Stock;

/// <summary>The answer of <c>ashery batch FEED --json</c>: what to weigh, or what was weighed and what became of it.</summary>
public sealed record BatchJson
{
    /// <summary>Key of the feed.</summary>
    public required string Feed { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The day it is made.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Its lot number.</summary>
    public required string Lot { get; init; }

    /// <summary>Key of its entry; null when it was not written into the journal.</summary>
    public Guid? Id { get; init; }

    /// <summary>g asked for, or weighed.</summary>
    public required double Grams { get; init; }

    /// <summary>What to take care of, before anything else.</summary>
    public required IReadOnlyList<CautionJson> Cautions { get; init; }

    /// <summary>Pairs that may not be mixed dry, with the reason.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>What to weigh or what was weighed, bag by bag.</summary>
    public required IReadOnlyList<WeighingJson> Weighings { get; init; }

    /// <summary>Last day it should be used; null when nothing gives one.</summary>
    public required DateOnly? UseBy { get; init; }

    /// <summary>Why that day.</summary>
    public required string UseByWhy { get; init; }

    /// <summary>Percent by weight as a label prints them: N, P2O5, K2O always, others where present.</summary>
    public required IReadOnlyDictionary<string, double> Grade { get; init; }

    /// <summary>Weighed against wanted; empty before anything was weighed.</summary>
    public required IReadOnlyList<PartDifferenceJson> Parts { get; init; }

    /// <summary>Made against wanted, percent by weight; empty before anything was weighed.</summary>
    public required IReadOnlyList<NutrientDifferenceJson> Nutrients { get; init; }

    /// <summary>The batch judged as an analysis of a bag with the feed's label; empty before anything was weighed.</summary>
    public required IReadOnlyList<ToleranceJson> Tolerances { get; init; }

    /// <summary>What is short, past its date or too small for the scale.</summary>
    public required IReadOnlyList<ProblemJson> Notes { get; init; }

    /// <summary>The JSON text.</summary>
    public static string Write(BatchJson value) => AsheryJson.Write(value, StockJsonContext.Shared.BatchJson);

    /// <summary>The shape of a proposal.</summary>
    public static BatchJson Of(BatchProposal p) => new()
    {
        Feed = p.Feed.Id,
        Name = p.Feed.Name,
        Day = p.Day,
        Lot = p.Lot,
        Grams = p.Grams,
        Cautions = Words(p.Recipe.CautionIds),
        Stops = [.. p.Stops.Select(Stop)],
        Weighings = [.. p.Weighings.Select(static w => new WeighingJson(w.BagId, w.MaterialId, w.Name, w.Grams, w.Bought, w.Bag?.Lot, w.Bag?.BestBefore, w.IsShort))],
        UseBy = p.UseBy.Day,
        UseByWhy = p.UseBy.Why,
        Grade = MaterialsOut.Percent(p.Recipe.Grade),
        Parts = [],
        Nutrients = [],
        Tolerances = [],
        Notes = ProblemJson.From(p.Notes),
    };

    /// <summary>The shape of a batch as it was weighed.</summary>
    public static BatchJson Of(BatchMade made, Entry entry, BatchReport report, StockLedger before, UseBy useBy, bool isKept, IReadOnlyList<Problem> notes) => new()
    {
        Feed = made.FeedId,
        Name = report.Feed?.Name ?? made.FeedId,
        Day = entry.Day,
        Lot = made.Lot,
        Id = isKept ? entry.Id : null,
        Grams = made.TotalGrams(),
        Cautions = Words(report.AsMade.CautionIds),
        Stops = [.. report.AsMade.Pairs.Where(static p => p.DryToday.Verdict == Verdict.Stop).Select(Stop)],
        Weighings = [.. made.Weighings.Select(w => Weighed(w, before, report))],
        UseBy = made.UseBy,
        UseByWhy = made.UseBy == useBy.Day ? useBy.Why : "Typed by hand.",
        Grade = MaterialsOut.Percent(report.AsMade.Grade),
        Parts = [.. report.Parts.Select(static p => new PartDifferenceJson(p.MaterialId, p.Name, p.Grams, p.Wanted))],
        Nutrients = [.. report.Nutrients.Select(static n => new NutrientDifferenceJson(LabelBasis.Symbol(n.Nutrient), n.Made * 100, n.Wanted * 100))],
        Tolerances = [.. report.Tolerances.Select(ToleranceJson.Of)],
        Notes = ProblemJson.From([.. notes, .. report.Notes]),
    };

    private static WeighingJson Weighed(Weighing w, StockLedger before, BatchReport report)
    {
        var bag = before.Bag(w.BagId, w.Bought);
        return new(w.BagId, w.MaterialId, report.Parts.FirstOrDefault(p => p.MaterialId == w.MaterialId)?.Name ?? w.MaterialId, w.Grams, w.Bought, bag?.Lot, bag?.BestBefore, false);
    }

    private static IReadOnlyList<CautionJson> Words(IReadOnlyList<string> ids) => [.. ids.Select(static id => new CautionJson(id, CautionIndex.Default.Find(id)?.Words ?? id))];

    private static string Stop(PairVerdict pair) => $"{pair.A} with {pair.B}: {pair.DryToday.Reason}";
}

/// <summary>One thing on the scale.</summary>
/// <param name="Bag">Line of the shelf.</param>
/// <param name="Material">Key of the material.</param>
/// <param name="Name">Its name.</param>
/// <param name="Grams">g.</param>
/// <param name="Bought">Entry by which the bag was bought; null for what stood there before, or when nobody said.</param>
/// <param name="Lot">The maker's lot.</param>
/// <param name="BestBefore">Of that bag.</param>
/// <param name="IsShort">True when no bag holds this part.</param>
public sealed record WeighingJson(string Bag, string Material, string Name, double Grams, Guid? Bought, string? Lot, DateOnly? BestBefore, bool IsShort);

/// <summary>One material of a batch.</summary>
/// <param name="Material">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Grams">g weighed.</param>
/// <param name="Wanted">g the feed asks for in a batch of this weight; null when the feed is unknown.</param>
public sealed record PartDifferenceJson(string Material, string Name, double Grams, double? Wanted);

/// <summary>One nutrient of a batch, percent by weight on the label's basis.</summary>
/// <param name="Nutrient">As a label prints it.</param>
/// <param name="Made">As weighed.</param>
/// <param name="Wanted">As the feed was to be.</param>
public sealed record NutrientDifferenceJson(string Nutrient, double Made, double Wanted);

/// <summary>The batch by a law's tolerance on labels.</summary>
/// <param name="Rule">Key of the rule.</param>
/// <param name="Name">Its name.</param>
/// <param name="Passes">True within every limit of it.</param>
/// <param name="Outside">Nutrients that miss their limit.</param>
public sealed record ToleranceJson(string Rule, string Name, bool Passes, IReadOnlyList<string> Outside)
{
    internal static ToleranceJson Of(ToleranceResult t) =>
        new(t.Rule.Id, t.Rule.Name, t.Passes, [.. t.Lines.Where(static l => !l.Passes).Select(static l => LabelBasis.Symbol(l.Nutrient))]);
}
