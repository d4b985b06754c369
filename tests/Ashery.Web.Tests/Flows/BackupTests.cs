using System.Net;
using Ashery.Journal;
using Ashery.Records;
using Ashery.Records.Sqlite;

namespace Ashery.Web.Tests.Flows;

public sealed class BackupTests(TheBrowser browser)
{
    [Fact]
    public async Task One_button_backs_up_and_a_form_brings_it_back()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var entry = new Entry { Id = Guid.NewGuid(), Day = new DateOnly(2026, 5, 2), Note = "kept in the backup", Facts = new PlantEvent(PlantEventKind.Other) };
        site.Journal.Write([EntryChange.New(entry)]);
        await w.GoAsync("/settings/backup");
        await Expect(w.Page.GetByRole(AriaRole.Contentinfo)).ToContainTextAsync("Last change: Noted");
        var download = await w.Page.RunAndWaitForDownloadAsync(() => w.Page.GetByRole(AriaRole.Link, new() { Name = "Back everything up" }).ClickAsync());
        var bytes = await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);
        var pots = site.Garden.Pots.Count;
        site.Put(g => g with { Pots = [] });
        site.Journal.Undo(entry.Id, 1);
        await w.Page.GetByLabel("Backup file").SetInputFilesAsync(new FilePayload { Name = "a.zip", MimeType = "application/zip", Buffer = "no zip"u8.ToArray() });
        await w.Button("Restore it").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("damaged");
        Assert.Empty(site.Garden.Pots);
        await w.Page.GetByLabel("Backup file").SetInputFilesAsync(new FilePayload { Name = "a.zip", MimeType = "application/zip", Buffer = bytes });
        await w.Button("Restore it").ClickAsync();
        await w.SeesAsync("The backup is restored");
        Assert.Equal(pots, site.Garden.Pots.Count);
        Assert.False(site.Journal.Find(entry.Id)!.IsRemoved);
    }

    [Fact]
    public async Task The_list_of_changes_takes_back_an_entry_of_the_journal()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        var entry = new Entry { Id = Guid.NewGuid(), Day = new DateOnly(2026, 5, 2), Facts = new Sighting("aphids", 1) };
        site.Records.Journal(IRecords.Home, "Ana").Write([EntryChange.New(entry)]);
        await w.GoAsync("/settings/changes");
        await w.SeesAsync("Saw aphids on the garden");
        await w.SeesAsync("Ana");
        await w.Button("Undo this").First.ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("Took back: Saw aphids");
        Assert.True(site.Journal.Find(entry.Id)!.IsRemoved);
        await w.Page.GetByRole(AriaRole.Status).GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("Changed: Saw aphids");
        Assert.False(site.Journal.Find(entry.Id)!.IsRemoved);
    }

    [Fact]
    public async Task A_full_disk_is_told_on_the_page_and_what_was_typed_stays()
    {
        await using var site = await Site.StartAsync(change: static o => o with { Records = SqliteRecords.Open(o.GardenFile, o.Clock, mostPages: 160).Value });
        await using var w = await browser.OpenAsync(site);
        var name = site.Garden.Name;
        Assert.Throws<StorageTrouble>(() =>
        {
            for (var i = 0; i < 500; i++)
            {
                site.Put(g => g with { Name = name });
            }
        });
        await w.GoAsync("/settings");
        await w.Page.GetByLabel("Name of the garden").FillAsync("There is no room for this");
        await w.Button("Save the settings").ClickAsync();
        await Expect(w.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("full");
        await Expect(w.Page.GetByLabel("Name of the garden")).ToHaveValueAsync("There is no room for this");
        Assert.Equal(name, site.Garden.Name);
        Assert.Equal(HttpStatusCode.OK, (await site.Http.GetAsync(new Uri("/settings/changes", UriKind.Relative), TestContext.Current.CancellationToken)).StatusCode);
    }
}
