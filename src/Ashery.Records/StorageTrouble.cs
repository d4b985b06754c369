using Ashery.Problems;

namespace Ashery.Records;

/// <summary>
/// The records could not be read or written: the disk is full or may not be written to, the database does not answer. Nothing was half-written.
/// Thrown, not returned: it can meet any line that touches the records, and one place of the web and one of the command line tell it.
/// </summary>
public sealed class StorageTrouble(Problem problem, Exception? inner = null) : Exception(problem.Message, inner)
{
    /// <summary>What is wrong and the way out.</summary>
    public Problem Problem { get; } = problem;
}
