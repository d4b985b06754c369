using Ashery.Records;

namespace Ashery.Web.Access;

/// <summary>Names of gardens for lists.</summary>
internal static class GardenNames
{
    public static string Of(IRecords records, string key) => records.Gardens().FirstOrDefault(g => g.Key == key)?.Name ?? "A garden";
}
