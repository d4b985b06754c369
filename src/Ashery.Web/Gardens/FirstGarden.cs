using Ashery.Climate;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>The garden of the first start.</summary>
internal static class FirstGarden
{
    public const string DemoPlanted = "Demo garden set up";

    /// <summary>Nothing yet: no place, no pots, no bags.</summary>
    public static Garden Empty { get; } = new() { Name = "My garden", Place = new Place { Name = "My place", Latitude = 45 } };

    /// <summary>Puts the demo garden into an empty store.</summary>
    public static void Plant(IGardenStore store, TimeProvider clock)
    {
        if (!store.HasGarden)
        {
            store.Save(Demo(clock), basedOn: 0, DemoPlanted);
        }
    }

    public static Garden Demo(TimeProvider clock) => DemoGarden.Create(DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
}
