using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>What a page asks for when it works on the garden of its request.</summary>
internal static class GardenServices
{
    public static void AddGardens(this IServiceCollection services, IRecords records)
    {
        services.AddSingleton(records);
        services.AddScoped<CurrentGarden>();

        // Whoever fills in CurrentGarden must do so before the first of these is asked for.
        services.AddScoped<IGardenStore>(static s => new GuardedStore(s.GetRequiredService<IRecords>().Garden(Whose(s).Key, Whose(s).By), Whose(s)));
        services.AddScoped<IJournal>(static s => new GuardedJournal(s.GetRequiredService<IRecords>().Journal(Whose(s).Key, Whose(s).By), Whose(s)));
        services.AddSingleton<GardenCache>();
        services.AddScoped<GardenDesk>();
        services.AddSingleton<TodayCache>();
        services.AddScoped<TodayDesk>();
        services.AddSingleton<StockCache>();
        services.AddScoped<StockDesk>();
        services.AddSingleton<FitDesk>();
    }

    /// <summary>Backup and restore from a page.</summary>
    public static void AddBackups(this IServiceCollection services, string database, string gardenFile) =>
        services
            .Configure<Microsoft.AspNetCore.Http.Features.FormOptions>(static form => form.MultipartBodyLengthLimit = BackupDesk.Most)
            .AddSingleton(s => new BackupDesk(database, gardenFile, s.GetRequiredService<Ashery.Records.Photos.PhotoFiles>(), s.GetRequiredService<TimeProvider>()));

    private static CurrentGarden Whose(IServiceProvider services) => services.GetRequiredService<CurrentGarden>();
}
