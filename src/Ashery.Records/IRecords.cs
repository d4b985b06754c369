namespace Ashery.Records;

/// <summary>A database with the gardens in it.</summary>
public interface IRecords
{
    /// <summary>The garden of a machine that has only one.</summary>
    const string Home = "home";

    /// <summary>The store of one garden, which writes in somebody's name.</summary>
    /// <param name="garden">Key of the garden; <see cref="Home"/> where there are no accounts.</param>
    /// <param name="by">Name for the history; empty where there are no accounts.</param>
    IGardenStore Garden(string garden, string by = "");

    /// <summary>The journal of one garden.</summary>
    IJournal Journal(string garden, string by = "");

    /// <summary>Keys and names of all gardens.</summary>
    IReadOnlyList<GardenListing> Gardens();

    /// <summary>True when the database answers.</summary>
    bool IsThere();
}

/// <summary>A garden in a list.</summary>
public sealed record GardenListing(string Key, string Name);
