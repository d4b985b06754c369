namespace Ashery.Sources;

/// <summary>A number with the publication it came from and how it was obtained.</summary>
/// <param name="Value">The figure, in the unit its owner documents.</param>
/// <param name="SourceId">Key of a <see cref="Source"/>.</param>
/// <param name="Provenance">How it came into the data.</param>
/// <param name="Note">What differs elsewhere, or what was assumed.</param>
public sealed record Figure(double Value, string SourceId, Provenance Provenance, string? Note = null);
