namespace Ashery.Problems;

/// <summary>Something a grower got wrong or a wish that cannot be met, said so that they can go on.</summary>
/// <param name="Field">The field as the grower knows it: <c>ratio</c>, <c>line 12, N</c>, <c>batch</c>.</param>
/// <param name="Message">What is wrong, with the limit that was passed.</param>
/// <param name="WayOut">What to do about it, with an example where one helps.</param>
/// <param name="Severity">Whether work can go on.</param>
public sealed record Problem(string Field, string Message, string WayOut, Severity Severity = Severity.Error)
{
    public override string ToString() => $"{Field}: {Message} {WayOut}";
}

/// <summary>How much a <see cref="Problem"/> holds up.</summary>
public enum Severity
{
    /// <summary>Worth knowing; the answer stands.</summary>
    Note,

    /// <summary>The answer stands, but something may go wrong with it.</summary>
    Warning,

    /// <summary>No answer until this is put right.</summary>
    Error,
}
