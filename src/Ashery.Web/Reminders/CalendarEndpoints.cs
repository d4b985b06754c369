using System.Text;
using Ashery.Exchange.Calendar;
using Ashery.Records;
using Ashery.Web.Gardens;
using Microsoft.AspNetCore.Authorization;

namespace Ashery.Web.Reminders;

/// <summary>The calendar to subscribe to, for whoever has its address, and the same as a file.</summary>
internal static class CalendarEndpoints
{
    public static void MapReminders(this IEndpointRouteBuilder app)
    {
        // A calendar program signs in nowhere: the address itself is the key.
        app.MapGet("/calendar/{address}.ics", Subscribed).WithMetadata(new AllowAnonymousAttribute());
        app.MapGet("/download/reminders.ics", (TodayDesk work, GardenDesk desk, TimeProvider clock, int? hour) => Results.File(Text(work, desk, clock, hour), "text/calendar; charset=utf-8", "reminders.ics"));
    }

    /// <summary>The last part of the address: which garden, and the secret.</summary>
    public static string Path(string garden, string secret) => $"/calendar/{Uri.EscapeDataString(garden)}-{secret}.ics";

    private static IResult Subscribed(string address, HttpContext context, IRecords records, TimeProvider clock, int? hour)
    {
        var at = address.LastIndexOf('-');
        if (at <= 0 || !new CalendarAddress(records.Journal(address[..at])).Opens(address[(at + 1)..]))
        {
            return Results.NotFound();
        }

        // A scope of its own: whoever asks may be signed in on another garden.
        using var scope = context.RequestServices.CreateScope();
        var whose = scope.ServiceProvider.GetRequiredService<CurrentGarden>();
        (whose.Key, whose.By, whose.Role) = (address[..at], "", GardenRole.Reader);
        context.Response.Headers.CacheControl = "private, no-cache";
        var (work, desk) = (scope.ServiceProvider.GetRequiredService<TodayDesk>(), scope.ServiceProvider.GetRequiredService<GardenDesk>());
        return Results.Bytes(Text(work, desk, clock, hour), "text/calendar; charset=utf-8");
    }

    private static byte[] Text(TodayDesk work, GardenDesk desk, TimeProvider clock, int? hour)
    {
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        return Encoding.UTF8.GetBytes(DueCalendar.Write(work.Year(today), desk.Garden, clock.GetUtcNow(), Math.Clamp(hour ?? DueCalendar.MorningHour, 0, 23)));
    }
}
