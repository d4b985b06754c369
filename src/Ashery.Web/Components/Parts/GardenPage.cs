using System.Globalization;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;
using Ashery.Web.Show;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Components.Parts;

/// <summary>A page about the garden: reads forms, saves changes, and keeps what was typed when it could not.</summary>
public abstract class GardenPage : ComponentBase
{
    [Inject]
    protected GardenDesk Desk { get; set; } = null!;

    [Inject]
    protected NavigationManager Nav { get; set; } = null!;

    [Inject]
    protected TimeProvider Clock { get; set; } = null!;

    [CascadingParameter]
    protected HttpContext? Http { get; set; }

    protected Garden Garden => Desk.Garden;

    protected Amounts Amounts => new(Garden.Settings.UsUnits);

    protected DateOnly Today => DateOnly.FromDateTime(Clock.GetLocalNow().DateTime);

    /// <summary>What was typed, or what the page fills in.</summary>
    protected Draft Draft { get; set; } = Draft.Empty;

    protected IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>The form that was sent.</summary>
    protected Draft Sent() => Http?.Request.HasFormContentType == true ? new Draft(Http.Request.Form) : Draft.Empty;

    /// <summary>The query of the address.</summary>
    protected Draft Asked() => Http is null ? Draft.Empty : new Draft(Http.Request.Query);

    /// <summary>Shows the form again with what is wrong.</summary>
    protected void AskAgain(Draft sent, IReadOnlyList<Problem> problems)
    {
        Draft = sent;
        Problems = problems;
        if (Http is { Response.HasStarted: false })
        {
            Http.Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        }
    }

    /// <summary>Saves and goes on to a page, or shows the form again when another window was first.</summary>
    protected void Save(Draft sent, string what, Func<Garden, Garden> change, string goTo)
    {
        _ = long.TryParse(sent["version"], NumberStyles.None, CultureInfo.InvariantCulture, out var basedOn);
        SaveOutcome outcome;
        try
        {
            outcome = Desk.Change(basedOn, what, change);
        }
        catch (StorageTrouble trouble)
        {
            // What was typed stays on the page until there is room for it.
            AskAgain(sent, [trouble.Problem]);
            return;
        }

        switch (outcome)
        {
            case SaveOutcome.Saved saved:
                Go(goTo, saved.Version);
                break;
            case SaveOutcome.Overtaken overtaken:
                AskAgain(sent, [Overtaken(overtaken.By)]);
                break;
        }
    }

    /// <summary>Goes on after a change of the garden; the page says what was done, with Undo.</summary>
    protected void Go(string path, long saved) => GoOn(path, saved.ToString(CultureInfo.InvariantCulture));

    /// <summary>Goes on after entries were written into the journal; the page says what was done, with Undo.</summary>
    protected void Go(string path, IReadOnlyList<StoredEntry> written) => GoOn(path, WrittenEntries.Mark(written));

    private void GoOn(string path, string saved) => Nav.NavigateTo($"{path}{(path.Contains('?', StringComparison.Ordinal) ? '&' : '?')}saved={saved}");

    /// <summary>Asks the browser to keep this page for when there is no network (docs/offline.md).</summary>
    protected void KeepOffline()
    {
        if (Http is { Response.HasStarted: false })
        {
            Http.Response.Headers["Ashery-Offline"] = "keep";
        }
    }

    protected void NotHere()
    {
        if (Http is not null)
        {
            Nav.NotFound();
        }
    }

    protected static Problem Overtaken(Change by) => new(
        "garden",
        $"The garden was changed in another window meanwhile ({by.What}).",
        "What you typed is still here. Look at it once more, then save again.");
}
