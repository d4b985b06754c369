using Ashery.Trials.Chances;

namespace Ashery.Trials;

/// <summary>A trial of feeds on a grower's own pots, from the wish to the layout; results come apart from it.</summary>
public sealed record Trial
{
    /// <summary>More pots than a grower's trial has.</summary>
    public const int MostPots = 2000;

    public const int MostTreatments = 12;

    public required string Name { get; init; }

    public required TrialMeasure Measure { get; init; }

    /// <summary>Two or more feeds; at most one of them the control.</summary>
    public required IReadOnlyList<Treatment> Treatments { get; init; }

    /// <summary>What is to be seen, by which the number of pots is judged.</summary>
    public TrialWish Wish { get; init; } = new();

    /// <summary>Pots that take part, before they are laid out; empty when only numbers are asked for.</summary>
    public IReadOnlyList<TrialPot> Pots { get; init; } = [];

    /// <summary>Of the draw of the layout; the same seed gives the same layout.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Whether tags and record sheet show codes in place of feeds.</summary>
    public bool Blind { get; init; }

    /// <summary>How often the grower means to look, the end included.</summary>
    public int Looks { get; init; } = 1;

    public SpendingRule Spending { get; init; } = SpendingRule.OBrienFleming;

    /// <summary>Which pot gets what; empty until it is drawn.</summary>
    public IReadOnlyList<TrialPlace> Layout { get; init; } = [];

    public Treatment? Control => Treatments.FirstOrDefault(static t => t.IsControl);

    public Treatment? Find(string id) => Treatments.FirstOrDefault(t => t.Id == id);
}

/// <summary>A feed in a trial.</summary>
/// <param name="Id">Short key, as in the results.</param>
/// <param name="Name">As the grower calls it.</param>
/// <param name="IsControl">The one that the others are compared with.</param>
public sealed record Treatment(string Id, string Name, bool IsControl = false)
{
    /// <summary>Levels of several factors, when the feeds are combinations of them: N with or without, K with or without. The same factors for each.</summary>
    public IReadOnlyDictionary<string, string> Factors { get; init; } = new Dictionary<string, string>();

    /// <summary>Code on tags of a blind trial; null for none.</summary>
    public string? Code { get; init; }
}

/// <summary>What is counted or measured on each pot.</summary>
/// <param name="Kind">Counts follow other laws than lengths and masses.</param>
/// <param name="Name">Open flowers, height, dry mass.</param>
/// <param name="Unit">Of a measurement; empty for counts.</param>
public sealed record TrialMeasure(MeasureKind Kind, string Name, string Unit = "")
{
    /// <summary>What stands for a pot that was looked at on several days.</summary>
    public PotSummary Summary { get; init; } = Kind == MeasureKind.Count ? PotSummary.Sum : PotSummary.Mean;
}

public enum MeasureKind
{
    Count,
    Measurement,
}

/// <summary>One figure a pot from several days (the summary measure of Matthews and others 1990, BMJ 300: 230-235; from memory).</summary>
public enum PotSummary
{
    Sum,
    Mean,
    Last,

    /// <summary>Growth a day: the slope of a straight line through the pot's figures.</summary>
    Slope,
}

/// <summary>The difference to be seen and what is known before.</summary>
public sealed record TrialWish
{
    /// <summary>Of the control, a pot; only used of counts.</summary>
    public double Mean { get; init; } = 20;

    /// <summary>Part more or less than the control: 0.3 for 30 % more.</summary>
    public double Difference { get; init; } = 0.3;

    /// <summary>
    /// Coefficient of variation between pots that are fed alike and stand alike. Of counts: what comes on top of the scatter that counting itself has, so that
    /// the variance is mean + (spread · mean)².
    /// </summary>
    public double Spread { get; init; } = 0.25;

    /// <summary>Chance to see the difference when it is there.</summary>
    public double Power { get; init; } = 0.8;

    /// <summary>Chance of a false alarm of the whole family of comparisons.</summary>
    public double Alpha { get; init; } = 0.05;
}

/// <summary>A pot that may take part.</summary>
/// <param name="Id">Written on its tag.</param>
/// <param name="Name">What grows in it.</param>
/// <param name="Litres">Size; null when not said.</param>
/// <param name="Place">Where it stands; null when not said.</param>
public sealed record TrialPot(string Id, string Name, double? Litres = null, string? Place = null);

/// <summary>A pot with its block and feed.</summary>
/// <param name="Pot">Key of the pot.</param>
/// <param name="Block">From 1; 0 for a trial without blocks.</param>
/// <param name="Treatment">Key of the feed.</param>
public sealed record TrialPlace(string Pot, int Block, string Treatment);
