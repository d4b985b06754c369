using Ashery.Trials;
using Ashery.Trials.Results;

namespace Ashery.Tests.Trials;

/// <summary>Small open datasets with published analyses, as R prints them (packages datasets and nlme), typed here as trials.</summary>
internal static class OpenData
{
    /// <summary>Insects on 12 plots of six sprays: Beall 1942, The transformation of data from entomological field experiments, Biometrika 29: 243-262.</summary>
    private static readonly int[] Insects =
    [
        10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13, 11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13, 0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4,
        3, 5, 12, 6, 4, 3, 5, 5, 5, 5, 2, 4, 3, 5, 3, 5, 3, 6, 1, 1, 3, 2, 6, 4, 11, 9, 15, 22, 15, 16, 13, 10, 26, 26, 24, 13,
    ];

    /// <summary>Breaks of a loom, two wools by three tensions, nine looms each: Tippett 1950, Technological Applications of Statistics; cited by Tukey 1977 and McNeil 1977.</summary>
    private static readonly int[] Breaks =
    [
        26, 30, 54, 25, 70, 52, 51, 26, 67, 18, 21, 29, 17, 12, 18, 35, 30, 36, 36, 21, 24, 18, 10, 43, 28, 15, 26,
        27, 14, 29, 19, 29, 31, 41, 20, 44, 42, 26, 19, 16, 39, 28, 21, 39, 29, 20, 21, 24, 17, 13, 15, 15, 16, 28,
    ];

    /// <summary>Dried mass of plants, a control and two treatments: Dobson 1983, An Introduction to Statistical Modelling.</summary>
    private static readonly double[] Growth =
    [
        4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14, 4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69,
        6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26,
    ];

    /// <summary>Peas with and without N, P and K in six blocks of four: Yates; in Venables and Ripley 2002, Modern Applied Statistics with S, section 6.7.</summary>
    private static readonly double[] Peas =
    [
        49.5, 62.8, 46.8, 57, 59.8, 58.5, 55.5, 56, 62.8, 55.8, 69.5, 55, 62, 48.8, 45.5, 44.2, 52, 51.5, 49.8, 48.8, 57.2, 59, 53.2, 56,
    ];

    private static readonly string[] PeaPlots =
    [
        "011", "110", "000", "101", "100", "111", "001", "010", "010", "111", "100", "001", "100", "111", "001", "010", "110", "000", "101", "011", "101", "110", "011", "000",
    ];

    /// <summary>A distance in the skulls of 16 boys and 11 girls at 8, 10, 12 and 14 years: Potthoff and Roy 1964, Biometrika 51: 313-326.</summary>
    private static readonly double[] Skulls =
    [
        26, 25, 29, 31, 21.5, 22.5, 23, 26.5, 23, 22.5, 24, 27.5, 25.5, 27.5, 26.5, 27, 20, 23.5, 22.5, 26, 24.5, 25.5, 27, 28.5, 22, 22, 24.5, 26.5, 24, 21.5, 24.5, 25.5,
        23, 20.5, 31, 26, 27.5, 28, 31, 31.5, 23, 23, 23.5, 25, 21.5, 23.5, 24, 28, 17, 24.5, 26, 29.5, 22.5, 25.5, 25.5, 26, 23, 24.5, 26, 30, 22, 21.5, 23.5, 25,
        21, 20, 21.5, 23, 21, 21.5, 24, 25.5, 20.5, 24, 24.5, 26, 23.5, 24.5, 25, 26.5, 21.5, 23, 22.5, 23.5, 20, 21, 21, 22.5, 21.5, 22.5, 23, 25, 23, 23, 23.5, 24,
        20, 21, 22, 21.5, 16.5, 19, 19, 19.5, 24.5, 25, 28, 28,
    ];

    public static AnalysisRequest InsectSprays() => Of("InsectSprays", MeasureKind.Count, ["A", "B", "C", "D", "E", "F"], null, [.. Insects.Select((v, i) => (((char)('A' + (i / 12))).ToString(), 0, (double)v))]);

    public static AnalysisRequest Warpbreaks(MeasureKind kind)
    {
        string[] cells = ["AL", "AM", "AH", "BL", "BM", "BH"];
        var made = Of("warpbreaks", kind, cells, null, [.. Breaks.Select((v, i) => (cells[i / 9], 0, (double)v))]);
        return made with
        {
            Trial = made.Trial with
            {
                Treatments = [.. cells.Select(c => new Treatment(c, c) { Factors = new Dictionary<string, string> { ["wool"] = c[..1], ["tension"] = c[1..] } })],
            },
        };
    }

    public static AnalysisRequest PlantGrowth(bool control)
    {
        string[] groups = ["ctrl", "trt1", "trt2"];
        return Of("PlantGrowth", MeasureKind.Measurement, groups, control ? "ctrl" : null, [.. Growth.Select((v, i) => (groups[i / 10], 0, v))]);
    }

    public static AnalysisRequest Npk()
    {
        var made = Of("npk", MeasureKind.Measurement, [.. PeaPlots.Distinct().Order(StringComparer.Ordinal)], null, [.. Peas.Select((v, i) => (PeaPlots[i], 1 + (i / 4), v))]);
        return made with
        {
            Trial = made.Trial with
            {
                Treatments = [.. made.Trial.Treatments.Select(t => t with { Factors = new Dictionary<string, string> { ["N"] = t.Id[..1], ["P"] = t.Id[1..2], ["K"] = t.Id[2..] } })],
            },
        };
    }

    public static IReadOnlyList<(int Child, bool Girl, int Age, double Distance)> Orthodont() => [.. Skulls.Select((v, i) => (i / 4, i >= 64, 8 + (2 * (i % 4)), v))];

    private static AnalysisRequest Of(string name, MeasureKind kind, string[] feeds, string? control, IReadOnlyList<(string Feed, int Block, double Value)> plots) => new(
        new()
        {
            Name = name,
            Measure = new(kind, "figure"),
            Treatments = [.. feeds.Select(f => new Treatment(f, f, f == control))],
            Layout = [.. plots.Select((p, i) => new TrialPlace(FormattableString.Invariant($"p{i + 1}"), p.Block, p.Feed))],
        },
        [.. plots.Select((p, i) => new TrialReading(FormattableString.Invariant($"p{i + 1}"), p.Value))]);
}
