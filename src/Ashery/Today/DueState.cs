namespace Ashery.Today;

/// <summary>Where a planned feed of one pot stands. Each is in exactly one.</summary>
public enum DueState
{
    /// <summary>Its day is still to come.</summary>
    Coming,

    /// <summary>Its day is today.</summary>
    Due,

    /// <summary>Its day is past, and it may still be given.</summary>
    Overdue,

    /// <summary>Given.</summary>
    Given,

    /// <summary>Left out by the grower.</summary>
    Skipped,

    /// <summary>Let go: the next turn came, or too many days passed. It is never made up by a double dose.</summary>
    Missed,

    /// <summary>The pot was not in the garden yet, or its plant had died.</summary>
    NotThere,
}
