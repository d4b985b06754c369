using Ashery.Problems;

namespace Ashery.Clinic;

/// <summary>A plant that ails: what was seen, measured and done. Whatever is not known is left out; the order never matters.</summary>
public sealed record ClinicCase
{
    /// <summary>Key of a crop of the catalogue; null when it is not one of them.</summary>
    public string? CropId { get; init; }

    /// <summary>The crop in the grower's words, "potted marigold": read for crop, age and group.</summary>
    public string? CropWords { get; init; }

    /// <summary>Answers in any order. Two to one question count as what both allow, or, where they contradict, as either.</summary>
    public IReadOnlyList<ClinicAnswer> Answers { get; init; } = [];

    /// <summary>How EC and nutrients of the medium were extracted: <c>sme</c> (the default), <c>pour-through</c>, <c>1:2</c>, <c>1:5</c>.</summary>
    public string? MediumMethod { get; init; }

    /// <summary>What the pot's own record says; null when there is none.</summary>
    public PotHistory? History { get; init; }

    /// <summary>What was noticed while the case was read, handed on to the report.</summary>
    public IReadOnlyList<Problem> Notes { get; init; } = [];
}

/// <summary>One answer: picked from the list, measured, or told in words. Exactly one of the three, or none for "I don't know".</summary>
/// <param name="QuestionId">Key of a <see cref="ClinicQuestion"/>, or another name that <c>data/clinic/fields.json</c> gives it.</param>
public sealed record ClinicAnswer(string QuestionId)
{
    /// <summary>Keys of the answers it may be: one, or several when it is one of them.</summary>
    public IReadOnlyList<string> Picked { get; init; } = [];

    /// <summary>A measured figure, in the unit of the question.</summary>
    public double? Number { get; init; }

    /// <summary>Free words, read by the word lists of <c>data/clinic</c>.</summary>
    public string? Words { get; init; }

    /// <summary>Asked and not known: counts for nothing and is not asked again.</summary>
    public bool NotKnown { get; init; }

    public static ClinicAnswer Pick(string question, params IReadOnlyList<string> answers) => new(question) { Picked = answers };

    public static ClinicAnswer Measure(string question, double number) => new(question) { Number = number };

    public static ClinicAnswer Tell(string question, string words) => new(question) { Words = words };

    public static ClinicAnswer DontKnow(string question) => new(question) { NotKnown = true };
}

/// <summary>What a caller knows of the pot from its record and from the pot model. Every part may be missing.</summary>
public sealed record PotHistory
{
    /// <summary>Mineral nitrogen in the water of the medium, mg N/L, most likely value.</summary>
    public double? NitrogenMgPerLitre { get; init; }

    /// <summary>EC of the saturated medium extract, mS/cm at 25 °C, most likely value.</summary>
    public double? ExtractEc { get; init; }

    /// <summary>pH of the medium, most likely value.</summary>
    public double? PH { get; init; }

    /// <summary>Days of the last fourteen on which the medium stayed wet.</summary>
    public int? WetDays { get; init; }

    /// <summary>Days of the last fourteen on which it went dry.</summary>
    public int? DryDays { get; init; }

    /// <summary>Days since the plant was potted or repotted.</summary>
    public int? AgeDays { get; init; }

    /// <summary>Days since the last feed.</summary>
    public int? DaysSinceFeed { get; init; }

    /// <summary>How far the figures are to be trusted, 0 to 1: a model alone about 0.6, corrected by readings about 0.85 (our own choice).</summary>
    public double Trust { get; init; } = 0.6;
}
