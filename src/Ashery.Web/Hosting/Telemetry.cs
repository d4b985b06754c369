using Ashery.Records;
using OpenTelemetry.Exporter;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace Ashery.Web.Hosting;

/// <summary>Health, and metrics and traces by OpenTelemetry for who asks for them. Nothing is sent anywhere unless a collector is named.</summary>
internal static class Telemetry
{
    // What the framework measures: requests, connections, turned-back calls, failures. No addresses of people, no texts.
    private static readonly string[] Meters =
        ["Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "Microsoft.AspNetCore.RateLimiting", "Microsoft.AspNetCore.Diagnostics", "System.Runtime"];

    public static void AddTelemetry(this IServiceCollection services, Uri collector) => services.AddOpenTelemetry()
        .ConfigureResource(static resource => resource.AddService("ashery"))
        .WithMetrics(metrics => metrics.AddMeter(Meters).AddOtlpExporter((otlp, reader) =>
        {
            Send(otlp, collector, "v1/metrics");
            reader.PeriodicExportingMetricReaderOptions.ExportIntervalMilliseconds = 10_000;
        }))
        .WithTracing(traces => traces.AddSource("Microsoft.AspNetCore").AddOtlpExporter(otlp => Send(otlp, collector, "v1/traces")));

    public static void MapHealth(this IEndpointRouteBuilder app)
    {
        app.MapGet("/health", static () => "ok").AllowAnonymous();
        app.MapGet("/health/ready", static (IRecords records) =>
            records.IsThere() ? Results.Text("ready") : Results.Text("the database does not answer", statusCode: StatusCodes.Status503ServiceUnavailable)).AllowAnonymous();
    }

    private static void Send(OtlpExporterOptions otlp, Uri collector, string path)
    {
        otlp.Protocol = OtlpExportProtocol.HttpProtobuf;
        otlp.Endpoint = new Uri(collector, path);
    }
}
