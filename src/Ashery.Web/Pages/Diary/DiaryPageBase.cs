using Ashery.Records;
using Ashery.Web.Components.Parts;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Pages.Diary;

/// <summary>A page about what was written in the journal.</summary>
public abstract class DiaryPageBase : GardenPage
{
    [Inject]
    protected IJournal Journal { get; set; } = null!;

    /// <summary>This page is kept on the phone and opens without a network (docs/offline.md).</summary>
    protected void OpensOffline()
    {
        if (Http is { Response.HasStarted: false })
        {
            Http.Response.Headers["Ashery-Offline"] = "keep";
        }
    }

    /// <summary>Hour in the garden, to the minute.</summary>
    protected TimeOnly Now => new(Clock.GetLocalNow().Hour, Clock.GetLocalNow().Minute);
}
