using Ashery.Problems;

namespace Ashery.Records.Moving.Tables;

/// <summary>All rows of one database into another, in one transaction, and looked at again before it ends.</summary>
internal static class TableCopy
{
    /// <summary>The content hash of what is now in <paramref name="to"/>.</summary>
    /// <param name="from">Read as of one moment.</param>
    /// <param name="to">What it holds goes.</param>
    public static Result<string> Replace(OpenTables from, OpenTables to)
    {
        using var reading = from.BeginRead();
        using var writing = to.BeginWrite();
        foreach (var context in to.Contexts.Reverse())
        {
            foreach (var type in TableRows.InOrder(context.Model).Reverse())
            {
                TableRows.Clear(context, type);
            }
        }

        foreach (var (source, target) in from.Contexts.Zip(to.Contexts))
        {
            foreach (var (mine, theirs) in TableRows.InOrder(source.Model).Zip(TableRows.InOrder(target.Model)))
            {
                TableRows.Insert(target, TableRows.Read(source, mine));
                TableRows.GoOnCounting(target, theirs);
            }
        }

        var (before, after) = (ContentHash.Of(from.Contexts), ContentHash.Of(to.Contexts));
        if (before != after)
        {
            return Result.Fail<string>("copy", "What arrived is not what was sent. Nothing was changed.", "Make a backup and report this: it is a mistake of Ashery.");
        }

        writing.Commit();
        return Result.Of(after);
    }
}
