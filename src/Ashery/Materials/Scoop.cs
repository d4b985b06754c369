using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>A measuring scoop with the grower's own calibrations.</summary>
/// <param name="Name">What the grower calls it: <c>teaspoon</c>, <c>5mL</c>.</param>
/// <param name="Volume">Level volume.</param>
/// <param name="Calibrations">Grams a scoop by material id, as weighed by the grower.</param>
public sealed record Scoop(string Name, Volume Volume, IReadOnlyDictionary<string, Spread> Calibrations);
