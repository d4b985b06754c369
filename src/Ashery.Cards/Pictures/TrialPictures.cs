using System.Globalization;
using Ashery.Cards.Drawing;
using Ashery.Trials;

namespace Ashery.Cards.Pictures;

/// <summary>Drawings of a trial on paper: its blocks in rows, and tags to cut out.</summary>
public static class TrialPictures
{
    private const double Wide = 720;

    // Rows of tags on an A4 sheet.
    private const int TagColumns = 3;
    private const int TagRows = 8;
    private const double TagWide = Wide / TagColumns;
    private const double TagHigh = 108;

    // A block wider than this goes on in the next line.
    private const int MostCells = 6;

    /// <summary>Each block a row of its pots, with what each pot gets.</summary>
    public static Picture Blocks(Trial trial, string id = "blocks")
    {
        var marks = new List<Mark>();
        var across = Math.Min(MostCells, Math.Max(2, trial.Treatments.Count));
        var wide = (Wide - 80) / across;
        var y = 4.0;
        foreach (var block in trial.Layout.GroupBy(static p => p.Block))
        {
            var cells = block.ToList();
            marks.Add(new Words(new(4, y + 28), block.Key == 0 ? "pots" : "block " + Whole(block.Key), 13, Tone.Soft));
            for (var i = 0; i < cells.Count; i++)
            {
                var x = 76 + (i % across * wide);
                if (i > 0 && i % across == 0)
                {
                    y += 50;
                }

                marks.Add(new Shape([new(x, y), new(x + wide - 6, y), new(x + wide - 6, y + 44), new(x, y + 44)], Tone.Sheet, Tone.Edge));
                marks.Add(new Words(new(x + 8, y + 18), TextWidth.Fit(Safe.Plain(cells[i].Pot), wide - 22, 13, Face.Bold), 13, Tone.Ink, Anchor.Start, Face.Bold));
                marks.Add(new Words(new(x + 8, y + 36), TextWidth.Fit(TrialWords.FeedOrCode(trial, cells[i].Treatment), wide - 22, 13), 13));
            }

            y += 52;
        }

        return new(id, Wide, y, "Blocks and pots", string.Join(' ', trial.Layout.Select(p => $"{Safe.Plain(p.Pot)}: {TrialWords.FeedOrCode(trial, p.Treatment)}.")), marks);
    }

    /// <summary>Tags to cut along the dashes, a sheet a picture.</summary>
    public static IReadOnlyList<Picture> Tags(Trial trial)
    {
        var sheets = new List<Picture>();
        foreach (var sheet in trial.Layout.Chunk(TagColumns * TagRows))
        {
            var marks = new List<Mark>();
            var rows = (sheet.Length + TagColumns - 1) / TagColumns;
            for (var i = 0; i < sheet.Length; i++)
            {
                Tag(marks, trial, sheet[i], i % TagColumns * TagWide, i / TagColumns * TagHigh);
            }

            sheets.Add(new($"tags-{Whole(sheets.Count + 1)}", Wide, (rows * TagHigh) + 2, "Tags to cut out", string.Join(' ', sheet.Select(p => $"{Safe.Plain(p.Pot)}: {TrialWords.FeedOrCode(trial, p.Treatment)}.")), marks));
        }

        return sheets;
    }

    private static void Tag(List<Mark> marks, Trial trial, TrialPlace place, double x, double y)
    {
        marks.Add(new Shape([new(x + 1, y + 1), new(x + TagWide - 1, y + 1), new(x + TagWide - 1, y + TagHigh - 1), new(x + 1, y + TagHigh - 1)], Tone.None, Tone.Edge, 1, Dashed: true));
        var pot = trial.Pots.FirstOrDefault(p => p.Id == place.Pot);
        marks.Add(new Words(new(x + 12, y + 34), TextWidth.Fit(Safe.Plain(place.Pot), 130, 24, Face.Bold), 24, Tone.Ink, Anchor.Start, Face.Bold));
        marks.Add(new Words(new(x + TagWide - 12, y + 30), place.Block == 0 ? "" : "block " + Whole(place.Block), 12, Tone.Soft, Anchor.End));
        marks.Add(new Words(new(x + 12, y + 62), TextWidth.Fit(TrialWords.FeedOrCode(trial, place.Treatment), TagWide - 24, 18, Face.Bold), 18, Tone.Ink, Anchor.Start, Face.Bold));
        marks.Add(new Words(new(x + 12, y + 82), TextWidth.Fit(TrialWords.Pot(pot), TagWide - 24, 12), 12));
        marks.Add(new Words(new(x + 12, y + 99), TextWidth.Fit(Safe.Plain(trial.Name), TagWide - 24, 11), 11, Tone.Soft));
    }

    private static string Whole(int n) => n.ToString(CultureInfo.InvariantCulture);
}

/// <summary>Words of trials that paper and pictures share.</summary>
internal static class TrialWords
{
    /// <summary>The code alone in a blind trial.</summary>
    public static string FeedOrCode(Trial trial, string feed) => trial.Find(feed) is { } t ? trial.Blind && t.Code is { } code ? $"code {code}" : Safe.Plain(t.Name) : Safe.Plain(feed);

    public static string Pot(TrialPot? pot) => pot is null ? "" : Safe.Plain(string.Join(", ", new[] { pot.Name, pot.Litres is { } l ? Figures.Short(l, 1) + " L" : "", pot.Place ?? "" }.Where(static w => w.Length > 0)));
}
