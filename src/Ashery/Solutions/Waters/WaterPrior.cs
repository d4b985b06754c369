using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>What is assumed where a report does not say. Rows of data/solutions/water-priors.json.</summary>
/// <param name="Id">What for.</param>
/// <param name="Typical">Taken.</param>
/// <param name="Low">Low end of what most fresh waters show.</param>
/// <param name="High">High end.</param>
internal sealed record WaterPrior(string Id, double Typical, double Low, double High)
{
    private static readonly Lazy<IReadOnlyList<WaterPrior>> Rows = new(static () => DataRows.Read(
        "data/solutions/water-priors.json", static row => new WaterPrior(row.Text("id"), row.Number("typical"), row.Number("low"), row.Number("high"))));

    public static WaterPrior Of(string id)
    {
        foreach (var row in Rows.Value)
        {
            if (row.Id == id)
            {
                return row;
            }
        }

        throw DataRows.Unknown(id);
    }
}

/// <summary>Limits by which a report is checked. Rows of data/solutions/water-checks.json.</summary>
internal static class WaterCheck
{
    private static readonly Lazy<Dictionary<string, double>> Rows = new(static () =>
    {
        var rows = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (id, value) in DataRows.Read("data/solutions/water-checks.json", static row => Tuple.Create(row.Text("id"), row.Number("value"))))
        {
            rows.Add(id, value);
        }

        return rows;
    });

    public static double Of(string id) => Rows.Value[id];
}
