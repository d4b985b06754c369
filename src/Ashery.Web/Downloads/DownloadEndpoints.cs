using System.Globalization;
using System.Text;
using Ashery.Cards;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Materials;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;
using Ashery.Web.Pages.Cards;
using Ashery.Web.Pages.Stock;
using Ashery.Web.Pages.Trials;

namespace Ashery.Web.Downloads;

/// <summary>Everything that is a file rather than a page.</summary>
internal static class DownloadEndpoints
{
    public static void MapDownloads(this IEndpointRouteBuilder app)
    {
        app.MapGet("/download/year.ics", Calendar);
        app.MapGet("/download/card.{form:regex(^(pdf|svg|html|txt)$)}", Card);
        app.MapGet("/download/batch.{form:regex(^(pdf|svg|txt)$)}", Batch);
        app.MapGet("/download/shelf.csv", (GardenDesk desk) => Csv(writer => BagCsv.Write(writer, desk.Garden.Shelf), "shelf.csv"));
        app.MapGet("/download/shelf.json", (GardenDesk desk) => File(ShelfFile.Write(desk.Garden.Shelf), "application/json", "shelf.json"));
        app.MapGet("/download/materials.csv", () => Csv(writer => BagCsv.WriteMaterials(writer, MaterialCatalogue.Default.All), "materials.csv"));
        app.MapDiaryDownloads();
        app.MapTrials();
        app.MapGet("/download/backup.zip", Backup);
        app.MapGet("/garden.json", (GardenDesk desk) => File(GardenFile.Write(desk.Garden), "application/json", "garden.json"));
    }

    private static IResult Backup(BackupDesk backups, CurrentGarden whose, TimeProvider clock)
    {
        if (!whose.KeepsAll)
        {
            return Results.NotFound();
        }

        var made = backups.Make();
        return made.Ok
            ? Results.Stream(made.Value, "application/zip", $"ashery-{Today(clock).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.zip")
            : Wrong(made.Problems);
    }

    private static IResult Calendar(HttpContext context, GardenDesk desk, TimeProvider clock)
    {
        var asked = new Draft(context.Request.Query);
        var read = new FieldReader(asked);
        var from = read.Date("from") ?? Today(clock);
        return read.Fine
            ? File(YearCalendar.Write(desk.Year(from), desk.Garden, clock.GetUtcNow()), "text/calendar", "year-of-feeds.ics")
            : Wrong(read.Problems);
    }

    private static IResult Card(string form, HttpContext context, GardenDesk desk, TimeProvider clock)
    {
        var asked = new Draft(context.Request.Query);
        var card = new CardDesk(desk, Today(clock)).Describe(asked["of"], asked.Set("of", null));
        if (!card.Ok)
        {
            return Wrong(card.Problems);
        }

        return Printed(card.Value, form, Ids.Free(card.Value.Title, "card", []) + (asked["kind"] == "label" ? "-label" : "") + "." + form);
    }

    private static IResult Batch(string form, HttpContext context, GardenDesk desk, StockDesk stock)
    {
        var asked = new Draft(context.Request.Query);
        var address = $"{context.Request.Scheme}://{context.Request.Host}{context.Request.PathBase}";
        return LabelDesk.Describe(stock, desk.Garden, asked["of"], asked["paper"], address) is { } label
            ? Printed(label, form, Ids.Free(label.RunningHead, "batch", []) + "." + form)
            : Results.NotFound();
    }

    private static IResult Printed(CardDocument card, string form, string name) => form switch
    {
        "pdf" => Results.File(CardPdf.Write(card), "application/pdf", name),
        "svg" => File(CardSvg.Write(card), "image/svg+xml", name),
        "html" => File(CardHtml.Write(card), "text/html", name),
        _ => File(CardText.Write(card), "text/plain", name),
    };

    private static IResult Csv(Action<TextWriter> write, string name)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        write(writer);
        return File(writer.ToString(), "text/csv", name);
    }

    private static DateOnly Today(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private static IResult File(string text, string type, string name) =>
        Results.File(Encoding.UTF8.GetBytes(text), type + "; charset=utf-8", name);

    private static IResult Wrong(IReadOnlyList<Problem> problems) =>
        Results.Text(string.Join('\n', problems) + "\n", "text/plain", Encoding.UTF8, StatusCodes.Status422UnprocessableEntity);
}
