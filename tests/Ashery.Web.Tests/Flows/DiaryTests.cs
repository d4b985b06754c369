using System.Globalization;
using System.Net;
using System.Text;
using Ashery.Journal;
using Ashery.Records;
using SkiaSharp;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Web.Tests.Flows;

public sealed class DiaryTests(TheBrowser browser)
{
    private static readonly DateOnly Today = DateOnly.FromDateTime(StoppedClock.Now.Date);

    /// <summary>The kind, the figure, done; with scripts by the queue of the phone, without them by the form alone.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Flowers_are_noted_in_three_taps(bool scripts)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: scripts);
        var pot = site.Garden.Pots[0];
        site.Journal.Write([EntryChange.New(Of(Today.AddDays(-3), new Measured(MeasuredKind.Flowers, 11), pot.Id))]);
        await w.GoAsync($"/pots/{pot.Id}/note");
        await w.Page.Locator("#note-flowers > summary").ClickAsync();
        await w.Page.Locator("#note-flowers").GetByRole(AriaRole.Button, new() { Name = "1 more", Exact = true }).ClickAsync();
        await w.Page.Locator("#note-flowers").GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).ClickAsync();
        await w.HeadingAsync($"Diary of {pot.Name}");
        await w.SeesAsync("Flowers 12");
        var newest = site.Journal.Query(new JournalQuery { Pots = [pot.Id], AtMost = 1 })[0];
        Assert.Equal((new Measured(MeasuredKind.Flowers, 12), Today), (newest.Entry.Facts, newest.Entry.Day));
    }

    [Fact]
    public async Task A_figure_that_cannot_be_is_told_at_its_field()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        var pot = site.Garden.Pots[0].Id;
        await w.GoAsync($"/pots/{pot}/note?kind=leachatePh");
        await w.Page.Locator("#note-leachatePh input[name=value]").FillAsync("65");
        await w.Page.Locator("#note-leachatePh").GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        await Expect(w.Page.Locator("#f-leachatePh-value-wrong")).ToContainTextAsync("outside 2 to 12");
        await Expect(w.Page.Locator("#note-leachatePh input[name=value]")).ToHaveValueAsync("65");
        Assert.Equal(0, site.Journal.Count(new JournalQuery { Pots = [pot] }));
    }

    [Fact]
    public async Task Repotting_changes_diary_and_garden_and_each_is_undone_by_itself()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var pot = site.Garden.Pots[0];
        await w.GoAsync($"/pots/{pot.Id}/note?kind=repotted");
        await w.Page.Locator("#note-repotted").GetByLabel("Litres of medium it holds now").FillAsync("19");
        await w.Page.Locator("#note-repotted").GetByLabel("Medium", new() { Exact = true }).SelectOptionAsync("barkMix");
        await w.Page.Locator("#note-repotted").GetByRole(AriaRole.Button, new() { Name = "Done" }).ClickAsync();
        await w.SeesAsync("Repotted: 19 L, bark mix");
        var after = site.Garden.Pots[0];
        Assert.Equal((19.0, Pots.MediumKind.BarkMix, Today), (after.Volume.Litres, after.Medium, after.LastRepotted));
        await w.Page.Locator(".saved").GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await w.SeesAsync("Took back");
        Assert.Equal(0, site.Journal.Count(new JournalQuery { Pots = [pot.Id] }));
        Assert.Equal(19, site.Garden.Pots[0].Volume.Litres);
    }

    [Fact]
    public async Task What_died_leaves_the_plan_and_keeps_its_diary()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        var pot = site.Garden.Pots[0];
        await w.GoAsync($"/pots/{pot.Id}/note?kind=died");
        await w.Button("It died").ClickAsync();
        await w.SeesAsync("no longer in the garden");
        Assert.DoesNotContain(site.Garden.Pots, p => p.Id == pot.Id);
        Assert.Equal(1, site.Journal.Count(new JournalQuery { Pots = [pot.Id] }));
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync($"/pots/{pot.Id}/note")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync("/pots/never-was/diary")).StatusCode);
    }

    /// <summary>An entry changed in two windows: the second sees both versions, and nothing is lost.</summary>
    [Fact]
    public async Task Two_change_the_same_entry_and_the_second_sees_both()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var pot = site.Garden.Pots[0].Id;
        var entry = Of(Today, new Measured(MeasuredKind.LeachateEc, 2.1), pot);
        site.Journal.Write([EntryChange.New(entry)]);
        await w.GoAsync($"/diary/{entry.Id:D}");
        site.Records.Journal(IRecords.Home, "Mo").Write([new EntryChange(entry.Id, 1, entry with { Facts = new Measured(MeasuredKind.LeachateEc, 2.4) })]);

        await w.Page.GetByLabel("Value").FillAsync("2.2");
        await w.Button("Save the entry").ClickAsync();
        await w.SeesAsync("What stands now, by Mo");
        await w.SeesAsync("Leachate EC 2.4 mS/cm");
        await Expect(w.Page.GetByLabel("Value")).ToHaveValueAsync("2.2");
        await w.Button("Save the entry").ClickAsync();
        await w.HeadingAsync($"Diary of {site.Garden.Pots[0].Name}");
        Assert.Equal([2.2, 2.4, 2.1], site.Journal.Revisions(entry.Id).Select(static r => ((Measured)r.Entry.Facts).Value));

        // Removed, and brought back by the history.
        await w.GoAsync($"/diary/{entry.Id:D}");
        await w.Button("Remove this entry").ClickAsync();
        await w.SeesAsync("Took back");
        await w.GoAsync($"/diary/{entry.Id:D}");
        await w.SeesAsync("This entry was removed");
        await w.Button("Undo this").ClickAsync();
        await w.SeesAsync("Leachate EC 2.2 mS/cm");
    }

    [Fact]
    public async Task A_table_is_looked_at_before_it_is_written_and_written_once()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, 1280, scripts: false);
        var pot = site.Garden.Pots[0];
        await w.GoAsync("/measurements");
        await w.Page.GetByLabel("Paste the table").FillAsync($"day,pot,leachateEc,flowers\n2026-05-02,{pot.Id},2.4,7\n2026-05-03,nobody,1,\n");
        await w.Button("Look at it").ClickAsync();
        await w.SeesAsync("There is no pot 'nobody'");
        await w.Page.GetByLabel("Paste the table").FillAsync($"day,pot,leachateEc,flowers\n2026-05-02,{pot.Id},2.4,7\n2026-05-03,{pot.Name},1,\n");
        await w.Button("Look at it").ClickAsync();
        await w.SeesAsync("3 figures would be written.");
        Assert.Equal(0, site.Journal.Count(new JournalQuery()));
        await w.Button("Write 3 figures").ClickAsync();
        await w.SeesAsync("3 figures written");
        var csv = await site.Http.GetStringAsync("/download/measurements.csv");
        Assert.Contains($"2026-05-02,,{pot.Id},2.4,", csv, StringComparison.Ordinal);

        await w.Page.GetByLabel("Paste the table").FillAsync(csv);
        await w.Button("Look at it").ClickAsync();
        await w.SeesAsync("0 figures would be written; 3 of the table are in the diary already.");
    }

    /// <summary>Sent from the phone's page; served only while an entry names it, and to nobody who only guesses the address.</summary>
    [Fact]
    public async Task A_photograph_is_kept_shown_and_gone_with_its_entry()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var pot = site.Garden.Pots[0].Id;
        await w.GoAsync($"/pots/{pot}/photos");
        await w.Page.Locator("#several").SetInputFilesAsync([File("one.jpg", "image/jpeg", Jpeg(SKColors.Red)), File("two.jpg", "image/jpeg", Jpeg(SKColors.Blue)), File("notes.jpg", "image/jpeg", "not a picture"u8.ToArray())]);
        await w.Page.GetByLabel("What it shows").FillAsync("First buds");
        await w.Button("Keep").ClickAsync();
        await w.SeesAsync("“notes.jpg”: This is not a picture that can be read.");
        await w.SeesAsync("The others (2) were kept.");
        await Expect(w.Page.GetByAltText("First buds")).ToHaveCountAsync(2);
        Assert.True(await w.Page.Locator(".gallery img").First.EvaluateAsync<bool>("i => i.complete || new Promise(r => i.onload = () => r(true))"));

        var stored = site.Journal.Query(new JournalQuery { Kinds = [EntryKind.Photograph] })[0];
        var hash = ((Photograph)stored.Entry.Facts).Hash;
        var answer = await site.Http.GetAsync($"/photos/{hash}");
        Assert.Equal(("image/jpeg", "nosniff", true), (answer.Content.Headers.ContentType!.MediaType, answer.Headers.GetValues("X-Content-Type-Options").Single(), answer.Headers.CacheControl!.Private));
        site.Journal.Write([new EntryChange(stored.Entry.Id, 1, null)]);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync($"/photos/{hash}")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync($"/photos/{hash}/small")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync("/photos/..%2Fgarden.db")).StatusCode);

        // Another garden of the same database names it: that is no leave to show it here.
        site.Records.Journal("other").Write([EntryChange.New(stored.Entry with { Id = Guid.NewGuid() })]);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync($"/photos/{hash}")).StatusCode);
        w.Forgive("404");
    }

    [Fact]
    public async Task Words_find_entries_pots_and_bags_and_filters_narrow_them()
    {
        await using var site = await Site.StartAsync();
        var (one, two) = (site.Garden.Pots[0].Id, site.Garden.Pots[1].Id);
        site.Journal.Write(
        [
            EntryChange.New(Of(Today, new Sighting("Aphids", 2), one) with { Note = "under the leaves" }),
            EntryChange.New(Of(Today.AddDays(-40), new Sighting("Aphids", 1), two)),
        ]);
        async Task<string> Found(string query) => WebUtility.HtmlDecode(await site.Http.GetStringAsync("/search?" + query));
        Assert.Contains("2 entries.", await Found("q=aph"), StringComparison.Ordinal);
        Assert.Contains("1 entry.", await Found("q=aph+leav"), StringComparison.Ordinal);
        Assert.Contains("1 entry.", await Found($"q=aph&pot={two}"), StringComparison.Ordinal);
        Assert.Contains("1 entry.", await Found(FormattableString.Invariant($"q=aph&from={Today.AddDays(-5):yyyy-MM-dd}")), StringComparison.Ordinal);
        Assert.Contains("Nothing.", await Found("q=aph&kind=Readings"), StringComparison.Ordinal);
        Assert.Contains("In the garden", await Found("q=hib"), StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", await site.Http.GetStringAsync("/search?q=%3Cscript%3E").ContinueWith(static t => t.Result.Replace("&quot;", "\"", StringComparison.Ordinal), TaskScheduler.Default), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_season_report_says_what_was_given_and_goes_on_paper()
    {
        await using var site = await Site.StartAsync();
        var (pot, feed) = (site.Garden.Pots[0], site.Garden.Feeds[0]);
        site.Journal.Write(
        [
            EntryChange.New(Of(Today.AddDays(-30), new FeedGiven(feed.Id, [new(pot.Id, 12, 3)]), pot.Id)),
            EntryChange.New(Of(Today.AddDays(-20), new FeedGiven(feed.Id, [new(pot.Id, 9)]), pot.Id)),
        ]);
        var page = WebUtility.HtmlDecode(await site.Http.GetStringAsync($"/report?pot={pot.Id}"));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $">{21 * pot.Count}<"), page, StringComparison.Ordinal);
        var pdf = await site.Http.GetByteArrayAsync($"/download/season.pdf?pot={pot.Id}");
        Assert.Equal("%PDF", Encoding.ASCII.GetString(pdf, 0, 4));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await site.Http.GetAsync("/download/season.pdf?from=2026-05-01&to=2026-04-01")).StatusCode);
    }

    private static FilePayload File(string name, string type, byte[] bytes) => new() { Name = name, MimeType = type, Buffer = bytes };

    private static byte[] Jpeg(SKColor colour)
    {
        using var bitmap = new SKBitmap(80, 60);
        bitmap.Erase(colour);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        return data.ToArray();
    }

    private static Entry Of(DateOnly day, EntryFacts facts, params string[] pots) => new() { Id = Guid.NewGuid(), Day = day, Pots = pots, Facts = facts };
}
