using System.Diagnostics;
using System.Net;
using Ashery.Web.Hosting;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>Without the word at the start there are no accounts, and nothing of them.</summary>
public sealed class OffTests
{
    [Fact]
    public async Task Without_accounts_nothing_of_them_is_shown()
    {
        await using var house = await House.OpenAsync(change: o => o with { Access = null }, people: false);
        using var browser = house.Browser();
        foreach (var path in new[] { "/sign-in", "/first", "/join", "/pair", "/trust", "/trust/ashery-home.crt", "/account", "/account/tokens", "/account/log", "/account/phone", "/gardens", "/garden/people", "/sign-in/passkey/options" })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync(path)).Status);
        }

        var (status, text) = await browser.GetAsync("/more");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.DoesNotContain("/account", text, StringComparison.Ordinal);
        Assert.DoesNotContain("passkeys", text, StringComparison.Ordinal);
        Assert.StartsWith("http://127.0.0.1:", house.Address.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_accounts_nothing_of_them_is_loaded()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Looks at the files of a process, as Linux shows them.");
        var folder = Directory.CreateTempSubdirectory("ashery-off-").FullName;
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, UseShellExecute = false };
        foreach (var word in new[] { Path.Combine(AppContext.BaseDirectory, "Ashery.Web.dll"), "--garden", Path.Combine(folder, "garden.db") })
        {
            start.ArgumentList.Add(word);
        }

        using var program = Process.Start(start)!;
        try
        {
            var said = await program.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
            var address = new Uri(said!.Split(' ')[3]);
            using var http = new HttpClient { BaseAddress = address };
            Assert.Contains("</html>", await http.GetStringAsync("/more", TestContext.Current.CancellationToken), StringComparison.Ordinal);
            var maps = await File.ReadAllTextAsync(FormattableString.Invariant($"/proc/{program.Id}/maps"), TestContext.Current.CancellationToken);
            Assert.Contains("Ashery.Web.dll", maps, StringComparison.Ordinal);
            foreach (var part in new[] { "Ashery.Accounts.dll", "Identity.EntityFrameworkCore.dll", "Npgsql.dll", "OpenTelemetry" })
            {
                Assert.DoesNotContain(part, maps, StringComparison.Ordinal);
            }
        }
        finally
        {
            program.Kill();
            await program.WaitForExitAsync(TestContext.Current.CancellationToken);
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("--address")]
    [InlineData("--accounts --address garden")]
    [InlineData("--accounts --address http://garden.example")]
    [InlineData("--accounts --address https://garden.example/path")]
    [InlineData("--address https://garden.example")]
    [InlineData("--home --address https://garden.example")]
    [InlineData("--accounts --urls http://0.0.0.0:8080")]
    [InlineData("--home --urls http://0.0.0.0:8080")]
    [InlineData("--accounts --proxy here")]
    [InlineData("--telemetry nowhere")]
    public void Words_that_would_open_a_door_by_mistake_are_refused(string words)
    {
        var read = ServerOptions.Read(words.Split(' '), _ => null);
        Assert.False(read.Ok);
        Assert.NotEmpty(read.Problems[0].WayOut);
    }

    [Theory]
    [InlineData("--accounts", false, null)]
    [InlineData("--home --port 8123", true, null)]
    [InlineData("--accounts --address https://garden.example --urls http://10.0.0.2:8080 --proxy 10.0.0.5", false, "https://garden.example/")]
    public void Words_that_open_a_door_are_read(string words, bool home, string? address)
    {
        var read = ServerOptions.Read(words.Split(' '), _ => null);
        Assert.True(read.Ok, string.Join(' ', read.Problems));
        Assert.Equal((home, address), (read.Value.Access!.Home, read.Value.Access.Address?.ToString()));
        Assert.Null(ServerOptions.Read(["--port", "8123"], _ => null).Value!.Access);
    }
}
