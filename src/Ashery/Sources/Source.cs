namespace Ashery.Sources;

/// <summary>A publication, or an honest statement that there is none.</summary>
/// <param name="Id">Short key used by data rows.</param>
/// <param name="Author">Author or body.</param>
/// <param name="Year">Year of the edition, where known.</param>
/// <param name="Title">Title of the work.</param>
/// <param name="Where">Publisher, journal or address.</param>
public sealed record Source(string Id, string Author, int? Year, string Title, string Where)
{
    /// <summary>True when its text, or a part of it, was read for this project.</summary>
    public bool LookedUp { get; init; }

    /// <summary>What to know before relying on it.</summary>
    public string? Note { get; init; }

    /// <summary>One line for the foot of a page or card.</summary>
    public string Citation => Year is { } year
        ? FormattableString.Invariant($"{Author} ({year}). {Plain}. {Where}")
        : $"{Author}. {Plain}. {Where}";

    // An edition is written "3rd ed." and the parts of a citation are set apart by full stops.
    private string Plain => Title.TrimEnd('.');
}
