using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Waters;

/// <summary>
/// A water report as a JSON file (schema: docs/schemas/water-file.schema.json): ions in mg/L by symbol, alkalinity as mg/L CaCO3, <c>ec</c>
/// in mS/cm; anything else as a value with its unit.
/// </summary>
public static class WaterFile
{
    /// <summary>No report comes near it.</summary>
    public const int LongestText = 256 * 1024;

    /// <summary>Reads a report; everything that is wrong comes back at once, each with the field as it is named in the file.</summary>
    public static Result<WaterReport> Read(string text) => new WaterFileReader().Read(text);

    /// <summary>Writes a report; reading it back gives the same report.</summary>
    public static string Write(WaterReport report) => WaterFileWriter.Write(report);
}
