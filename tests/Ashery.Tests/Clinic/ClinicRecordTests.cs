using Ashery.Clinic;
using Ashery.Clinic.Outcomes;

namespace Ashery.Tests.Clinic;

public class ClinicRecordTests
{
    private static readonly DateOnly Day = new(2026, 6, 3);

    [Fact]
    public void Nothing_confirmed_says_nothing()
    {
        var record = ClinicRecord.Of([new(Day, [new("drought", 0.5)], ["water-core"])]);
        Assert.Equal((1, 1, 0), (record.Visits, record.Open, record.Confirmed));
        Assert.Null(record.Brier);
        Assert.Contains("none with a confirmed cause", record.Words, StringComparison.Ordinal);
    }

    /// <summary>8 of 10 has the 95 % score interval 0.4902 to 0.9433 (Wilson; checked by hand with z = 1.96 and printed so in textbooks, from memory).</summary>
    [Fact]
    public void Eight_of_ten_has_the_known_interval_and_brier_score()
    {
        var record = ClinicRecord.Of([.. Enumerable.Range(0, 10).Select(i => new ClinicOutcome(
            Day, [new("drought", 0.7), new("high-ec", 0.2)], [], i < 8 ? Cleared.Yes : Cleared.No, Day, i < 8 ? "drought" : "high-ec"))]);
        Assert.Equal((10, 8, 10), (record.Confirmed, record.FirstRight, record.ThreeRight));
        Assert.Equal(0.4902, record.FirstRightRange!.Value.Low, 0.0005);
        Assert.Equal(0.9433, record.FirstRightRange.Value.High, 0.0005);
        Assert.Equal(((8 * 0.09) + (2 * 0.49)) / 10, record.Brier!.Value, 1e-12);
        Assert.Equal(7, record.Expected, 1e-9);
        Assert.Contains("fit what happened", record.Words, StringComparison.Ordinal);
        Assert.Equal([0, 0, 10], record.Rows.Select(static r => r.Count));
    }

    [Fact]
    public void Odds_that_boast_are_told_so()
    {
        var record = ClinicRecord.Of([.. Enumerable.Range(0, 20).Select(i => new ClinicOutcome(Day, [new("drought", 0.95)], [], Cleared.No, Day, i < 8 ? "drought" : "heat"))]);
        Assert.Contains("do not fit", record.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_visit_becomes_an_outcome()
    {
        var report = PlantClinic.Diagnose(new() { Answers = [ClinicAnswer.Pick("underside", "mites")] }).Value!;
        var outcome = ClinicOutcome.Of(Day, report, ["wash-mites"]);
        Assert.Equal(report.Causes[0].Id, outcome.Ranked[0].CauseId);
        Assert.Equal(Cleared.NotYet, outcome.Cleared);
        Assert.All(outcome.Ranked, static r => Assert.True(r.Probability >= 0.01));
    }
}
