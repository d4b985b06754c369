using Ashery.Climate;
using Ashery.Problems;

namespace Ashery.Planning.Fit;

/// <summary>What cannot be fitted, with the way out.</summary>
internal static class FitRequestCheck
{
    public static List<Problem> Of(FitRequest request)
    {
        List<Problem> found = [];
        if (request.From.Year is < 1900 or > 2199)
        {
            found.Add(new("from", FormattableString.Invariant($"{request.From:yyyy-MM-dd} is not a day between 1900 and 2199."), "Plan from a day such as 2027-03-01."));
            return found;
        }

        if (request.Draws is < FitRequest.LeastDraws or > FitRequest.MostDraws)
        {
            found.Add(new("draws", FormattableString.Invariant($"A plan is judged on {FitRequest.LeastDraws} to {FitRequest.MostDraws} made years."), FormattableString.Invariant($"{FitRequest.UsualDraws} are usual.")));
        }

        if (request.Garden.Pots.Count == 0)
        {
            found.Add(new("pots", "There are no pots, so there is no root zone to fit to.", "Add a pot with its crop and volume."));
        }

        if (request.Replan is { } replan)
        {
            if (replan.Today < request.From || replan.Today > PlanContext.LastDay(request.From))
            {
                found.Add(new("today", FormattableString.Invariant($"{replan.Today:yyyy-MM-dd} lies outside the year from {request.From:yyyy-MM-dd}."), "Give a day of the year that was planned."));
            }

            if (replan.Before.Request.From != request.From)
            {
                found.Add(new("from", "The plan that was followed begins on another day.", FormattableString.Invariant($"Begin on {replan.Before.Request.From:yyyy-MM-dd}.")));
            }

            foreach (var day in replan.Told)
            {
                Told(day, request.From, replan.Today, found);
            }
        }

        return found;
    }

    private static void Told(ToldDay day, DateOnly from, DateOnly today, List<Problem> found)
    {
        if (day.Date < from || day.Date >= today)
        {
            found.Add(new("told", FormattableString.Invariant($"{day.Date:yyyy-MM-dd} is not between {from:yyyy-MM-dd} and the day to plan again from, {today:yyyy-MM-dd}."), "Tell of days that are over."));
        }

        if (day.RainMm is < 0 or > ToldDay.MostRainMm || day.MaxCelsius is < ToldDay.LeastCelsius or > ToldDay.MostCelsius)
        {
            found.Add(new("told", FormattableString.Invariant($"The weather told of {day.Date:yyyy-MM-dd} cannot be."), FormattableString.Invariant($"Give 0 to {ToldDay.MostRainMm} mm of rain and {ToldDay.LeastCelsius} to {ToldDay.MostCelsius} °C.")));
        }
    }
}
