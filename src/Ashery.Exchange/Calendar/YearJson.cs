using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Nutrients;
using Ashery.Planning;

namespace Ashery.Exchange.Calendar;

/// <summary>The answer of <c>ashery year --json</c>.</summary>
/// <remarks>
/// Units: <c>grams</c> of a feed are for one pot; <c>nitrogen...</c> in g N a litre of medium; month totals in g over the whole garden on the
/// label's basis (N, P2O5, K2O, other nutrients as the element); costs in the garden's currency, null when unknown. Days as YYYY-MM-DD.
/// </remarks>
public sealed record YearJson
{
    /// <summary>First day of the plan.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day of the plan.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Seasons as dated stretches, both days included; they may overlap.</summary>
    public required IReadOnlyList<SeasonStretchJson> Seasons { get; init; }

    /// <summary>In order of date; pots that get the same stand together, weakest first.</summary>
    public required IReadOnlyList<PlannedFeedJson> Feeds { get; init; }

    /// <summary>How each kind of feed is given: hour, moisture, placing.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> How { get; init; }

    /// <summary>Nutrients a month over the whole garden.</summary>
    public required IReadOnlyList<MonthJson> Months { get; init; }

    /// <summary>Nitrogen of each pot beside the published rates.</summary>
    public required IReadOnlyList<SupplyJson> Supply { get; init; }

    /// <summary>Acidity that adds up in each pot, and when to correct it.</summary>
    public required IReadOnlyList<LimeDebtJson> LimeDebts { get; init; }

    /// <summary>What the plan takes and what to buy.</summary>
    public required IReadOnlyList<ShoppingJson> Shopping { get; init; }

    /// <summary>What all there is to buy costs; null when a price is unknown.</summary>
    public required double? ShoppingCost { get; init; }

    /// <summary>Stretches in which the rules leave nothing, and the nearest safe feed.</summary>
    public required IReadOnlyList<OfferJson> Offers { get; init; }

    /// <summary>Feeds taken in place of one whose bag runs out.</summary>
    public required IReadOnlyList<ReplacementJson> Replacements { get; init; }

    /// <summary>The rules that shaped the plan.</summary>
    public required IReadOnlyList<RuleJson> Rules { get; init; }

    /// <summary>What could not be planned, conflicts, notes.</summary>
    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The JSON text of a plan.</summary>
    public static string Write(YearPlan plan) => AsheryJson.Write(Of(plan), YearJsonContext.Shared.YearJson);

    /// <summary>The shape of a plan.</summary>
    public static YearJson Of(YearPlan plan) => new()
    {
        From = plan.From,
        To = plan.To,
        Seasons = [.. plan.Seasons.Select(static s => new SeasonStretchJson(GardenWriter.Word(s.Kind), s.From, s.To))],
        Feeds = [.. plan.Feeds.Select(PlannedFeedJson.Of)],
        How = plan.Feeds.DistinctBy(static f => f.Kind).ToDictionary(static f => GardenWriter.Word(f.Kind), static f => f.How, StringComparer.Ordinal),
        Months = [.. plan.Months.Select(static m => new MonthJson(
            FormattableString.Invariant($"{m.Year:0000}-{m.Month:00}"),
            m.Grams.Grams.ToDictionary(static g => LabelBasis.Symbol(g.Key), static g => g.Value, StringComparer.Ordinal)))],
        Supply = [.. plan.Supply.Select(SupplyJson.Of)],
        LimeDebts = [.. plan.LimeDebts.Select(LimeDebtJson.Of)],
        Shopping = [.. plan.Shopping.Select(ShoppingJson.Of)],
        ShoppingCost = plan.ShoppingCost,
        Offers = [.. plan.Offers.Select(static o => new OfferJson(o.From, o.To, o.Kind is { } k ? GardenWriter.Word(k) : null, o.FeedId, o.Factor, o.Words))],
        Replacements = [.. plan.Replacements.Select(static r => new ReplacementJson(r.On, r.MaterialId, r.FeedId, r.ByFeedId, r.Words))],
        Rules = [.. plan.Rules.Select(static r => new RuleJson(r.RuleId, r.Statement, r.Binding, r.SourceId, r.Differs))],
        Problems = ProblemJson.From(plan.Problems),
    };
}

/// <summary>A season of the year planned.</summary>
/// <param name="Name"><c>growing</c>, <c>hot</c>, <c>rainy</c> or <c>resting</c>.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
public sealed record SeasonStretchJson(string Name, DateOnly From, DateOnly To);

/// <summary>Nutrients of a month.</summary>
/// <param name="Month">As YYYY-MM.</param>
/// <param name="Grams">g by nutrient, label basis, over all pots.</param>
public sealed record MonthJson(string Month, IReadOnlyDictionary<string, double> Grams);

/// <summary>A stretch without feed and what would be safe.</summary>
public sealed record OfferJson(DateOnly From, DateOnly To, string? Kind, string? Feed, double Factor, string Words);

/// <summary>A feed taken in place of another.</summary>
public sealed record ReplacementJson(DateOnly On, string Material, string Feed, string By, string Words);

/// <summary>A rule that shaped the plan.</summary>
/// <param name="Rule">Its id.</param>
/// <param name="Statement">What it says.</param>
/// <param name="Strength"><c>hard</c> or <c>soft</c>.</param>
/// <param name="Source">Key of its source.</param>
/// <param name="Differs">What published advice says otherwise.</param>
public sealed record RuleJson(string Rule, string Statement, string Strength, string Source, string? Differs);

/// <summary>Generated descriptions of the records of <c>year</c>.</summary>
[JsonSerializable(typeof(YearJson))]
public sealed partial class YearJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static YearJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
