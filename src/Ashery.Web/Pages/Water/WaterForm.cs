using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Solutions.Waters;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Water;

/// <summary>A water report as a form and back. It is judged by the library; this only gathers its lines.</summary>
internal static class WaterForm
{
    /// <summary>Field of the figure of a row.</summary>
    public static string Value(ReportRow row) => "v-" + row.Symbol;

    /// <summary>Field of its unit.</summary>
    public static string Unit(ReportRow row) => "u-" + row.Symbol;

    /// <summary>The form of a report; empty for a new one.</summary>
    public static Draft Fill(WaterReport? report)
    {
        var fields = new List<(string, string?)> { ("name", report?.Name), ("note", report?.Note), ("ecUnit", report?.Ec?.Unit ?? "mS/cm"), ("ecCelsius", report?.Ec is { } e ? Figures.Number(e.Celsius) : "25") };
        if (report is not null)
        {
            fields.Add(("ph", Text(report.PH)));
            fields.Add(("celsius", Text(report.Celsius)));
            fields.Add(("ec", Text(report.Ec?.Value)));
            foreach (var row in ReportRow.All)
            {
                foreach (var line in report.Lines)
                {
                    if (row.UnitOf(line) is { } unit)
                    {
                        fields.Add((Value(row), (line.Below ? "<" : "") + Figures.Number(line.Value)));
                        fields.Add((Unit(row), unit));
                        break;
                    }
                }
            }
        }

        return Draft.With(fields);
    }

    /// <summary>The report, with warnings of its reading; problems carry the fields of the form.</summary>
    public static Result<WaterReport> Read(Draft typed, string? before, Garden garden)
    {
        var read = new FieldReader(typed);
        var name = read.Text("name", "The name", 120);
        var lines = new List<WaterLine>();
        foreach (var row in ReportRow.All)
        {
            if (typed.Has(Value(row)) && Number(read, typed, Value(row)) is { } figure)
            {
                lines.Add(new(row.Symbol, figure.Value, typed[Unit(row)] is { Length: > 0 } unit ? unit : null, figure.Below));
            }
        }

        double? pH = Number(read, typed, "ph")?.Value, celsius = Number(read, typed, "celsius")?.Value, ec = Number(read, typed, "ec")?.Value;
        var ecCelsius = read.Optional("ecCelsius", 0, 40, "25") ?? 25;
        if (!read.Fine)
        {
            return Result.Fail<WaterReport>(read.Problems);
        }

        var report = new WaterReport
        {
            Id = before ?? Ids.Free(name, "water", garden.Waters.Select(w => w.Id).Append("pure")),
            Name = name,
            Note = typed.Has("note") ? typed["note"] : null,
            Lines = lines,
            PH = pH,
            Celsius = celsius,
            Ec = ec is { } value ? new(value, typed["ecUnit"], ecCelsius) : null,
        };
        var reading = WaterReports.Read(report);
        return reading.Ok ? Result.Of(report, reading.Problems) : Result.Fail<WaterReport>([.. reading.Problems.Select(AtField)]);
    }

    /// <summary>Beside the field where it was typed; what concerns the whole report stays at the top.</summary>
    private static Problem AtField(Problem problem)
    {
        if (problem.Field is "pH")
        {
            return problem with { Field = "ph" };
        }

        foreach (var row in ReportRow.All)
        {
            if (row.Symbol == problem.Field || row.Quantity.Id == problem.Field)
            {
                return problem with { Field = Value(row) };
            }
        }

        return problem;
    }

    private static WaterFigure? Number(FieldReader read, Draft typed, string field)
    {
        if (!typed.Has(field))
        {
            return null;
        }

        var figure = WaterNumber.Read(typed[field], field);
        read.AddRange(figure.Problems);
        return figure.Value;
    }

    private static string? Text(double? value) => value is { } v ? Figures.Number(v) : null;
}
