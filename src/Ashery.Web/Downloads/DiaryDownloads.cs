using System.Globalization;
using System.Text;
using Ashery.Cards;
using Ashery.Exchange.Journal;
using Ashery.Journal;
using Ashery.Records;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;
using Ashery.Web.Pages.Diary;

namespace Ashery.Web.Downloads;

/// <summary>Files made of the journal.</summary>
internal static class DiaryDownloads
{
    private const int Most = 200_000;

    public static void MapDiaryDownloads(this IEndpointRouteBuilder app)
    {
        app.MapGet("/download/season.pdf", Season);
        app.MapGet("/download/measurements.csv", Measurements);
    }

    private static IResult Season(HttpContext context, GardenDesk desk, IJournal journal, TimeProvider clock)
    {
        var today = DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
        var report = new ReportDesk(desk, journal, today).Report(new Draft(context.Request.Query));
        return report.Ok
            ? Results.File(CardPdf.Write(SeasonSheet.Describe(report.Value, desk.Garden, today)), "application/pdf", "season-report.pdf")
            : Results.Text(string.Join('\n', report.Problems) + "\n", "text/plain", Encoding.UTF8, StatusCodes.Status422UnprocessableEntity);
    }

    private static IResult Measurements(HttpContext context, IJournal journal)
    {
        var pot = context.Request.Query["pot"].ToString();
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        MeasurementsCsv.Write(writer, journal.Query(new JournalQuery { Kinds = [EntryKind.Measured], Pots = pot.Length > 0 ? [pot] : [], AtMost = Most }).Select(static e => e.Entry));
        return Results.File(Encoding.UTF8.GetBytes(writer.ToString()), "text/csv; charset=utf-8", "measurements.csv");
    }
}
