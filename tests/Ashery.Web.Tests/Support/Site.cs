using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Records;
using Ashery.Records.Photos;
using Ashery.Web.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Web.Tests.Support;

/// <summary>The web application on a port of its own with a garden of its own, demo at first.</summary>
internal sealed class Site : IAsyncDisposable
{
    private readonly string folder;
    private readonly WebApplication app;

    private Site(string folder, WebApplication app)
    {
        this.folder = folder;
        this.app = app;
        Address = AsheryServer.Address(app);
        Http = new HttpClient { BaseAddress = new Uri(Address) };
    }

    public string Address { get; }

    public HttpClient Http { get; }

    public IServiceProvider Services => app.Services;

    public IRecords Records => app.Services.GetRequiredService<IRecords>();

    public IGardenStore Store => Records.Garden(IRecords.Home);

    public IJournal Journal => Records.Journal(IRecords.Home);

    public PhotoFiles Photos => app.Services.GetRequiredService<PhotoFiles>();

    public Garden Garden => Store.Load()!.Garden;

    public static async Task<Site> StartAsync(StoppedClock? clock = null, Func<ServerOptions, ServerOptions>? change = null)
    {
        var fresh = Directory.CreateTempSubdirectory("ashery-web-").FullName;
        var options = new ServerOptions { Port = 0, GardenFile = Path.Combine(fresh, "garden.db"), Clock = clock ?? new StoppedClock() };
        var built = AsheryServer.Build(change?.Invoke(options) ?? options);
        Assert.True(built.Ok, string.Join(' ', built.Problems));
        await built.Value.StartAsync();
        return new Site(fresh, built.Value);
    }

    /// <summary>Puts a garden in, as another window would.</summary>
    public void Put(Func<Garden, Garden> change, string what = "changed elsewhere")
    {
        var now = Store.Load()!;
        Assert.IsType<SaveOutcome.Saved>(Store.Save(change(now.Garden), now.Version, what));
    }

    /// <summary>Writes the demo garden's own journal, as if it had been kept.</summary>
    public void PutDemoJournal() =>
        Assert.IsType<JournalOutcome.Written>(Journal.Write([.. DemoJournal.Create(DateOnly.FromDateTime(new StoppedClock().GetLocalNow().DateTime)).Select(EntryChange.New)]));

    /// <summary>Key of the oldest entry of a kind; an empty key when there is none.</summary>
    public string FirstEntry(string kind) => Journal.Query(new() { Kinds = [kind] }) is [.., var first] ? first.Entry.Id.ToString("D") : Guid.Empty.ToString("D");

    public async ValueTask DisposeAsync()
    {
        Http.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
