using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>A water that ships.</summary>
/// <param name="Report">As a laboratory would print it.</param>
/// <param name="About">What it stands for.</param>
/// <param name="SourceId">Key of its source.</param>
/// <param name="Provenance">How it came into the data.</param>
/// <param name="Note">What to know about it.</param>
public sealed record ExampleWater(WaterReport Report, string About, string SourceId, Provenance Provenance, string? Note)
{
    private readonly Lazy<WaterReading> reading = new(() => WaterReports.Read(Report) is { Ok: true } read
        ? read.Value
        : throw new InvalidOperationException($"The water {Report.Id} that ships does not read."));

    public WaterReading Reading => reading.Value;

    public SourceWater Water => Reading.Water;
}
