using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Gardens;
using Ashery.Records;
using Ashery.Web.Access;
using Ashery.Web.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Support;

/// <summary>
/// The application with accounts on a port of its own: two gardens with names nobody else has, an owner, a helper and a reader of the first, and somebody
/// who belongs to neither.
/// </summary>
internal sealed class House : IAsyncDisposable
{
    public const string Password = "four odd words together";
    public const string Secret = "Zaffre-Quoin-Terrace";

    private readonly string folder;

    private House(string folder, WebApplication app)
    {
        this.folder = folder;
        App = app;
        Address = new Uri(AsheryServer.Address(app));
    }

    public WebApplication App { get; }

    public Uri Address { get; }

    public Movable Clock { get; private init; } = new();

    public string Folder => folder;

    public IGardenStore Store => App.Services.GetRequiredService<IRecords>().Garden(IRecords.Home);

    public IJournal Journal => App.Services.GetRequiredService<IRecords>().Journal(IRecords.Home);

    public static AccessOptions Fast { get; } = new() { HashRounds = 1000, TriesAMinute = 10_000, CallsAMinute = 10_000 };

    public static async Task<House> OpenAsync(AccessOptions? access = null, Func<ServerOptions, ServerOptions>? change = null, bool people = true)
    {
        var options = new ServerOptions { Port = 0, GardenFile = "", Clock = new Movable(), Access = access ?? Fast };
        options = change?.Invoke(options) ?? options;
        if (!people || options.Database is not null || options.Clock is not Movable)
        {
            var house = await StartAsync(options);
            if (people)
            {
                await house.FillAsync();
            }

            return house;
        }

        return await StartAsync(options, await Filled.Value);
    }

    // People and tables are made once; every house begins with a copy of the file.
    private static readonly Lazy<Task<byte[]>> Filled = new(async () =>
    {
        await using var house = await StartAsync(new ServerOptions { Port = 0, GardenFile = "", Clock = new Movable(), Access = Fast });
        await house.FillAsync();
        await using (var db = house.App.Services.GetRequiredService<Databases.AccountsDatabase>().Open())
        {
            await db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE);");
        }

        await using var file = new FileStream(Path.Combine(house.folder, "garden.db"), FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var whole = new byte[file.Length];
        await file.ReadExactlyAsync(whole);
        return whole;
    });

    private static async Task<House> StartAsync(ServerOptions options, byte[]? filled = null)
    {
        var fresh = Directory.CreateTempSubdirectory("ashery-house-").FullName;
        var path = Path.Combine(fresh, "garden.db");
        if (filled is not null)
        {
            await File.WriteAllBytesAsync(path, filled);
        }

        var built = AsheryServer.Build(options with { GardenFile = path });
        Assert.True(built.Ok, string.Join(' ', built.Problems));
        await built.Value.StartAsync();
        return new House(fresh, built.Value) { Clock = options.Clock as Movable ?? new Movable() };
    }

    /// <summary>A browser nobody is signed in with.</summary>
    public Browser Browser() => new(Address);

    /// <summary>A browser somebody is signed in with.</summary>
    public async Task<Browser> EnterAsync(string name, string password = Password)
    {
        var browser = Browser();
        using var answer = await browser.SendFormAsync("/sign-in", "sign-in", ("name", name), ("password", password));
        Assert.Equal(System.Net.HttpStatusCode.Found, answer.StatusCode);
        return browser;
    }

    public async Task<T> WithAsync<TService, T>(Func<TService, Task<T>> use)
        where TService : notnull
    {
        await using var scope = App.Services.CreateAsyncScope();
        return await use(scope.ServiceProvider.GetRequiredService<TService>());
    }

    public Task<string> IdOfAsync(string name) =>
        WithAsync<Microsoft.AspNetCore.Identity.UserManager<AsheryUser>, string>(async users => (await users.FindByNameAsync(name))!.Id);

    /// <summary>A token of somebody.</summary>
    public async Task<string> TokenAsync(string name, string scope, string? garden = null)
    {
        var id = await IdOfAsync(name);
        var made = await WithAsync<Tokens.AccessTokens, Problems.Result<(TokenRow, string Secret)>>(t => t.MakeAsync(id, "a script", scope, garden, 30, ""));
        Assert.True(made.Ok);
        return made.Value.Secret;
    }

    public async ValueTask DisposeAsync()
    {
        await App.StopAsync();
        await App.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private async Task FillAsync()
    {
        await using var scope = App.Services.CreateAsyncScope();
        var roster = scope.ServiceProvider.GetRequiredService<Roster>();
        var code = await roster.FirstCodeAsync();
        var owner = await roster.MakeFirstAsync(code, "oona", Password, "");
        Assert.True(owner.Ok, string.Join(' ', owner.Problems));
        var records = App.Services.GetRequiredService<IRecords>();
        foreach (var (name, role) in new[] { ("hugh", MemberRole.Helper), ("rhea", MemberRole.Reader) })
        {
            var invitation = await roster.InviteAsync(owner.Value.Id, IRecords.Home, role, "");
            Assert.True((await roster.MakeInvitedAsync(invitation.Value, name, Password, "")).Ok);
        }

        // Somebody with a garden of her own, which is nobody else's.
        records.Garden("other").Save(new Garden { Name = "Other", Place = Store.Load()!.Garden.Place }, 0, "Began");
        await scope.ServiceProvider.GetRequiredService<Memberships>().AddAsync("other", owner.Value.Id, MemberRole.Owner, "");
        var toOther = await roster.InviteAsync(owner.Value.Id, "other", MemberRole.Owner, "");
        var sten = await roster.MakeInvitedAsync(toOther.Value, "sten", Password, "");
        Assert.True(sten.Ok);
        Assert.Null(await scope.ServiceProvider.GetRequiredService<Memberships>().ChangeAsync(sten.Value.Id, "other", owner.Value.Id, null, ""));
        var now = Store.Load()!;
        Assert.IsType<SaveOutcome.Saved>(Store.Save(now.Garden with { Name = Secret }, now.Version, "Named it"));
    }
}
