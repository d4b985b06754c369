using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>Makes a water of a report: units, balance, what is missing, conductivity.</summary>
public static class WaterReports
{
    public static Result<WaterReading> Read(WaterReport report)
    {
        var problems = new List<Problem>();
        var totals = new double[Chemistry.Default.Components.Count];
        double charge = 0, alkalinity = 0;
        foreach (var line in report.Lines)
        {
            var read = ReportedAmount.Read(line);
            if (!read.Ok)
            {
                problems.AddRange(read.Problems);
                continue;
            }

            if (read.Value.Quantity.Component is { } component)
            {
                var c = Chemistry.Default.Components[Chemistry.Default.Known(component)];
                totals[c.Index] += read.Value.Amount;
                charge += (c.Charge + c.AlkalinityProtons) * read.Value.Amount;
            }
            else if (read.Value.Quantity.Kind == WaterQuantityKind.Alkalinity)
            {
                alkalinity += read.Value.Amount;
            }
        }

        if (problems.Count > 0)
        {
            return Result.Fail<WaterReading>(problems);
        }

        var gap = charge - alkalinity;
        totals[Chemistry.Default.Known(gap > 0 ? "chloride" : "sodium")] += Math.Abs(gap);
        var water = new SourceWater(report.Id, report.Name, totals, report.PH, report.Celsius ?? 25);
        return Result.Of(new WaterReading { Report = report, Water = water, Solution = Speciation.Solve(water.ToInput()) });
    }
}
