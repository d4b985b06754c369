using System.Globalization;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Pots;

/// <summary>How much of a feed a pot gets, and how it is given.</summary>
public static class Dosing
{
    /// <summary>Mean length of a month, 365.25 / 12.</summary>
    public const double DaysAMonth = 30.4375;

    /// <summary>The dose of one feed for one pot on one day.</summary>
    public static Dose For(DoseRequest request) => request.Feed.Kind switch
    {
        FeedKind.Foliar => FoliarDosing.For(request),
        FeedKind.TraceElements => TraceDosing.For(request),
        FeedKind.Inoculant => InoculantDosing.For(request),
        _ => Nitrogen(request),
    };

    /// <summary>
    /// g = rate [g N/L a season] x volume [L] / feeds a season x stage x factors of the day / N of the feed, and no more than the
    /// smallest cap. (Amount = strength x volume x frequency, UMass Extension; rates of the SNA guide for producing nursery crops.)
    /// </summary>
    private static Dose Nitrogen(DoseRequest request)
    {
        var n = request.Feed.Label[Nutrient.N];
        var litres = request.Pot.Volume.Litres;
        var rate = request.Rate ?? SeasonRate.For(request.Crop, request.Pot.Volume, request.Rules);
        var feeds = FeedsThatShare(request);
        List<string> reasons = [];
        List<Problem> notes = [];
        double wanted;
        if (request.Basis == DoseBasis.RuleOfThumb)
        {
            var stage = PlantAge.StageOn(request.Pot, request.On, request.Rules);
            wanted = RuleOfThumb.Grams(request.Pot.Volume, stage, request.IntervalDays, request.Rules);
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"Rule of thumb made to fit {litres:0.##} L: {wanted:0.##} g every {request.IntervalDays} days."));
        }
        else
        {
            var stage = PlantAge.FactorOn(request.Pot, request.On, request.Rules);
            wanted = n > 0 ? rate.GramsPerLitre * litres / feeds * stage.Value / n : 0;
            reasons.Add(rate.Words);
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"Shared by {feeds:0.#} full feeds: {rate.GramsPerLitre * litres / feeds:0.###} g N each, {n * 100:0.##} % of this feed is N."));
            if (stage.Value < 1)
            {
                reasons.Add(stage.Words);
            }

            if (n <= 0)
            {
                notes.Add(new("feed", $"{request.Feed.Name} holds no nitrogen, so a nitrogen rate gives no dose.", "Feed by a blend with nitrogen, or name this feed foliar or traceElements."));
            }
        }

        if (request.Feed.Kind == FeedKind.Mineral && request.Feed.SaltIndex is null)
        {
            notes.Add(new("feed " + request.Feed.Id, $"A part of {request.Feed.Name} has no published salt index, so its salt cannot be held to a cap.", "Begin with half the dose and watch the leaf tips.", Severity.Note));
        }

        var full = wanted;
        var fullTop = request.Basis == DoseBasis.PublishedRate && n > 0 ? rate.Published.Range.High * litres / feeds / n : double.PositiveInfinity;
        var top = fullTop;
        foreach (var factor in request.Factors.Where(static f => f.Value < 1))
        {
            wanted *= factor.Value;
            top *= factor.Value;
            reasons.Add(factor.Words);
        }

        // Rounding to what can be weighed must not carry a season past the top of the published range.
        var cap = DoseLimits.Smallest(request, reasons, wanted);
        var most = Math.Min(top, cap);
        var measured = Measuring.Take(request, Math.Min(wanted, most), most, "steps");

        // A season of such feeds: as many full doses as share it, whatever today's weather takes off this one.
        var season = Math.Min(full, Math.Min(fullTop, cap)) * n / litres * feeds;
        return Finish(request, measured, wanted, season, [.. reasons, .. measured.Reasons], [.. notes, .. measured.Notes]);
    }

    /// <summary>A short season gets its share of the rate: as if the feeds of the shortest full season shared it.</summary>
    private static double FeedsThatShare(DoseRequest request)
    {
        var rule = request.Rules["shortest-season"];
        return Math.Max(Math.Max(1, request.FeedsInSeason), rule.IsOn ? rule["months"] * DaysAMonth / request.IntervalDays : 1);
    }

    private static Dose Finish(DoseRequest request, Measured measured, double wanted, double season, List<string> reasons, List<Problem> notes) =>
        new()
        {
            PotId = request.Pot.Id,
            FeedId = request.Feed.Id,
            Grams = measured.Grams,
            WantedGrams = wanted,
            Scoops = measured.Scoops,
            Method = measured.Method,
            Can = measured.Can,
            Predilution = measured.Predilution,
            LimeGrams = request.Feed.LimeEquivalent is { } lime ? lime * measured.Grams : null,
            NitrogenPerLitreSeason = season,
            NitrogenPerLitreMonth = season / Math.Max(1, request.SeasonMonths),
            RateBand = RateBands.Of(season),
            Reasons = reasons,
            Notes = notes,
        };
}
