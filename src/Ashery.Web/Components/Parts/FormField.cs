using Ashery.Problems;
using Ashery.Web.Forms;
using Microsoft.AspNetCore.Components;

namespace Ashery.Web.Components.Parts;

/// <summary>What every kind of field shares: its name, its label, and what is wrong with it.</summary>
public abstract class FormField : ComponentBase
{
    [Parameter, EditorRequired]
    public required string Name { get; set; }

    [Parameter, EditorRequired]
    public required string Label { get; set; }

    [Parameter]
    public string? Hint { get; set; }

    [Parameter, EditorRequired]
    public required Draft Draft { get; set; }

    [Parameter]
    public IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>Tells two forms of one page apart.</summary>
    [Parameter]
    public string Form { get; set; } = "";

    protected string Id => "f-" + Form + Name;

    protected IEnumerable<Problem> Own => Problems.Where(p => p.Field == Name);

    protected bool IsWrong => Own.Any(p => p.Severity == Severity.Error);

    protected string? DescribedBy => (Hint is null ? null : Id + "-hint") is var hint && Own.Any()
        ? $"{hint} {Id}-wrong".Trim()
        : hint;
}
