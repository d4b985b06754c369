namespace Ashery.Stock;

/// <summary>A sum of money that says what it lacks.</summary>
/// <param name="Known">What is known, in the garden's currency.</param>
/// <param name="PricedGrams">g behind it.</param>
/// <param name="UnpricedGrams">g whose price nobody wrote: they are not in the sum.</param>
/// <param name="Unpriced">Ids of the lines of the shelf (or materials) they came from.</param>
public sealed record Cost(double Known, double PricedGrams, double UnpricedGrams, IReadOnlyList<string> Unpriced)
{
    public static Cost None { get; } = new(0, 0, 0, []);

    /// <summary>True when every gram has a price.</summary>
    public bool IsWhole => UnpricedGrams <= FirstExpired.Dust;

    public static Cost operator +(Cost a, Cost b) => new(
        a.Known + b.Known, a.PricedGrams + b.PricedGrams, a.UnpricedGrams + b.UnpricedGrams,
        b.Unpriced.Count == 0 ? a.Unpriced : a.Unpriced.Count == 0 ? b.Unpriced : [.. a.Unpriced.Union(b.Unpriced, StringComparer.Ordinal)]);

    public static Cost operator *(Cost a, double share) => a with { Known = a.Known * share, PricedGrams = a.PricedGrams * share, UnpricedGrams = a.UnpricedGrams * share };

    internal static Cost Of(double grams, double? pricePerGram, string line) =>
        pricePerGram is { } price ? new(grams * price, grams, 0, []) : new(0, 0, grams, Math.Abs(grams) > FirstExpired.Dust ? [line] : []);
}
