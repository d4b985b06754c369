namespace Ashery.Journal;

/// <summary>A bag bought. The entry's id is the key of this very bag: batches name it.</summary>
/// <param name="BagId">Which line of the shelf it fills.</param>
/// <param name="Grams">What it holds.</param>
/// <param name="Price">Paid, in the garden's currency; null when not known.</param>
/// <param name="Lot">The maker's lot number; null when not printed.</param>
/// <param name="BestBefore">As printed; null when not.</param>
public sealed record BagBought(string BagId, double Grams, double? Price = null, string? Lot = null, DateOnly? BestBefore = null) : EntryFacts;

/// <summary>What was left was weighed: the book starts anew from it.</summary>
/// <param name="BagId">Which line of the shelf.</param>
/// <param name="Grams">What is there.</param>
/// <param name="Bought">Which bought bag; null for the line as a whole.</param>
public sealed record StockCounted(string BagId, double Grams, Guid? Bought = null) : EntryFacts;

/// <summary>A feed mixed, as it was weighed. The entry's id is the key of the batch; feeds given name it.</summary>
/// <param name="Lot">Lot number on the label.</param>
/// <param name="FeedId">Which feed it was to be.</param>
/// <param name="Weighings">What was really weighed.</param>
/// <param name="UseBy">Last day it should be used; null when it keeps.</param>
public sealed record BatchMade(string Lot, string FeedId, IReadOnlyList<Weighing> Weighings, DateOnly? UseBy = null) : EntryFacts
{
    /// <summary>g of feed made.</summary>
    public double TotalGrams() => Weighings.Sum(static w => w.Grams);
}

/// <summary>One weighing of a batch.</summary>
/// <param name="BagId">Which line of the shelf.</param>
/// <param name="MaterialId">The material of that bag on that day.</param>
/// <param name="Grams">g on the scale.</param>
/// <param name="Bought">Which bought bag it came from; null when not known.</param>
public sealed record Weighing(string BagId, string MaterialId, double Grams, Guid? Bought = null);

/// <summary>Feed or material thrown away.</summary>
/// <param name="Grams">g.</param>
/// <param name="Why">Caked, out of date, spilt.</param>
/// <param name="Batch">From this batch; null when it was a bag.</param>
/// <param name="BagId">From this line of the shelf; null when it was a batch.</param>
/// <param name="Bought">Which bought bag of the line; null when not known, or when it was a batch.</param>
public sealed record Discarded(double Grams, string Why, Guid? Batch = null, string? BagId = null, Guid? Bought = null) : EntryFacts;
