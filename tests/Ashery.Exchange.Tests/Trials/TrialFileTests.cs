using Ashery.Exchange.Trials;
using Ashery.Trials;
using Ashery.Trials.Chances;
using Ashery.Trials.Results;
using CsCheck;

namespace Ashery.Exchange.Tests.Trials;

/// <summary>What is written reads back the same; what is broken is answered, never thrown.</summary>
public class TrialFileTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char["abcäß한 ,;\"'<&"], 1, 12].Where(static s => s.Trim().Length > 0);

    [Fact]
    public void A_trial_reads_back() =>
        Gen.Select(Words.Array[2, 4], Gen.Int[0, 30], Gen.Double[1, 90], Gen.Int[1, 5], Gen.Bool).Sample(
            (names, pots, spread, looks, blind) =>
            {
                var trial = new Trial
                {
                    Name = names[0],
                    Measure = new(MeasureKind.Measurement, names[1], "cm") { Summary = PotSummary.Slope },
                    Treatments = [.. names.Select((n, i) => new Treatment(FormattableString.Invariant($"f{i}"), n, i == 0) { Code = blind ? "K" : null })],
                    Wish = new() { Spread = Math.Round(spread) / 100, Difference = -0.2 },
                    Pots = [.. Enumerable.Range(0, pots).Select(i => new TrialPot(FormattableString.Invariant($"p{i}"), i % 2 == 0 ? "" : names[0], i % 3 == 0 ? null : 2.5, i % 5 == 0 ? null : names[1]))],
                    Seed = pots,
                    Blind = blind,
                    Looks = looks,
                    Spending = blind ? SpendingRule.Pocock : SpendingRule.OBrienFleming,
                    Layout = [.. Enumerable.Range(0, pots).Select(i => new TrialPlace(FormattableString.Invariant($"p{i}"), i / 2, "f0"))],
                };
                TrialReading[] readings = [.. Enumerable.Range(0, pots).Select(i => new TrialReading(FormattableString.Invariant($"p{i}"), i * 0.5, i % 2 == 0 ? null : new(2026, 5, 1 + i % 28)))];
                var written = TrialFile.Write(trial, readings);
                var read = TrialFile.Read(written);
                Assert.True(read.Ok, string.Join(' ', read.Problems));
                Assert.Equal(written, TrialFile.Write(read.Value.Trial, read.Value.Readings));
                Assert.Equal(trial.Pots, read.Value.Trial.Pots);
                Assert.Equal(trial.Layout, read.Value.Trial.Layout);
                Assert.Equal(trial.Wish.Spread, read.Value.Trial.Wish.Spread, 1e-9);
                Assert.Equal(readings, read.Value.Readings);
            },
            iter: 100);

    [Fact]
    public void Broken_files_are_answered() =>
        Gen.Select(Gen.Int[0, 5800], Gen.Char["{}[]\":,0x\\\u0001"]).Sample(
            (at, sign) =>
            {
                var text = TrialFile.Sample();
                at = Math.Min(at, text.Length - 1);
                var read = TrialFile.Read(text[..at] + sign + text[(at + 1)..]);
                if (read.Ok)
                {
                    _ = TrialAnalysis.Of(read.Value);
                }
                else
                {
                    Assert.NotEmpty(read.Problems);
                }
            },
            iter: 300);

    [Theory]
    [InlineData("pot,value\np1,3\np2,\n\np3,4.5")]
    [InlineData("Pot;Value\r\np1;3\r\np2;\r\np3;4.5\r\n")]
    [InlineData("value\tnote\tpot\n3\tfine\tp1\n4.5\t\tp3\n")]
    [InlineData("p1,3\n\"p3\",4.5\n")]
    public void Sheets_as_spreadsheets_write_them(string text) => Assert.Equal([new("p1", 3), new("p3", 4.5)], ResultsCsv.Read(text).Value!);

    [Fact]
    public void A_sheet_filled_in_is_read()
    {
        var trial = TrialFile.Read(TrialFile.Sample()).Value!.Trial;
        var sheet = ResultsCsv.Sheet(trial);
        Assert.Equal(18, ResultsCsv.Read(sheet.Replace(",,", ",2026-06-01,7", StringComparison.Ordinal)).Value!.Count);
        Assert.Empty(ResultsCsv.Read(sheet).Value!);
    }

    [Fact]
    public void Hostile_sheets_are_answered() =>
        Gen.String[Gen.Char["pot,value;\t\n\"12.-eE=\u0000ü"], 0, 200].Sample(
            static text =>
            {
                var read = ResultsCsv.Read(text);
                Assert.True(read.Ok || read.Problems.Count > 0);
            },
            iter: 2000);
}
