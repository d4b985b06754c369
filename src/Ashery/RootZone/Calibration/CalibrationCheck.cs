using Ashery.Problems;

namespace Ashery.RootZone.Calibration;

/// <summary>What stands in the way of a calibration.</summary>
internal static class CalibrationCheck
{
    public static List<Problem> Of(CalibrationRequest r)
    {
        List<Problem> found = [];
        var (from, days) = (r.Forecast.From, r.Forecast.Days);
        Need(r.Forecast.Draws >= CalibrationRequest.FewestDraws, "draws", FormattableString.Invariant($"Readings need {CalibrationRequest.FewestDraws} draws or more to be weighed."), "500 are usual.");
        Need(r.Readings.Count > 0, "readings", "There is no reading to go by.", "Give an EC or pH of what runs out below, or a weight.");
        Need(r.Rounds is >= 1 and <= 20, "rounds", "Readings are taken in 1 to 20 times.", "4 is usual.");
        foreach (var reading in r.Readings.Concat(r.Held))
        {
            var field = FormattableString.Invariant($"reading of {reading.Date:yyyy-MM-dd}");
            Need(reading.Date >= from && reading.Date.DayNumber < from.DayNumber + days, field, "It lies outside the days of the forecast.", "Begin the forecast before the first reading.");
            var (low, high) = reading.Kind switch { ReadingKind.LeachateEc => (0.0, 50.0), ReadingKind.LeachatePh => (2.0, 11.0), _ => (-0.5, 2000.0) };
            Need(reading.Value >= low && reading.Value <= high, field, FormattableString.Invariant($"Such a reading lies between {low} and {high}."), "Look at the unit: EC in mS/cm, weight in kg.");
            Need(reading.Error is null or (> 0 and < 1000), field, "The error of a reading is above 0.", "Leave it out for what is usual.");
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
