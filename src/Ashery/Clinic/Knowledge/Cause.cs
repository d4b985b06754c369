namespace Ashery.Clinic.Knowledge;

/// <summary>A cause as the model counts with it: one of the list, a pair of shortages, or none of those known.</summary>
internal sealed record Cause(string Id, string Name, CauseKind Kind, double Prior)
{
    public CauseRow? Row { get; init; }

    /// <summary>Places of its two halves in the list of causes; null for one that is not a pair.</summary>
    public (int A, int B)? Pair { get; init; }

    public PairRow? Named { get; init; }
}
