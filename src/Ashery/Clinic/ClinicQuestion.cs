namespace Ashery.Clinic;

/// <summary>Something to look at, feel, measure or remember.</summary>
public sealed record ClinicQuestion
{
    /// <summary>Key, the field of a case file: <c>leaf_age</c>, <c>medium_pH</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Two or three words for it, to set before an answer: "yellowing".</summary>
    public required string Label { get; init; }

    /// <summary>The question as it is asked.</summary>
    public required string Words { get; init; }

    /// <summary>How to look or measure; null when the question says it.</summary>
    public string? How { get; init; }

    /// <summary>Which part of the page or file it belongs to.</summary>
    public required ClinicPart Part { get; init; }

    /// <summary>A drawing that shows what is meant; null for none. Drawn by <c>Ashery.Cards</c>.</summary>
    public string? PictureId { get; init; }

    /// <summary>What may be answered, in the order to show.</summary>
    public required IReadOnlyList<ClinicChoice> Choices { get; init; }

    /// <summary>Unit of a figure that may be given instead of a choice ("" for a pure number); null when only choices are possible.</summary>
    public string? Unit { get; init; }

    /// <summary>Least and most figure that can be.</summary>
    public (double Low, double High)? Limits { get; init; }

    /// <summary>Trouble of finding out, in minutes of a grower's time and their worth in a laboratory's bill; our own estimate.</summary>
    public required double Effort { get; init; }

    /// <summary>Worth asking first on a page: a look without tools.</summary>
    public bool Basic { get; init; }
}

/// <summary>One answer that may be given.</summary>
/// <param name="Id">Key, unique in its question.</param>
/// <param name="Words">As a grower says it.</param>
/// <param name="PictureId">A drawing of it; null for none.</param>
public sealed record ClinicChoice(string Id, string Words, string? PictureId);

/// <summary>Where a question belongs.</summary>
public enum ClinicPart
{
    /// <summary>Leaves.</summary>
    Leaves,

    /// <summary>The rest of the plant and its neighbours.</summary>
    Plant,

    /// <summary>Roots, medium, weight of the pot.</summary>
    Pot,

    /// <summary>Weather, watering, feed, place: what came before.</summary>
    Before,

    /// <summary>Meters and kits.</summary>
    Meters,

    /// <summary>A laboratory's figures of medium, leaf or water.</summary>
    Laboratory,
}
