using System.ComponentModel;

namespace Ashery.Exchange.Catalogue;

/// <summary>JSON of <c>ashery shelf</c>.</summary>
[Description("The bags on a garden's shelf.")]
public sealed record ShelfJson(
    string Garden,
    [property: Description("ISO 4217 code of all prices.")] string Currency,
    IReadOnlyList<ShelfBagJson> Bags,
    IReadOnlyList<ShelfScoopJson> Scoops);

/// <summary>A bag.</summary>
public sealed record ShelfBagJson(
    string Id,
    string Material,
    string Name,
    [property: Description("Percent by weight as this bag's label prints it.")] IReadOnlyDictionary<string, double> Label,
    [property: Description("g left; null for as much as wanted.")] double? Stock,
    [property: Description("Paid for a full bag.")] double? Price,
    [property: Description("g in a full bag.")] double? Size,
    double? PricePerKg);

/// <summary>A scoop.</summary>
public sealed record ShelfScoopJson(
    string Name,
    [property: Description("Level volume, mL.")] double Volume,
    [property: Description("g in a level scoop, as weighed, by material.")] IReadOnlyDictionary<string, RangeJson> Calibrations);
