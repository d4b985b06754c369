using Ashery.Journal;
using Ashery.Photos;
using Ashery.Records;
using SkiaSharp;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Web.Tests.Support;

/// <summary>A spring of made entries about the demo garden's first two pots, so that diaries, charts and reports have something to show.</summary>
internal static class SampleDiary
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(StoppedClock.Now.Date);

    /// <summary>The first entry written, for pages about one.</summary>
    public static Guid First { get; } = new("6f9a2c1e-0000-4000-8000-000000000001");

    public static void Write(Site site)
    {
        var (one, two, feed) = (site.Garden.Pots[0].Id, site.Garden.Pots[1].Id, site.Garden.Feeds[0].Id);
        List<Entry> entries = [Of(60, new PlantEvent(PlantEventKind.Repotted, 12, "barkMix", "By the stairs"), one) with { Id = First, Note = "Roots were round the pot." }];
        for (var i = 0; i < 6; i++)
        {
            entries.Add(Of(56 - (i * 10), new FeedGiven(feed, [new(one, 9, 3), new(two, 6, 2)]), one, two));
            entries.Add(Of(54 - (i * 10), new Measured(MeasuredKind.LeachateEc, 1.8 + (i * 0.6)), one));
            entries.Add(Of(54 - (i * 10), new Measured(MeasuredKind.LeachatePh, 6.4 - (i * 0.1)), one));
            entries.Add(Of(52 - (i * 10), new Measured(MeasuredKind.Flowers, i * i), one));
        }

        entries.Add(Of(20, new Sighting("Aphids", 2), one) with { Note = "On the youngest shoots." });
        entries.Add(Of(18, new PlantEvent(PlantEventKind.Flushed, 6), one));
        var made = PhotoMaker.Make(Picture());
        var hash = site.Photos.Keep(made.Value!.Jpeg, made.Value.Small).Value!;
        entries.Add(Of(1, new Photograph(hash, made.Value.Width, made.Value.Height), one) with { Note = "First open flower" });
        Assert.IsType<JournalOutcome.Written>(site.Journal.Write([.. entries.Select(EntryChange.New)]));
    }

    private static Entry Of(int daysAgo, EntryFacts facts, params string[] pots) => new() { Id = Guid.NewGuid(), Day = Today.AddDays(-daysAgo), Pots = pots, Facts = facts };

    /// <summary>A drawn flower: no photograph of anybody's.</summary>
    private static byte[] Picture()
    {
        using var bitmap = new SKBitmap(800, 600);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(new SKColor(0x3A, 0x6B, 0x4A));
        using var paint = new SKPaint { Color = new SKColor(0xE0, 0x6A, 0x55), IsAntialias = true };
        for (var i = 0; i < 5; i++)
        {
            canvas.DrawOval(400 + (float)(130 * Math.Cos(i * 1.2566)), 300 + (float)(130 * Math.Sin(i * 1.2566)), 105, 105, paint);
        }

        paint.Color = new SKColor(0xF5, 0xD0, 0x60);
        canvas.DrawCircle(400, 300, 60, paint);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 85);
        return data.ToArray();
    }
}
