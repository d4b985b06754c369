using Ashery.Records.Rows;
using Ashery.Solutions.Waters;

namespace Ashery.Records.Mapping;

/// <summary>A water report as rows and back.</summary>
internal static class WaterMapping
{
    public static WaterRow ToRow(WaterReport report, int position)
    {
        var row = new WaterRow
        {
            Position = position,
            WaterId = report.Id,
            Name = report.Name,
            Note = report.Note,
            PH = report.PH,
            Celsius = report.Celsius,
            Ec = report.Ec?.Value,
            EcUnit = report.Ec?.Unit,
            EcCelsius = report.Ec?.Celsius,
        };
        row.Lines.AddRange(report.Lines.Select((l, i) => new WaterLineRow { Position = i, Name = l.Name, Value = l.Value, Unit = l.Unit, Below = l.Below }));
        return row;
    }

    public static WaterReport FromRow(WaterRow row) => new()
    {
        Id = row.WaterId,
        Name = row.Name,
        Note = row.Note,
        PH = row.PH,
        Celsius = row.Celsius,
        Ec = row is { Ec: { } ec, EcUnit: { } unit, EcCelsius: { } celsius } ? new WaterConductivity(ec, unit, celsius) : null,
        Lines = [.. row.Lines.OrderBy(l => l.Position).Select(l => new WaterLine(l.Name, l.Value, l.Unit, l.Below))],
    };
}
