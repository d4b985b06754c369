using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Exchange.Gardens;

/// <summary>Reads a water of a garden file: as typed, and checked by making a water of it.</summary>
internal sealed class WaterReader(FieldReader fields)
{
    public WaterReport? Read(WaterDto dto, string path)
    {
        var before = fields.Problems.Count;
        var id = fields.Text(dto.Id, path + ".id", 80);
        var report = new WaterReport
        {
            Id = id,
            Name = dto.Name is null ? id : fields.Text(dto.Name, path + ".name", 120),
            Note = dto.Note is null ? null : fields.Text(dto.Note, path + ".note", 1000),
            Lines = fields.All(dto.Lines, path + ".lines", (l, at) => new WaterLine(
                fields.Text(l.Name, at + ".name", 80), fields.Number(l.Value, at + ".value", 0, 1e6, ""), l.Unit is null ? null : fields.Text(l.Unit, at + ".unit", 40), l.Below ?? false)),
            PH = dto.PH,
            Celsius = dto.Celsius,
            Ec = dto.Ec is { } ec ? new WaterConductivity(ec, dto.EcUnit ?? "mS/cm", dto.EcCelsius ?? 25) : null,
        };
        if (fields.Problems.Count > before)
        {
            return null;
        }

        foreach (var problem in WaterReports.Read(report).Problems.Where(static p => p.Severity == Severity.Error))
        {
            fields.Add(problem with { Field = $"{path}, {problem.Field}" });
        }

        return report;
    }
}
