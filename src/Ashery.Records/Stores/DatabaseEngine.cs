using Ashery.Problems;
using Ashery.Records.Model;
using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore.Storage;

namespace Ashery.Records.Stores;

/// <summary>What differs between the databases. All else of the stores is the same for each.</summary>
public abstract class DatabaseEngine
{
    public abstract GardenDb Connect();

    /// <summary>Several queries that see one moment. Keeps nobody from writing.</summary>
    public abstract IDbContextTransaction BeginRead(GardenDb db);

    /// <summary>The one writer of a garden, from here to the end of the transaction.</summary>
    public abstract IDbContextTransaction BeginWrite(GardenDb db, string garden);

    /// <summary>Entries of a garden in which every word stands as a beginning. The words come from <see cref="SearchWords"/>.</summary>
    public abstract IQueryable<EntryRow> Having(GardenDb db, string garden, IReadOnlyList<string> words);

    /// <summary>True when somebody else took the place (version, sequence) a write wanted.</summary>
    public abstract bool IsTaken(Exception e);

    /// <summary>What a failure means to the grower; null when it is a mistake of ours.</summary>
    public abstract Problem? Trouble(Exception e);

    /// <summary>Tells the database to look at its tables anew after very many rows came in at once.</summary>
    public abstract void Settle();

    /// <summary>Runs something on the database and says in words when the database cannot.</summary>
    public T Run<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is not StorageTrouble && Trouble(e) is { } problem)
        {
            throw new StorageTrouble(problem, e);
        }
    }
}
