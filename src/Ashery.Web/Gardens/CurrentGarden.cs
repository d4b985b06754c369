using Ashery.Records;

namespace Ashery.Web.Gardens;

/// <summary>Whose garden a request is about and in whose name it writes. Without accounts: the only one there is, in nobody's name.</summary>
public sealed class CurrentGarden
{
    /// <summary>Key of the garden in the records.</summary>
    public string Key { get; set; } = IRecords.Home;

    /// <summary>Name for the history; empty where there are no accounts.</summary>
    public string By { get; set; } = "";

    public GardenRole Role { get; set; } = GardenRole.Owner;

    /// <summary>May back up and restore the whole database, every garden in it: only where there are no accounts.</summary>
    public bool KeepsAll => By.Length == 0 && Key == IRecords.Home;
}

/// <summary>What somebody may do in a garden; each may also do what those after it may.</summary>
public enum GardenRole
{
    /// <summary>Everything, sharing included.</summary>
    Owner,

    /// <summary>Work in the garden.</summary>
    Helper,

    /// <summary>Look.</summary>
    Reader,
}
