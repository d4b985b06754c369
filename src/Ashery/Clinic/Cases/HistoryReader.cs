using System.Globalization;
using Ashery.Clinic.Knowledge;
using Ashery.Clinic.Tests;
using Ashery.Clinic.Words;
using Ashery.Crops;

namespace Ashery.Clinic.Cases;

/// <summary>What the pot's own record and its model say, as answers of less trust than what is seen. They give way to a measurement.</summary>
internal static class HistoryReader
{
    // Pore water at container capacity over the saturated extract, as data/rootzone has it (cavins-2000, from memory).
    private const double PoreOverExtract = 1.3;

    // Days that make a pot wet or dry "for days", and a feed "not for weeks": our own reading of the words.
    private const int Wet = 7, Dry = 4, Unfed = 28, Young = 90, Old = 550;

    public static IEnumerable<CaseAnswer> Read(ClinicKnowledge knowledge, PotHistory? history, Crop? crop)
    {
        if (history is null)
        {
            yield break;
        }

        var trust = Math.Clamp(history.Trust, 0, 1);
        (string Question, double? Value, string Unit)[] figures =
        [
            ("medium_N", history.NitrogenMgPerLitre / PoreOverExtract, "mg N/L in the extract by the pot's record"),
            ("EC", history.ExtractEc, "mS/cm by the pot's record"),
            ("medium_pH", history.PH, "by the pot's record"),
        ];
        foreach (var (question, value, unit) in figures)
        {
            if (value is { } figure && double.IsFinite(figure) && knowledge.IndexOf(question) is var q and >= 0 && Scales.Of(question, crop) is { } scale)
            {
                var weights = new double[knowledge.Questions[q].Choices];
                var fit = scale.Fit(new NumberWords(figure, figure));
                for (var i = 0; i < fit.Length; i++)
                {
                    weights[knowledge.Questions[q].IndexOf(scale.Choices[i])] = fit[i];
                }

                yield return new(q, weights, string.Create(CultureInfo.InvariantCulture, $"{figure:0.#} {unit}"), trust);
            }
        }

        if (history.WetDays is { } wet && wet >= Wet)
        {
            yield return Pick(knowledge, "pot_weight", "heavy", FormattableString.Invariant($"wet on {wet} of 14 days"), trust);
            yield return Pick(knowledge, "watering", "wet", FormattableString.Invariant($"wet on {wet} of 14 days"), trust);
        }
        else if (history.DryDays is { } dry && dry >= Dry)
        {
            yield return Pick(knowledge, "watering", "dry", FormattableString.Invariant($"dry on {dry} of 14 days"), trust);
        }

        if (history.AgeDays is { } age)
        {
            yield return Pick(knowledge, "repotted", age < Young ? "fresh" : age < Old ? "year" : "old", FormattableString.Invariant($"potted {age} days ago"), 1);
        }

        if (history.DaysSinceFeed is { } since)
        {
            yield return Pick(knowledge, "feeding", since > Unfed ? "none" : "right", FormattableString.Invariant($"last fed {since} days ago"), trust);
        }
    }

    private static CaseAnswer Pick(ClinicKnowledge knowledge, string question, string choice, string given, double trust)
    {
        var q = knowledge.IndexOf(question);
        var weights = new double[knowledge.Questions[q].Choices];
        weights[knowledge.Questions[q].IndexOf(choice)] = 1;
        return new(q, weights, given, trust);
    }
}
