namespace Ashery.Journal;

/// <summary>A feed was given to the entry's pots.</summary>
/// <param name="FeedId">Feed of the garden.</param>
/// <param name="Amounts">What each pot got.</param>
/// <param name="Task">The planned feed it answers; null when it was given besides the plan.</param>
/// <param name="Batch">Entry of the mixed batch it was taken from; null when not known.</param>
public sealed record FeedGiven(string FeedId, IReadOnlyList<PotAmount> Amounts, TaskId? Task = null, Guid? Batch = null) : EntryFacts;

/// <summary>What one pot got.</summary>
/// <param name="PotId">Which pot.</param>
/// <param name="Grams">g of feed for one pot, as a dose says it; each of a row of equal pots (<c>Pot.Count</c>) got as much.</param>
/// <param name="Litres">L of water it was given in, or with; null when not measured.</param>
public sealed record PotAmount(string PotId, double Grams, double? Litres = null);

/// <summary>A planned feed was left out for the entry's pots.</summary>
/// <param name="Task">Which.</param>
/// <param name="Why">In a word or two: rain, heat, dry medium, other.</param>
public sealed record TaskSkipped(TaskId Task, string Why) : EntryFacts;

/// <summary>A planned feed was put off or brought forward for the entry's pots.</summary>
/// <param name="Task">Which.</param>
/// <param name="To">The new day.</param>
public sealed record TaskMoved(TaskId Task, DateOnly To) : EntryFacts;
