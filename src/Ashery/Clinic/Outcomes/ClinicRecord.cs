namespace Ashery.Clinic.Outcomes;

/// <summary>How the clinic has done: what it said against what was confirmed.</summary>
/// <param name="Visits">Outcomes in all.</param>
/// <param name="Open">Not judged yet.</param>
/// <param name="Cleared">New growth came clean.</param>
/// <param name="Partly">Better, not clean.</param>
/// <param name="NotCleared">No better.</param>
/// <param name="Confirmed">Of which the cause was found out.</param>
/// <param name="FirstRight">Of these, how often the first cause was it.</param>
/// <param name="ThreeRight">Of these, how often it was among the first three.</param>
/// <param name="FirstRightRange">Between which shares the first is right with 95 % (Wilson 1927); null with nothing confirmed.</param>
/// <param name="Brier">Mean squared difference between what the first cause was given and whether it was it; null with nothing confirmed.</param>
/// <param name="Expected">How often the first should have been right by what was said, in cases.</param>
/// <param name="Rows">Said against came true, by thirds: unsure, likely, sure.</param>
public sealed record ClinicRecord(
    int Visits, int Open, int Cleared, int Partly, int NotCleared, int Confirmed, int FirstRight, int ThreeRight, (double Low, double High)? FirstRightRange, double? Brier, double Expected, IReadOnlyList<RecordRow> Rows)
{
    /// <summary>Below this many confirmed cases the figures tell next to nothing (our own choice).</summary>
    public const int Few = 10;

    // 97.5 % of a normal distribution lie below it.
    private const double Z = 1.959964;

    /// <summary>The record in a sentence, honest about few cases.</summary>
    public string Words => Confirmed == 0
        ? FormattableString.Invariant($"{Visits} {(Visits == 1 ? "visit" : "visits")}, none with a confirmed cause yet.")
        : FormattableString.Invariant($"The first cause was right in {FirstRight} of {Confirmed} confirmed cases; by its own odds it should have been in {Expected:0.#}.")
          + (Confirmed < Few ? " Too few to tell how good it is." : Expected < Confirmed * FirstRightRange!.Value.Low || Expected > Confirmed * FirstRightRange.Value.High ? " Its odds do not fit what happened." : " Its odds fit what happened.");

    public static ClinicRecord Of(IReadOnlyCollection<ClinicOutcome> outcomes)
    {
        int open = 0, cleared = 0, partly = 0, not = 0, confirmed = 0, first = 0, three = 0;
        double squares = 0, expected = 0;
        var rows = new (int Count, double Said, int Right)[3];
        foreach (var outcome in outcomes)
        {
            open += outcome.Cleared == Outcomes.Cleared.NotYet ? 1 : 0;
            cleared += outcome.Cleared == Outcomes.Cleared.Yes ? 1 : 0;
            partly += outcome.Cleared == Outcomes.Cleared.Partly ? 1 : 0;
            not += outcome.Cleared == Outcomes.Cleared.No ? 1 : 0;
            if (outcome.ConfirmedCauseId is not { } cause || outcome.Ranked.Count == 0)
            {
                continue;
            }

            var said = outcome.Ranked[0].Probability;
            var right = outcome.Ranked[0].CauseId == cause;
            confirmed++;
            first += right ? 1 : 0;
            three += outcome.Ranked.Take(3).Any(r => r.CauseId == cause) ? 1 : 0;
            squares += (said - (right ? 1 : 0)) * (said - (right ? 1 : 0));
            expected += said;
            var row = said < 1.0 / 3 ? 0 : said < 2.0 / 3 ? 1 : 2;
            rows[row] = (rows[row].Count + 1, rows[row].Said + said, rows[row].Right + (right ? 1 : 0));
        }

        return new(
            outcomes.Count, open, cleared, partly, not, confirmed, first, three, confirmed == 0 ? null : Wilson(first, confirmed), confirmed == 0 ? null : squares / confirmed, expected,
            [.. rows.Select(static (r, i) => new RecordRow(i / 3.0, (i + 1) / 3.0, r.Count, r.Count == 0 ? null : r.Said / r.Count, r.Right))]);
    }

    /// <summary>The interval of a share by the score of Wilson (1927): it holds for few cases and near 0 and 1.</summary>
    private static (double Low, double High) Wilson(int right, int of)
    {
        var p = (double)right / of;
        var middle = (p + (Z * Z / (2 * of))) / (1 + (Z * Z / of));
        var half = Z / (1 + (Z * Z / of)) * Math.Sqrt((p * (1 - p) / of) + (Z * Z / (4.0 * of * of)));
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}

/// <summary>Cases of which the first cause was given between two odds.</summary>
/// <param name="From">Lower odds.</param>
/// <param name="To">Upper odds.</param>
/// <param name="Count">How many were confirmed.</param>
/// <param name="Said">Mean of what was said; null with none.</param>
/// <param name="Right">How many were right.</param>
public sealed record RecordRow(double From, double To, int Count, double? Said, int Right);
