using System.Collections.Concurrent;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>Metrics and traces go to the collector that was named, and say nothing of people or gardens.</summary>
public sealed class TelemetryTests
{
    [Fact]
    public async Task A_collector_that_is_named_gets_metrics_without_names()
    {
        var got = new ConcurrentDictionary<string, string>();
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        await using var collector = builder.Build();
        collector.Urls.Add("http://127.0.0.1:0");
        collector.MapPost("/v1/{what}", async (string what, HttpRequest request) =>
        {
            using var body = new MemoryStream();
            await request.Body.CopyToAsync(body);
            got.AddOrUpdate(what, _ => Encoding.Latin1.GetString(body.ToArray()), (_, before) => before + Encoding.Latin1.GetString(body.ToArray()));
        });
        await collector.StartAsync(TestContext.Current.CancellationToken);
        await using (var house = await House.OpenAsync(change: o => o with { Telemetry = new Uri(collector.Urls.First()) }))
        {
            using var oona = await house.EnterAsync("oona");
            Assert.Contains(House.Secret, (await oona.GetAsync("/settings?find=" + House.Secret)).Text, StringComparison.Ordinal);
        }

        // What was measured is sent at the latest when the application ends.
        Assert.Contains("http.server.request.duration", got["metrics"], StringComparison.Ordinal);
        Assert.Contains("HttpRequestIn", got["traces"], StringComparison.Ordinal);
        foreach (var text in got.Values)
        {
            Assert.DoesNotContain("oona", text, StringComparison.Ordinal);
            Assert.DoesNotContain(House.Password, text, StringComparison.Ordinal);
        }
    }
}
