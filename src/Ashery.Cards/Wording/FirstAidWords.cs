using System.Globalization;
using Ashery.Pots;

namespace Ashery.Cards.Wording;

/// <summary>How much plain water flushes a pot that got too much, for each size of pot on the card.</summary>
internal static class FirstAidWords
{
    /// <summary>One line a way of flushing: passes and hours, then the water for each size.</summary>
    public static IEnumerable<string> Lines(RecipeCardRequest request) => request.Doses
        .DistinctBy(d => d.Pot.Volume.Litres)
        .OrderBy(d => d.Pot.Volume.Litres)
        .Select(d => (Size: Amounts.Litres(d.Pot.Volume.Litres, request.Settings), Aid: FirstAid.For(d.Pot, request.Rules)))
        .GroupBy(d => (d.Aid.Passes, d.Aid.HoursBetween))
        .Select(g => $"Plain water a pass, {g.Key.Passes.ToString(CultureInfo.InvariantCulture)} passes {Figures.Short(g.Key.HoursBetween, 1)} h apart: "
            + string.Join(", ", g.Select(d => $"{Amounts.Litres(d.Aid.LitresAPass, request.Settings)} for a pot of {d.Size}")) + ".");
}
