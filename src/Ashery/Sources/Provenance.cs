namespace Ashery.Sources;

/// <summary>How a figure came into the data: what a reader may rely on.</summary>
public enum Provenance
{
    /// <summary>Recalled; nobody has looked it up yet. The weakest class, and it says so wherever it is shown.</summary>
    FromMemory,

    /// <summary>Custom of growers; no publication stands behind it.</summary>
    CommonPractice,

    /// <summary>Worked out here from other rows (stoichiometry, arithmetic), reproducible.</summary>
    Computed,

    /// <summary>Read in the text of the source named.</summary>
    Seen,
}
