using Ashery.Records.Model;
using Microsoft.EntityFrameworkCore.Design;

namespace Ashery.Records.Postgres;

/// <summary>Lets <c>dotnet ef migrations add NAME</c> build the context without a database.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<GardenDb>
{
    public GardenDb CreateDbContext(string[] args) => new(PostgresOptions.For("Host=localhost;Database=design-time"));
}
