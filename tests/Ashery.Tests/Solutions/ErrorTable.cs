using System.Globalization;
using System.Text;
using System.Text.Json;
using Ashery.Solutions;

namespace Ashery.Tests.Solutions;

/// <summary>How far the model lies from each reference case, and the table of it.</summary>
internal static class ErrorTable
{
    public sealed record Row(string Id, double Strength, double Ec, double Ec25, double Ph, double Index, string IndexOf, double OpenPh, double OpenEc);

    public static IReadOnlyList<Row> Rows { get; } = [.. Reference.Cases.Select(Measure)];

    /// <summary>Ionic strength up to 0.1 by the reference's own figure.</summary>
    public static IReadOnlyList<Row> Counted => [.. Rows.Where(r => r.Strength <= 0.1)];

    public static string Markdown()
    {
        var text = new StringBuilder("| case | ionic strength | EC, % | EC at 25 °C, % | pH | worst saturation index | open: EC, % | open: pH |\n|---|---|---|---|---|---|---|---|\n");
        foreach (var r in Rows.OrderByDescending(r => Math.Round(Worst(r), 6)).ThenBy(r => r.Id, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"| {r.Id} | {r.Strength:0.####} | {r.Ec:+0.0;-0.0;0.0} | {r.Ec25:+0.0;-0.0;0.0} | {r.Ph:+0.000;-0.000;0.000} | {(r.IndexOf == "" ? "" : FormattableString.Invariant($"{r.Index:+0.00;-0.00;0.00} {r.IndexOf}"))} | {Shown(r.OpenEc, "+0.0;-0.0;0.0")} | {Shown(r.OpenPh, "+0.000;-0.000;0.000")} |\n");
        }

        return text.ToString();
    }

    // In units of its bound: EC 3 %, pH 0.05, index 0.1.
    public static double Worst(Row r) => Math.Max(Math.Max(Math.Abs(r.Ec), Math.Abs(r.Ec25)) / 3, Math.Max(Math.Abs(r.Ph) / 0.05, Math.Abs(r.Index) / 0.1));

    private static string Shown(double value, string format) => double.IsNaN(value) ? "" : value.ToString(format, CultureInfo.InvariantCulture);

    private static Row Measure(JsonElement c)
    {
        var expected = c.GetProperty("expected");
        var solution = Speciation.Solve(Reference.Input(c));
        double worst = 0;
        var worstOf = "";
        foreach (var index in expected.GetProperty("SI").EnumerateObject())
        {
            var mineral = Chemistry.Default.Minerals.Single(m => m.Id == index.Name);
            var off = SaturationIndex.Of(solution, mineral) - index.Value.GetDouble();
            if (worstOf == "" || Math.Abs(off) > Math.Abs(worst))
            {
                (worst, worstOf) = (off, index.Name);
            }
        }

        double openPh = double.NaN, openEc = double.NaN;
        if (expected.TryGetProperty("open_to_air", out var open))
        {
            var aired = Speciation.Solve(Reference.Input(c, Air.Open));
            openPh = aired.PH - open.GetProperty("pH").GetDouble();
            openEc = Percent(Conductivity.Of(aired), open.GetProperty("EC_mS_cm").GetDouble());
        }

        return new(
            c.GetProperty("id").GetString()!, expected.GetProperty("ionic_strength_mol_kg").GetDouble(),
            Percent(Conductivity.Of(solution), expected.GetProperty("EC_mS_cm").GetDouble()),
            Percent(Conductivity.At25(solution), expected.GetProperty("EC_25C_mS_cm").GetDouble()),
            solution.PH - expected.GetProperty("pH").GetDouble(), worst, worstOf, openPh, openEc);
    }

    private static double Percent(double value, double reference) => 100 * ((value / reference) - 1);
}
