using System.Globalization;
using Ashery.Climate;
using Ashery.Crops;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Pots;
using Ashery.Problems;

namespace Ashery.Planning;

/// <summary>What stays the same over the year: rules, seasons, the crop of each pot, the turns of mineral and organic feed.</summary>
internal sealed class PlanContext
{
    private readonly Dictionary<FeedKind, IReadOnlyList<string>> how = [];
    private readonly Dictionary<string, double> fullFeeds = new(StringComparer.Ordinal);
    private readonly Dictionary<(string CropId, int Month), DoseFactor> growth = [];
    private readonly Dictionary<string, SeasonRate> rates = new(StringComparer.Ordinal);
    private readonly Dictionary<(string CropId, FeedKind Kind), Feed?> choices = [];
    private readonly Dictionary<string, int> counts;

    public PlanContext(Garden garden, DateOnly from)
    {
        Garden = garden;
        counts = garden.Pots.ToDictionary(static p => p.Id, static p => p.Count, StringComparer.Ordinal);
        From = from;
        To = LastDay(from);
        (Rules, var ruleProblems) = GardenRules.Of(garden);
        Problems.AddRange(ruleProblems);
        Seasons = new(SeasonCalendar.For(garden.Place, SeasonThresholds.From(Rules)), Rules);
        foreach (var pot in garden.Pots)
        {
            if (CropCatalogue.Default.Find(pot.CropId) is { } crop)
            {
                Pots.Add((pot, crop));
            }
            else
            {
                Problems.Add(new("pot " + pot.Id, $"There is no crop \"{pot.CropId}\" in the catalogue, so nothing is planned for it.", "Choose a crop of `ashery crops`.", Severity.Warning));
            }
        }

        Kept = garden.Feeds.Select(static f => f.Kind).ToHashSet();
        Turns = FeedSlots.Turns(Seasons, From, To, Kept);
        for (var day = From; day <= To; day = day.AddDays(1))
        {
            GrowingDays += Seasons.Calendar.Of(day).HasFlag(DaySeasons.Growing) ? 1 : 0;
        }

        Interval = Math.Max(1, (int)Rules["alternate-kinds"]["days"]);
        Scoop = garden.Settings.Scoop is { } name ? garden.Scoops.FirstOrDefault(s => s.Name == name) : null;
    }

    public Garden Garden { get; }

    public DateOnly From { get; }

    public DateOnly To { get; }

    public RuleBook Rules { get; }

    public SeasonRules Seasons { get; }

    public List<(Pot Pot, Crop Crop)> Pots { get; } = [];

    public IReadOnlySet<FeedKind> Kept { get; }

    public IReadOnlyList<FeedSlot> Turns { get; }

    public int GrowingDays { get; }

    public int Interval { get; }

    public Scoop? Scoop { get; }

    public List<Problem> Problems { get; } = [];

    /// <summary>The day before the anniversary; a year that starts on 29 February ends on the 28th.</summary>
    public static DateOnly LastDay(DateOnly from) => from.AddYears(1) is var next && next.Day == from.Day ? next.AddDays(-1) : next;

    /// <summary>The request for a dose on a day, with what the season and the temperature take off.</summary>
    public DoseRequest Ask(Pot pot, Crop crop, Feed feed, DateOnly day, SeasonVerdict verdict)
    {
        var factors = verdict.Factors;
        if (feed.Kind is FeedKind.Mineral or FeedKind.Organic && GrowthOn(day, crop) is { } growing)
        {
            factors = [.. factors, growing];
        }

        return new()
        {
            Pot = pot,
            Crop = crop,
            Feed = feed,
            On = day,
            FeedsInSeason = FullFeeds(crop),
            SeasonMonths = GrowingDays / Dosing.DaysAMonth,
            IntervalDays = Interval,
            Rate = RateOf(pot, crop),
            Factors = factors,
            ScaleStep = Garden.Settings.ScaleStep,
            Scoop = Scoop,
            Rules = Rules,
        };
    }

    /// <summary>How many equal pots a line stands for.</summary>
    public int CountOf(string potId) => counts[potId];

    /// <summary>The kept feed of a kind for a crop; null when none is kept.</summary>
    public Feed? FeedFor(Crop crop, FeedKind kind)
    {
        if (!choices.TryGetValue((crop.Id, kind), out var feed))
        {
            choices.Add((crop.Id, kind), feed = FeedChoice.For(crop, kind, Garden.Feeds));
        }

        return feed;
    }

    /// <summary>The turns of the year counted with the crop's growth factor.</summary>
    public double FullFeeds(Crop crop)
    {
        if (!fullFeeds.TryGetValue(crop.Id, out var full))
        {
            foreach (var turn in Turns)
            {
                full += GrowthOn(turn.Day, crop)?.Value ?? 1;
            }

            fullFeeds.Add(crop.Id, full);
        }

        return full;
    }

    private SeasonRate RateOf(Pot pot, Crop crop)
    {
        if (!rates.TryGetValue(pot.Id, out var rate))
        {
            rates.Add(pot.Id, rate = SeasonRate.For(crop, pot.Volume, Rules));
        }

        return rate;
    }

    private DoseFactor? GrowthOn(DateOnly day, Crop crop)
    {
        if (Seasons.Calendar.NormalOf(day) is not { } normal)
        {
            return null;
        }

        if (!growth.TryGetValue((crop.Id, day.Month), out var factor))
        {
            growth.Add((crop.Id, day.Month), factor = GrowthFactor.At((normal.MeanMax + normal.MeanMin) / 2, crop, Rules));
        }

        return factor;
    }

    /// <summary>How a kind of feed is given: the advice that speaks of it.</summary>
    public IReadOnlyList<string> How(FeedKind kind)
    {
        if (!how.TryGetValue(kind, out var words))
        {
            how.Add(kind, words = [.. Rules.All.Where(r => r is { Topic: "how", IsOn: true, Choice: null } && r.Id != "can-volume" && DoseCaps.Binds(r, kind)).Select(static r => r.Statement)]);
        }

        return words;
    }

    /// <summary>Why a pot is passed over on a day whatever the dose would be; null when it is not.</summary>
    public string? Holds(Pot pot, Crop crop, FeedKind kind, DateOnly day)
    {
        var normal = Seasons.Calendar.NormalOf(day);
        var weather = normal is null ? null : new DayWeather(MeanCelsius: (normal.MeanMax + normal.MeanMin) / 2);
        var gate = FeedGate.Check(pot, crop, kind, day, null, weather, Rules);
        return gate.IsOpen ? null : string.Join(" ", gate.Holds.Select(static h => h.Until is { } until
            ? string.Create(CultureInfo.InvariantCulture, $"{h.Words} Again from {until:yyyy-MM-dd}.")
            : h.Words));
    }
}
