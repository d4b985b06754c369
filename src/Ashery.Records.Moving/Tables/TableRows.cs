using System.Reflection;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata;

namespace Ashery.Records.Moving.Tables;

/// <summary>The rows of any table of an EF model, without knowing its class.</summary>
internal static class TableRows
{
    private const int AtOnce = 500;

    private static readonly MethodInfo ReadAny = Method(nameof(ReadOf)), ClearAny = Method(nameof(ClearOf));

    /// <summary>Tables in such an order that what a row points at comes before it.</summary>
    public static IReadOnlyList<IEntityType> InOrder(IModel model)
    {
        List<IEntityType> order = [];
        foreach (var type in model.GetEntityTypes().OrderBy(static t => t.GetTableName(), StringComparer.Ordinal))
        {
            Visit(type);
        }

        return order;

        void Visit(IEntityType type)
        {
            if (order.Contains(type))
            {
                return;
            }

            foreach (var to in type.GetForeignKeys().Select(static k => k.PrincipalEntityType).Where(to => to != type))
            {
                Visit(to);
            }

            order.Add(type);
        }
    }

    public static IEnumerable<object> Read(DbContext db, IEntityType type) => (IEnumerable<object>)ReadAny.MakeGenericMethod(type.ClrType).Invoke(null, [db])!;

    public static void Clear(DbContext db, IEntityType type) => ClearAny.MakeGenericMethod(type.ClrType).Invoke(null, [db]);

    /// <summary>Puts rows in, with the numbers they have.</summary>
    public static void Insert(DbContext db, IEnumerable<object> rows)
    {
        db.ChangeTracker.AutoDetectChangesEnabled = false;
        foreach (var some in rows.Chunk(AtOnce))
        {
            db.AddRange(some);
            db.SaveChanges();
            db.ChangeTracker.Clear();
        }
    }

    /// <summary>Lets numbers that the database gives go on after those that were put in. SQLite does so by itself.</summary>
    public static void GoOnCounting(DbContext db, IEntityType type)
    {
        if (!db.Database.ProviderName!.Contains("Npgsql", StringComparison.Ordinal)
            || type.FindPrimaryKey() is not { Properties: [var key] } || key.ValueGenerated != ValueGenerated.OnAdd || key.ClrType != typeof(long) && key.ClrType != typeof(int))
        {
            return;
        }

        var (table, column) = ($"\"{type.GetTableName()}\"", key.GetColumnName());
#pragma warning disable EF1002 // names of our own model
        db.Database.ExecuteSqlRaw($"SELECT setval(pg_get_serial_sequence('{table}', '{column}'), (SELECT coalesce(max(\"{column}\"), 0) + 1 FROM {table}), false)");
#pragma warning restore EF1002
    }

    private static IEnumerable<object> ReadOf<T>(DbContext db)
        where T : class => db.Set<T>().AsNoTracking().AsEnumerable();

    private static void ClearOf<T>(DbContext db)
        where T : class => db.Set<T>().ExecuteDelete();

    private static MethodInfo Method(string name) => typeof(TableRows).GetMethod(name, BindingFlags.NonPublic | BindingFlags.Static)!;
}
