using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>What to do about a cause; rows of <c>remedies.json</c> and <c>first.json</c>.</summary>
internal static class Remedies
{
    private static readonly Lazy<Dictionary<string, List<ClinicRemedy>>> Rows = new(static () =>
    {
        var byCause = new Dictionary<string, List<ClinicRemedy>>(StringComparer.Ordinal);
        foreach (var (cause, remedy) in DataRows.Read("data/clinic/remedies.json", static row => Tuple.Create(row.Text("cause"), Read(row))))
        {
            if (!byCause.TryGetValue(cause, out var list))
            {
                byCause.Add(cause, list = []);
            }

            list.Add(remedy);
        }

        return byCause;
    });

    private static readonly Lazy<List<string>> Before = new(static () => DataRows.Read("data/clinic/first.json", static row => row.Text("words")));

    /// <summary>Said before any remedy.</summary>
    public static IReadOnlyList<string> First => Before.Value;

    public static IReadOnlyList<ClinicRemedy> For(string causeId) => Rows.Value.TryGetValue(causeId, out var list) ? list : [];

    private static ClinicRemedy Read(JsonElement row) => new(
        row.Text("id"), row.Text("words"), row.Text("rate"), row.Text("route"), row.TextOrNull("mind"), row.Texts("cautions"), row.Text("source"), row.Provenance());
}
