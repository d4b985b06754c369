using Ashery.Pots;

namespace Ashery.Web.Pages.Pots;

/// <summary>How a pot is today, in the words of the form.</summary>
internal static class PotStates
{
    public static IReadOnlyList<(string Value, string Text)> Choices { get; } =
        [("", "Moist and well"), ("dry", "Dry"), ("wilted", "Wilted"), ("waterlogged", "Waterlogged"), ("sick", "Sick roots"), ("repotted", "Just repotted")];

    public static PotState Read(string word) => word switch
    {
        "dry" => new PotState { AvailableWater = 0 },
        "wilted" => new PotState { Wilted = true },
        "waterlogged" => new PotState { Waterlogged = true },
        "sick" => new PotState { SickRoots = true },
        "repotted" => new PotState { Repotted = true },
        _ => new PotState(),
    };
}
