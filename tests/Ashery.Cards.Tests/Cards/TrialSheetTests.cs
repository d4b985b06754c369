using System.Xml.Linq;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;
using Ashery.Cards.Tests.Support;
using Ashery.Trials;
using Ashery.Trials.Designs;
using Ashery.Trials.Results;
using UglyToad.PdfPig;

namespace Ashery.Cards.Tests.Cards;

/// <summary>A trial on paper and its picture.</summary>
public class TrialSheetTests
{
    private static readonly DateOnly Day = new(2026, 5, 2);

    private static TrialPlan Plan(bool blind) => TrialDesign.Plan(
        new()
        {
            Name = "Three feeds at the rail",
            Measure = new(MeasureKind.Measurement, "height", "cm"),
            Treatments = [new("w", "plain water", true), new("o", "old mix"), new("n", "new mix")],
            Wish = new() { Difference = 0.25, Spread = 0.12 },
            Pots = [.. Enumerable.Range(1, 13).Select(static i => new TrialPot(FormattableString.Invariant($"R{i}"), "ivy pelargonium", i < 7 ? 3 : 5, i < 7 ? "rail" : "steps"))],
            Blind = blind,
            Seed = 3,
        },
        200).Value!;

    [Fact]
    public void Plan_as_text() => Approval.Check(CardText.Write(TrialSheets.Plan(Plan(blind: false), Day)), "trial-plan", "txt");

    [Fact]
    public void Blind_record_sheet_as_text() => Approval.Check(CardText.Write(TrialSheets.Record(Plan(blind: true).Trial, Day)), "trial-record", "txt");

    [Fact]
    public void Tags_as_svg() => Approval.Check(CardSvg.Write(TrialSheets.Tags(Plan(blind: true).Trial, Day)), "trial-tags", "svg");

    [Fact]
    public void Estimates_as_svg() => Approval.Check(EstimatePicture.Svg(Report(MeasureKind.Count), SvgFor.File), "trial-estimates", "svg");

    /// <summary>Blind papers give no feed away; only the key does.</summary>
    [Fact]
    public void Blind_papers_tell_codes_alone()
    {
        var plan = Plan(blind: true);
        foreach (var html in new[] { CardHtml.Write(TrialSheets.Tags(plan.Trial, Day)), CardHtml.Write(TrialSheets.Record(plan.Trial, Day)) })
        {
            Assert.DoesNotContain("new mix", html, StringComparison.Ordinal);
        }

        Assert.Contains("new mix", CardText.Write(TrialSheets.Key(plan.Trial, Day)), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_tags_fill_several_pages()
    {
        var trial = Plan(blind: false).Trial;
        trial = trial with { Layout = [.. Enumerable.Range(1, 60).Select(static i => new TrialPlace(FormattableString.Invariant($"pot {i}"), 1 + (i / 3), "n"))] };
        using var pdf = PdfDocument.Open(CardPdf.Write(TrialSheets.Tags(trial, Day)));
        Assert.True(pdf.NumberOfPages >= 3);
        Assert.Contains("pot 60", string.Join(' ', pdf.GetPages().Select(static p => p.Text)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MeasureKind.Count)]
    [InlineData(MeasureKind.Measurement)]
    public void The_picture_says_what_it_shows_within_its_frame(MeasureKind kind)
    {
        var report = Report(kind);
        var picture = EstimatePicture.Draw(report);
        Assert.Contains("new mix against plain water: " + TrialAnswer.Figure(report.Comparisons[1].Estimate!.Value), picture.Description, StringComparison.Ordinal);
        var svg = EstimatePicture.Svg(report, SvgFor.File);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.Equal("img", XDocument.Parse(svg).Root!.Attribute("role")!.Value);
        foreach (var spot in picture.Marks.SelectMany(static m => m is Group g ? g.Marks : [m]).SelectMany(Spots))
        {
            Assert.InRange(spot.X, 0, picture.Width);
            Assert.InRange(spot.Y, 0, picture.Height);
        }
    }

    private static TrialReport Report(MeasureKind kind)
    {
        var trial = Plan(blind: false).Trial with { Measure = new(kind, kind == MeasureKind.Count ? "open flowers" : "height", kind == MeasureKind.Count ? "" : "cm") };
        return TrialAnalysis.Of(new(trial, [.. trial.Layout.Select((p, i) => new TrialReading(p.Pot, (p.Treatment == "n" ? 31 : p.Treatment == "o" ? 18 : 16) + (i * 7 % 5)))])).Value!;
    }

    private static IEnumerable<Spot> Spots(Mark mark) => mark switch
    {
        Shape s => s.Corners,
        Strokes s => s.Lines.SelectMany(static l => new[] { l.From, l.To }),
        Disc d => [d.Centre],
        Words w => [w.At],
        _ => [],
    };
}
