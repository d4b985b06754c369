using Ashery.Planning;

namespace Ashery.Exchange.Calendar;

/// <summary>Nitrogen of a pot.</summary>
/// <param name="Pot">Which pot.</param>
/// <param name="Months">g N a litre of medium by month, as YYYY-MM.</param>
/// <param name="Season">g N a litre of medium over the year.</param>
/// <param name="PublishedLow">Low end of the published season rate.</param>
/// <param name="PublishedHigh">High end of it.</param>
/// <param name="FromClass">True when the rate is that of the feeder class.</param>
/// <param name="Band">Against the published low, medium and high rates.</param>
/// <param name="Words">What to make of it.</param>
public sealed record SupplyJson(
    string Pot, IReadOnlyDictionary<string, double> Months, double Season, double PublishedLow, double PublishedHigh, bool FromClass, string Band, string Words)
{
    internal static SupplyJson Of(PotSupply s) => new(
        s.PotId,
        s.Months.ToDictionary(static m => FormattableString.Invariant($"{m.Year:0000}-{m.Month:00}"), static m => m.GramsPerLitre, StringComparer.Ordinal),
        s.Season,
        s.PublishedLow,
        s.PublishedHigh,
        s.FromClass,
        s.Band,
        s.Words);
}

/// <summary>Acidity of a pot.</summary>
/// <param name="Pot">Which pot.</param>
/// <param name="Grams">g CaCO3 the year's feeds cost; positive is acid.</param>
/// <param name="GramsPerLitre">The same a litre of medium.</param>
/// <param name="IsComplete">False when a feed has no figure.</param>
/// <param name="Corrections">When and how.</param>
/// <param name="Words">What to make of it.</param>
public sealed record LimeDebtJson(string Pot, double Grams, double GramsPerLitre, bool IsComplete, IReadOnlyList<CorrectionJson> Corrections, string Words)
{
    internal static LimeDebtJson Of(LimeDebt d) => new(
        d.PotId, d.Grams, d.GramsPerLitre, d.IsComplete, [.. d.Corrections.Select(static c => new CorrectionJson(c.Date, c.MaterialId, c.Grams, c.Words))], d.Words);
}

/// <summary>Lime on a day.</summary>
/// <param name="Date">When.</param>
/// <param name="Material">Which liming material.</param>
/// <param name="Grams">g for one pot.</param>
/// <param name="Words">How.</param>
public sealed record CorrectionJson(DateOnly Date, string Material, double Grams, string Words);

/// <summary>A line of the shopping list.</summary>
/// <param name="Material">Its key.</param>
/// <param name="Name">Its name.</param>
/// <param name="Needed">g the plan takes.</param>
/// <param name="OnShelf">g on the shelf; null for as much as wanted.</param>
/// <param name="ToBuy">g to buy.</param>
/// <param name="Bags">Whole bags; null when the size of a bag is unknown.</param>
/// <param name="Cost">In the garden's currency; null when unknown.</param>
/// <param name="RunsOut">First day on which the shelf is short; null when it lasts.</param>
public sealed record ShoppingJson(string Material, string Name, double Needed, double? OnShelf, double ToBuy, int? Bags, double? Cost, DateOnly? RunsOut)
{
    internal static ShoppingJson Of(ShoppingLine s) => new(
        s.MaterialId, s.Name, s.NeededGrams, double.IsFinite(s.OnShelfGrams) ? s.OnShelfGrams : null, s.ToBuyGrams, s.Bags, s.Cost, s.RunsOut);
}
