using System.Globalization;
using Ashery.Solutions.Waters;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Water;

/// <summary>How pages say what a water is like.</summary>
internal static class WaterWords
{
    public static string Whole(WaterRange range) => Said(range, static v => Math.Round(v).ToString(CultureInfo.InvariantCulture));

    public static string Range(WaterRange range) => Said(range, Figures.Short);

    public static string Of(WaterLevel level) => level switch
    {
        WaterLevel.Fine => "Fine",
        WaterLevel.Watch => "Watch",
        _ => "Trouble",
    };

    public static string Sentence(IReadOnlyList<WaterFinding> findings, WaterNeeds needs)
    {
        var worst = WaterSuitability.Worst(findings);
        var names = string.Join(", ", findings.Where(f => f.Level == worst).Select(static f => f.Kind.Name));
        return worst switch
        {
            WaterLevel.Fine => $"Fine for {needs.For}.",
            WaterLevel.Watch => $"Usable for {needs.For}; keep an eye on {names}.",
            _ => $"Trouble for {needs.For}: {names}.",
        };
    }

    private static string Said(WaterRange range, Func<double, string> of) =>
        of(range.Low) == of(range.High) ? of(range.Typical) : $"{of(range.Typical)} ({of(range.Low)} to {of(range.High)})";
}
