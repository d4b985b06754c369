using Ashery.Journal;
using Ashery.Pots;
using Ashery.Records;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Pages.Diary;

/// <summary>A page about one pot of the garden, or about one that is gone and left its diary.</summary>
public abstract class PotPage : DiaryPageBase
{
    [Parameter]
    public required string Id { get; set; }

    /// <summary>Null when it is no longer in the garden.</summary>
    protected Pot? Pot => Garden.Pots.FirstOrDefault(p => p.Id == Id);

    protected string Name => DiaryWords.PotName(Garden, Id);

    protected bool IsGone => Pot is null;

    /// <summary>True when there is such a pot, or was.</summary>
    protected bool IsKnown => Pot is not null || Journal.Count(new JournalQuery { Pots = [Id] }) > 0;
}
