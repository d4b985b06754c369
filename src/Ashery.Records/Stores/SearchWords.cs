using System.Globalization;
using System.Text;
using Ashery.Journal;

namespace Ashery.Records.Stores;

/// <summary>
/// What a search finds an entry by. The words are cut here and not by the database, so that both databases find the same: letters and digits of
/// any script, small, without accents.
/// </summary>
public static class SearchWords
{
    /// <summary>Longer words are cut, in entries and questions alike.</summary>
    public const int Longest = 64;

    private const int MostAsked = 16, HashSigns = 54;

    /// <summary>The words of an entry, each once: its note, its kind and what it names.</summary>
    public static IReadOnlyList<string> Of(Entry entry)
    {
        var text = new StringBuilder(entry.Note).Append(' ').Append(EntryKind.Of(entry.Facts));
        foreach (var name in Names(entry.Facts).Concat(entry.Pots))
        {
            text.Append(' ').Append(name);
        }

        return Cut(text.ToString());
    }

    /// <summary>The words of a question; null when it asks nothing, none when it is made of signs that no word has.</summary>
    public static IReadOnlyList<string>? Asked(string question) =>
        string.IsNullOrWhiteSpace(question) ? null : [.. Cut(question).Take(MostAsked)];

    /// <summary>The word by which the entries of a kept photograph are found: no beginning of a hash is ever taken for a word of the grower's.</summary>
    public static string OfPhoto(string hash) => "photograph" + (hash.Length > HashSigns ? hash[..HashSigns] : hash);

    /// <summary>Text as words, each once, in the order in which they stand.</summary>
    public static IReadOnlyList<string> Cut(string text)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        List<string> words = [];
        var word = new StringBuilder();
        foreach (var sign in Whole(text).Normalize(NormalizationForm.FormD).EnumerateRunes())
        {
            switch (Rune.GetUnicodeCategory(sign))
            {
                case UnicodeCategory.NonSpacingMark:
                    continue;
                case UnicodeCategory.SpacingCombiningMark:
                    word.Append(sign);
                    continue;
            }

            if (Rune.IsLetterOrDigit(sign))
            {
                word.Append(Rune.ToLowerInvariant(sign));
                continue;
            }

            End();
        }

        End();
        return words;

        void End()
        {
            if (word.Length > 0)
            {
                var cut = word.Length <= Longest ? word.ToString() : word.ToString(0, char.IsHighSurrogate(word[Longest - 1]) ? Longest - 1 : Longest);
                if (seen.Add(cut))
                {
                    words.Add(cut);
                }

                word.Clear();
            }
        }
    }

    // Half a sign (a lone surrogate) has no normal form.
    private static string Whole(string text)
    {
        if (!text.Any(char.IsSurrogate))
        {
            return text;
        }

        var whole = new StringBuilder(text.Length);
        foreach (var sign in text.EnumerateRunes())
        {
            whole.Append(sign);
        }

        return whole.ToString();
    }

    private static IEnumerable<string?> Names(EntryFacts facts) => facts switch
    {
        FeedGiven given => [given.FeedId],
        TaskSkipped skipped => [skipped.Task.FeedId, skipped.Why],
        TaskMoved moved => [moved.Task.FeedId],
        Measured measured => [measured.What.ToString()],
        PlantEvent happened => [happened.What.ToString(), happened.Medium, happened.Place],
        Sighting seen => [seen.What],
        WeatherNoted noted => [noted.What.ToString()],
        Photograph photograph => [OfPhoto(photograph.Hash)],
        BagBought bought => [bought.BagId, bought.Lot],
        StockCounted counted => [counted.BagId],
        BatchMade batch => [batch.Lot, batch.FeedId, .. batch.Weighings.Select(static w => w.BagId)],
        Discarded discarded => [discarded.BagId, discarded.Why],
        KeptDocument document => [document.Stage, document.Title],
        _ => [],
    };
}
