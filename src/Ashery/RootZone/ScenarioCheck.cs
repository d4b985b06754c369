using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.RootZone;

/// <summary>What cannot be run, and what is worth knowing before a run.</summary>
internal static class ScenarioCheck
{
    private const double SmallestCanopy = 1e-4, LargestCanopy = 20, MostSteps = 96;

    public static List<Problem> Of(PotScenario s, WeatherSeries weather)
    {
        List<Problem> found = [];
        Need(weather.Days.Count > 0, "weather", "There is not one day of weather.", "Give a series of at least one day.");
        Need(s.Shape.Litres is >= 0.02 and <= 2000, "pot.litres", "A pot holds 0.02 to 2000 L of medium.", "Give the litres of medium.");
        Need(s.Shape.HeightCm is > 0 and <= 200 && s.Shape.MouthCm is > 0 and <= 300, "pot", "Height and width of a pot are above 0 and at most 200 and 300 cm.", "Measure inside the pot, in centimetres.");
        Need(s.Plant.CanopyStart is >= SmallestCanopy and <= LargestCanopy, "plant.canopy", "A canopy covers 0.0001 to 20 m².", "Width across the crown squared, times 0.8, in m².");
        Need(s.Plant.CanopyMost is >= SmallestCanopy and <= LargestCanopy, "plant.canopyMost", "A canopy covers 0.0001 to 20 m².", "Four times the area of the pot's mouth is usual.");
        Need(s.Plant.BaseCelsius < s.Plant.BestFromCelsius && s.Plant.BestFromCelsius <= s.Plant.BestToCelsius, "plant.temperature", "Base, best from and best to must rise.", "For most shrubs 8, 20 and 30 °C.");
        Need(s.StepsPerDay is >= 1 && s.StepsPerDay <= MostSteps, "stepsPerDay", "A day has 1 to 96 steps.", "1 is usual.");
        Need(s.Start.PH is null or (>= 3 and <= 9), "start.pH", "The pH of a medium lies between 3 and 9.", "Leave it out for what is usual.");
        Need(s.Start.SolutionStrength is >= 0 and <= 10, "start.strength", "Starter salts lie between 0 and 10 mS/cm.", "0.8 is usual in a fresh mix.");
        foreach (var e in s.Events)
        {
            var fine = e switch
            {
                DryFeedEvent d => d.Grams is >= 0 and < 1e5,
                LiquidFeedEvent d => d.Litres is >= 0 and < 1e4,
                FlushEvent d => d.Litres is >= 0 and < 1e4,
                PruneEvent d => d.Share is >= 0 and < 1,
                RepotEvent d => d.OldKept is >= 0 and <= 1 && d.Shape.Litres is >= 0.02 and <= 2000,
                _ => true,
            };
            Need(fine, FormattableString.Invariant($"events {e.Date:yyyy-MM-dd}"), "The amount of this event cannot be.", "Amounts are at least 0; a share of the plant is below 1.");
        }

        var first = weather.Days.Count > 0 ? weather.Days[0].Date : default;
        var outside = s.Events.Count(e => e.Date < first || e.Date.DayNumber >= first.DayNumber + weather.Days.Count);
        if (outside > 0)
        {
            found.Add(new("events", FormattableString.Invariant($"{outside} events lie outside the days of weather."), "They are left out.", Severity.Note));
        }

        return found;

        void Need(bool fine, string field, string message, string wayOut)
        {
            if (!fine)
            {
                found.Add(new(field, message, wayOut));
            }
        }
    }
}
