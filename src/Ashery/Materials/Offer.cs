using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>A material within reach: on the shelf or in the shop.</summary>
/// <param name="Material">What is in the bag.</param>
/// <param name="PricePerKg">In the garden's currency; null when unknown, and then a cost is unknown too, never zero.</param>
/// <param name="Stock">What is left; null for as much as wanted.</param>
public sealed record Offer(Material Material, double? PricePerKg = null, Mass? Stock = null);
