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
        services.AddScoped(static s => s.GetRequiredService<IRecords>().Garden(Whose(s).Key, Whose(s).By));
        services.AddScoped(static s => s.GetRequiredService<IRecords>().Journal(Whose(s).Key, Whose(s).By));
        services.AddSingleton<GardenCache>();
        services.AddScoped<GardenDesk>();
        services.AddSingleton<TodayCache>();
        services.AddScoped<TodayDesk>();
        services.AddSingleton<FitDesk>();
    }

    private static CurrentGarden Whose(IServiceProvider services) => services.GetRequiredService<CurrentGarden>();
}
