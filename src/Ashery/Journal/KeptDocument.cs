namespace Ashery.Journal;

/// <summary>A value of a later stage kept whole, in the JSON that stage reads and writes: a visit to the clinic with its outcome, a trial, the
/// calendar address.</summary>
/// <param name="Stage"><c>clinic</c>, <c>trial</c> or <c>calendar</c>.</param>
/// <param name="Title">For lists.</param>
/// <param name="Json">As that stage's file.</param>
public sealed record KeptDocument(string Stage, string Title, string Json) : EntryFacts;
