using System.Globalization;
using Ashery.Cards.Pictures;
using Ashery.Trials;
using Ashery.Trials.Designs;

namespace Ashery.Cards;

/// <summary>A trial on paper: the plan, tags to cut out, the record sheet, and the key of a blind trial.</summary>
public static class TrialSheets
{
    private const int Visits = 4;
    private const string Blank = "______";

    public static CardDocument Plan(TrialPlan plan, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = "Trial plan",
        Title = plan.Trial.Name,
        Particulars =
        [
            new("Pots", Whole(plan.Trial.Layout.Count)), new("Feeds", Whole(plan.Trial.Treatments.Count)), new("Pots a feed", Whole(plan.PotsLaidOut)),
            new("Drawn with seed", Whole(plan.Trial.Seed)), new("Printed on", Figures.Day(printedOn, year: true)),
        ],
        Sections = [.. PlanSections(plan)],
        Foot = ["Feeds were given to the pots of each block by lot. A block is pots that stand together and are of a size."],
        RunningHead = $"{plan.Trial.Name}, plan",
        Date = printedOn,
        Paper = paper ?? Paper.A4,
    };

    public static CardDocument Tags(Trial trial, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = "Pot tags",
        Title = trial.Name,
        Particulars = [new("Tags", Whole(trial.Layout.Count)), new("Printed on", Figures.Day(printedOn, year: true))],
        Sections = [.. TrialPictures.Tags(trial).Select(static p => new CardSection("", [new PictureBlock(p)])), new("What stands on them", [Places(trial)])],
        RunningHead = $"{trial.Name}, tags",
        Date = printedOn,
        Paper = paper ?? Paper.A4,
    };

    public static CardDocument Record(Trial trial, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = "Record sheet",
        Title = trial.Name,
        Particulars = [new("To write down", Measure(trial)), new("Printed on", Figures.Day(printedOn, year: true)), new("Written by", Blank + Blank)],
        Sections =
        [
            new("Figures", [new TableBlock(
                Measure(trial),
                [new("Pot"), new("Block"), new("Plant"), .. Enumerable.Range(1, Visits).Select(static v => new TableColumn("Day " + Whole(v)))],
                [
                    [.. new[] { "date", "", "" }, .. Enumerable.Repeat(Blank, Visits)],
                    .. trial.Layout.Select(p => (IReadOnlyList<string>)[p.Pot, p.Block == 0 ? "" : Whole(p.Block), TrialWords.Pot(trial.Pots.FirstOrDefault(x => x.Id == p.Pot)), .. Enumerable.Repeat(Blank, Visits)]),
                ])]),
            new("How", [new Listing([
                "Walk the pots in this order each time, and do all of a block on the same day.",
                "Decide before the first day what counts, as an open flower with its colour showing, and keep to it.",
                trial.Blind ? "Who counts does not look at the key until the last figure is written." : "Better that who counts does not know which pot got what.",
                "Write a dead or lost pot down with its day and cause; do not replace it.",
            ])]),
        ],
        RunningHead = $"{trial.Name}, record sheet",
        Date = printedOn,
        Paper = paper ?? Paper.A4,
    };

    /// <summary>Which code is which feed; to be put away until the end.</summary>
    public static CardDocument Key(Trial trial, DateOnly printedOn, Paper? paper = null) => new()
    {
        Kind = "Key, to be kept apart",
        Title = trial.Name,
        Particulars = [new("Printed on", Figures.Day(printedOn, year: true))],
        Sections = [new("Codes", [new TableBlock("Code and feed", [new("Code"), new("Feed")], [.. trial.Treatments.OrderBy(static t => t.Code, StringComparer.Ordinal).Select(static t => (IReadOnlyList<string>)[t.Code ?? "", t.Name])])])],
        Foot = ["Someone who does not count fills the cans and writes only the codes on them. The usual cautions of each feed still belong on its can."],
        RunningHead = $"{trial.Name}, key",
        Date = printedOn,
        Paper = paper ?? Paper.A5,
    };

    private static IEnumerable<CardSection> PlanSections(TrialPlan plan)
    {
        var trial = plan.Trial;
        if (plan.Warnings.Count > 0)
        {
            yield return new("Mind", [new Listing([.. plan.Warnings.Select(static w => w.Words)])], SectionWeight.Caution);
        }

        yield return new("What it can show", [new FactList([.. Facts(plan)])]);
        yield return new("Feeds", [new Listing([.. trial.Treatments.Select(t => t.Name + (t.IsControl ? " (the control)" : ""))])]);
        if (trial.Layout.Count > 0)
        {
            yield return new("Which pot gets what", [new PictureBlock(TrialPictures.Blocks(trial)), Places(trial)]);
        }

        if (trial.Looks > 1)
        {
            yield return new("Looks", [new TableBlock(
                "What a p must be below", [new("Look"), new("Part of the trial that is in", true), new("p below", true)],
                [.. plan.Looks.Select(static (l, i) => (IReadOnlyList<string>)[Whole(i + 1), Figures.Percent(l.Fraction, 0), Figures.Short(l.Level, 5)])])]);
        }

        yield return new("How", [new Listing([
            "Put the tags in before the first feed, and leave pots where they stand.",
            "Water, prune and shelter all pots alike: only the feed differs. Doses follow each feed's own card and label.",
            "Lay down what is counted or measured, and on which day the trial ends, before it begins.",
            "Stop for a pot that suffers: its plant comes before the trial. Write it down.",
        ], Numbered: true)]);
    }

    private static IEnumerable<Fact> Facts(TrialPlan plan)
    {
        var (trial, wish) = (plan.Trial, plan.Trial.Wish);
        yield return new("To be seen", $"{Figures.Percent(Math.Abs(wish.Difference), 0)} {(wish.Difference < 0 ? "less" : "more")} {trial.Measure.Name}");
        yield return new("Pots fed alike differ by", Figures.Percent(wish.Spread, 0), trial.Measure.Kind == MeasureKind.Count ? $"on top of the scatter of counting about {Figures.Short(wish.Mean, 1)}" : "standard deviation as part of the mean");
        yield return new("Pots a feed needed", plan.PotsNeeded is { } n ? Whole(n) : $"more than {Whole(TrialDesign.MostPotsAFeed)}", plan.PowerThen is { } p ? $"seen in {Figures.Short(p * 100, 0)} of 100 such trials" : null);
        if (plan.PowerHere is { } here)
        {
            yield return new("With the pots here", $"seen in {Figures.Short(here * 100, 0)} of 100", plan.SmallestSeen is { } least ? $"a gain of {Figures.Percent(least, 0)} would be seen in {Figures.Short(wish.Power * 100, 0)} of 100" : null);
        }
    }

    private static TableBlock Places(Trial trial) => new(
        "Pots, blocks and feeds", [new("Block"), new("Pot"), new("Plant"), new(trial.Blind ? "Code" : "Feed")],
        [.. trial.Layout.Select(p => (IReadOnlyList<string>)[p.Block == 0 ? "" : Whole(p.Block), p.Pot, TrialWords.Pot(trial.Pots.FirstOrDefault(x => x.Id == p.Pot)), trial.Blind && trial.Find(p.Treatment)?.Code is { } code ? code : trial.Find(p.Treatment)?.Name ?? p.Treatment])]);

    private static string Measure(Trial trial) => trial.Measure.Name + (trial.Measure.Unit.Length > 0 ? $" ({trial.Measure.Unit})" : "");

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}
