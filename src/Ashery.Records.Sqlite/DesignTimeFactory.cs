using Ashery.Records.Model;
using Microsoft.EntityFrameworkCore.Design;

namespace Ashery.Records.Sqlite;

/// <summary>Lets <c>dotnet ef migrations add NAME</c> build the context without a garden.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<GardenDb>
{
    public GardenDb CreateDbContext(string[] args) => new(SqliteOptions.For("design-time.db"));
}
