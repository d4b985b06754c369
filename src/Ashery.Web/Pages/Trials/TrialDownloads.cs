using System.Text;
using Ashery.Cards;
using Ashery.Exchange.Trials;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Trials.Designs;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;

namespace Ashery.Web.Pages.Trials;

/// <summary>Plan, tags, record sheet and key of a trial as files, of a kept one or of the one in the address.</summary>
internal static class TrialDownloads
{
    public static void MapTrials(this IEndpointRouteBuilder app) =>
        app.MapGet("/download/trial-{paper}.{form:regex(^(pdf|html|txt|svg|csv|json)$)}", Paper);

    private static IResult Paper(string paper, string form, HttpContext context, GardenDesk desk, IJournal journal, TimeProvider clock)
    {
        if (paper is not ("plan" or "tags" or "sheet" or "key" or "trial"))
        {
            return Results.NotFound();
        }

        var asked = new Draft(context.Request.Query);
        var (plan, readings) = Asked(asked, desk, journal);
        if (!plan.Ok)
        {
            return Results.Text(string.Join('\n', plan.Problems) + "\n", "text/plain", Encoding.UTF8, StatusCodes.Status422UnprocessableEntity);
        }

        var (trial, today) = (plan.Value.Trial, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
        var name = $"{Ids.Free(trial.Name, "trial", [])}-{paper}.{form}";
        switch (paper, form)
        {
            case ("trial", "json"):
                return File(TrialFile.Write(trial, readings), "application/json", name);
            case ("sheet", "csv"):
                return File(ResultsCsv.Sheet(trial), "text/csv", name);
            case (_, "csv" or "json") or ("trial", _):
                return Results.NotFound();
        }

        if (paper == "key" && !trial.Blind)
        {
            return Results.NotFound();
        }

        var card = paper switch
        {
            "plan" => TrialSheets.Plan(plan.Value, today),
            "tags" => TrialSheets.Tags(trial, today),
            "key" => TrialSheets.Key(trial, today),
            _ => TrialSheets.Record(trial, today),
        };
        return form switch
        {
            "pdf" => Results.File(CardPdf.Write(card), "application/pdf", name),
            "svg" => File(CardSvg.Write(card), "image/svg+xml", name),
            "html" => File(CardHtml.Write(card), "text/html", name),
            _ => File(CardText.Write(card), "text/plain", name),
        };
    }

    private static (Result<TrialPlan> Plan, IReadOnlyList<Ashery.Trials.Results.TrialReading> Readings) Asked(Draft asked, GardenDesk desk, IJournal journal)
    {
        if (!asked.Has("kept"))
        {
            var form = new TrialDesk(desk.Garden);
            return (form.Plan(form.Complete(asked)), []);
        }

        return Guid.TryParseExact(asked["kept"], "D", out var id) && KeptTrial.Find(journal, id) is { } kept
            ? (TrialDesign.Kept(kept.Trial, TrialDesk.Draws), kept.Asked.Readings)
            : (Result.Fail<TrialPlan>("kept", "This trial is not kept.", "Choose one on the page of trials."), []);
    }

    private static IResult File(string text, string type, string name) => Results.File(Encoding.UTF8.GetBytes(text), type + "; charset=utf-8", name);
}
