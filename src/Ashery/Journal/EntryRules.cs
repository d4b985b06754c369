using Ashery.Problems;

namespace Ashery.Journal;

/// <summary>What an entry may hold. The limits keep slips of the thumb out (a pH of 65), not unusual plants.</summary>
public static class EntryRules
{
    public const int MostPots = 2000, LongestNote = 4000, LongestName = 200, LongestDocument = 512 * 1024;

    private const double MostGrams = 1e6, MostLitres = 1e5, MostMoney = 1e7;

    private static readonly DateOnly First = new(1900, 1, 1), Last = new(2199, 12, 31);

    /// <summary>Everything that is wrong with it; empty when nothing is.</summary>
    public static IReadOnlyList<Problem> Check(Entry entry)
    {
        List<Problem> problems = [];
        if (entry.Id == Guid.Empty)
        {
            problems.Add(new("id", "The id is empty.", "Make a random one (UUID) for each new entry."));
        }

        if (entry.Day < First || entry.Day > Last)
        {
            problems.Add(new("day", "The day is not between 1900 and 2199.", "Write it as 2027-04-03."));
        }

        if (entry.Pots.Count > MostPots)
        {
            problems.Add(new("pots", FormattableString.Invariant($"One entry holds at most {MostPots} pots."), "Write it as several."));
        }

        Text(problems, "note", entry.Note, LongestNote);
        foreach (var pot in entry.Pots)
        {
            Text(problems, "pots", pot, LongestName);
        }

        if (!HasGaps(problems, entry.Facts))
        {
            Facts(problems, entry);
        }

        return problems;
    }

    // A list in a file may hold "null" where the type promises a value.
    private static bool HasGaps(List<Problem> problems, EntryFacts facts)
    {
        var list = facts switch
        {
            FeedGiven given when given.Amounts.Any(static a => a?.PotId is null) => "amounts",
            BatchMade batch when batch.Weighings.Any(static w => w?.BagId is null) => "weighings",
            _ => null,
        };
        if (list is not null)
        {
            problems.Add(new(list, "There is an empty place in the list.", "Leave it out."));
        }

        return list is not null;
    }

    private static void Facts(List<Problem> problems, Entry entry)
    {
        switch (entry.Facts)
        {
            case FeedGiven given:
                Text(problems, "feedId", given.FeedId, LongestName);
                foreach (var amount in given.Amounts)
                {
                    Range(problems, "grams", amount.Grams, 0, MostGrams, "g");
                    Range(problems, "litres", amount.Litres ?? 0, 0, MostLitres, "L");
                }

                break;
            case TaskSkipped skipped:
                Text(problems, "why", skipped.Why, LongestName);
                break;
            case Measured measured:
                MeasuredRange.Check(problems, measured);
                if (entry.Pots.Count != 1)
                {
                    problems.Add(new("pots", "A figure is read on one pot.", "Write one entry a pot."));
                }

                break;
            case PlantEvent happened:
                Range(problems, "litres", happened.Litres ?? 0, 0, MostLitres, "L");
                Text(problems, "place", happened.Place ?? "", LongestName);
                Text(problems, "medium", happened.Medium ?? "", LongestName);
                break;
            case Sighting seen:
                Text(problems, "what", seen.What, LongestName);
                Range(problems, "severity", seen.Severity, 0, 3, "");
                break;
            case Photograph photograph:
                if (photograph.Hash.Length != 64 || !photograph.Hash.All(char.IsAsciiHexDigitLower))
                {
                    problems.Add(new("hash", "This is not the hash of a kept photograph.", "Send the photograph itself first."));
                }

                break;
            case BagBought bought:
                Text(problems, "lot", bought.Lot ?? "", LongestName);
                Range(problems, "grams", bought.Grams, 0.001, MostGrams, "g");
                Range(problems, "price", bought.Price ?? 0, 0, MostMoney, "");
                break;
            case StockCounted counted:
                Range(problems, "grams", counted.Grams, 0, MostGrams, "g");
                break;
            case BatchMade batch:
                Text(problems, "lot", batch.Lot, LongestName);
                foreach (var weighing in batch.Weighings)
                {
                    Range(problems, "grams", weighing.Grams, 0, MostGrams, "g");
                }

                if (!(batch.TotalGrams() > 0))
                {
                    problems.Add(new("weighings", "Nothing was weighed.", "Give the grams of each bag."));
                }

                break;
            case Discarded discarded:
                Range(problems, "grams", discarded.Grams, 0, MostGrams, "g");
                Text(problems, "why", discarded.Why, LongestName);
                break;
            case KeptDocument document:
                Text(problems, "title", document.Title, LongestName);
                Text(problems, "json", document.Json, LongestDocument);
                break;
        }
    }

    private static void Text(List<Problem> problems, string field, string? text, int most)
    {
        if (text is null)
        {
            problems.Add(new(field, "There is an empty place in the list.", "Leave it out."));
            return;
        }

        if (text.Length > most)
        {
            problems.Add(new(field, FormattableString.Invariant($"The text has {text.Length} signs; {most} fit."), "Shorten it."));
        }

        // PostgreSQL keeps no NUL in a text, and nobody types one.
        if (text.Contains('\0', StringComparison.Ordinal))
        {
            problems.Add(new(field, "The text holds a sign that is none (NUL).", "Type it again."));
        }
    }

    internal static void Range(List<Problem> problems, string field, double value, double from, double to, string unit)
    {
        if (!(value >= from && value <= to))
        {
            problems.Add(new(field, FormattableString.Invariant($"{value} is not between {from} and {to} {unit}").TrimEnd() + ".", "Look at the figure and its unit once more."));
        }
    }
}
