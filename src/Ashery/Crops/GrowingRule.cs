using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>
/// A rule of when, how much and how to feed, as data the grower can change: what it says, how hard it binds,
/// who says so, and what published advice says otherwise.
/// </summary>
public sealed record GrowingRule
{
    public required string Id { get; init; }

    /// <summary>What it is about: <c>season</c>, <c>spray</c>, <c>dose</c> and so on.</summary>
    public required string Topic { get; init; }

    public required RuleKind Kind { get; init; }

    /// <summary>The rule in a sentence a grower can follow.</summary>
    public required string Statement { get; init; }

    /// <summary>Why it is so; null where the source gives none.</summary>
    public string? Reason { get; init; }

    public required RuleStrength Strength { get; init; }

    /// <summary>Whether it holds; <see cref="RuleBook.With"/> can switch it off.</summary>
    public bool IsOn { get; init; } = true;

    /// <summary>Kinds of feed it binds, by the names of <c>FeedKind</c>: <c>mineral</c>, <c>organic</c>, <c>foliar</c>, <c>traceElements</c>, <c>inoculant</c>.</summary>
    public IReadOnlyList<string> AppliesTo { get; init; } = [];

    /// <summary>The season it speaks of, by the names of <c>SeasonKind</c>; null for none.</summary>
    public string? Season { get; init; }

    /// <summary>Which of <see cref="Choices"/> holds, e.g. <c>stop</c> or <c>reduce</c>; null where there is nothing to choose.</summary>
    public string? Choice { get; init; }

    public IReadOnlyList<string> Choices { get; init; } = [];

    public IReadOnlyList<RuleParameter> Parameters { get; init; } = [];

    public required string SourceId { get; init; }

    public required Provenance Provenance { get; init; }

    /// <summary>What published advice says otherwise.</summary>
    public string? Differs { get; init; }

    /// <summary>The figures behind it, or how a figure was worked out.</summary>
    public string? Note { get; init; }

    /// <summary>The figure of a parameter. A name that does not exist is our own mistake, so it throws.</summary>
    public double this[string parameter]
    {
        get
        {
            foreach (var p in Parameters)
            {
                if (p.Name == parameter)
                {
                    return p.Value;
                }
            }

            throw new KeyNotFoundException($"The rule {Id} has no parameter {parameter}.");
        }
    }
}

/// <summary>A figure of a rule, with the bounds within which a grower may set it.</summary>
/// <param name="Name">Key, as <see cref="RuleBook.With"/> takes it.</param>
/// <param name="Value">The figure.</param>
/// <param name="Unit">Unit in words.</param>
/// <param name="Min">Smallest setting.</param>
/// <param name="Max">Largest setting.</param>
/// <param name="Note">What it stands on.</param>
public sealed record RuleParameter(string Name, double Value, string Unit, double Min, double Max, string? Note = null);

public enum RuleKind
{
    /// <summary>Nothing of these kinds of feed in this season (or less, when the choice is <c>reduce</c>).</summary>
    SeasonStop,

    /// <summary>Less, or moved, around a season.</summary>
    SeasonReduce,

    /// <summary>Days or times between feeds.</summary>
    Interval,

    /// <summary>A most that a feed or a season may bring.</summary>
    Cap,

    /// <summary>A state of pot or day that says "not today".</summary>
    Gate,

    /// <summary>Multiplies the dose.</summary>
    Factor,

    /// <summary>A level from which something is to be done.</summary>
    Threshold,

    /// <summary>Words for the card.</summary>
    Advice,
}

/// <summary>How a rule binds.</summary>
public enum RuleStrength
{
    /// <summary>May be bent by the plan where another rule needs it.</summary>
    Soft,

    /// <summary>Holds unless the grower changes it.</summary>
    Hard,
}
