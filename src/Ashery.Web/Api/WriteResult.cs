using Ashery.Problems;
using Ashery.Records;

namespace Ashery.Web.Api;

/// <summary>What became of one entry of a request.</summary>
internal abstract record WriteResult
{
    private WriteResult()
    {
    }

    public sealed record Done(StoredEntry Entry) : WriteResult;

    public sealed record Refused(Guid? Id, IReadOnlyList<Problem> Problems) : WriteResult;

    public sealed record Overtaken(StoredEntry Theirs) : WriteResult;
}
