using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Turns the words of a wish into figures on the label's basis, each nutrient once.</summary>
internal static class WishWords
{
    private static readonly Nutrient[] Primary = [Nutrient.N, Nutrient.P, Nutrient.K];

    public static Result<Dictionary<Nutrient, double>> Read(string[] words, string field, double most, string example)
    {
        var figures = new Dictionary<Nutrient, double>();
        var notes = new List<Problem>();
        var next = 0;
        if (words.Length > 0 && (words[0].Contains(':', StringComparison.Ordinal) || words[0].Contains('-', StringComparison.Ordinal))
            && !words[0].Contains('=', StringComparison.Ordinal))
        {
            if (Triple(words[0], field, most, example, figures) is { } problem)
            {
                return Result.Fail<Dictionary<Nutrient, double>>(problem);
            }

            next = 1;
        }

        while (next < words.Length)
        {
            if (Named(words, ref next, field, most, example, figures, notes) is { } problem)
            {
                return Result.Fail<Dictionary<Nutrient, double>>(problem);
            }
        }

        return Result.Of(figures, notes);
    }

    // 3:1:2 or 10-5-10: N, P2O5, K2O in that order.
    private static Problem? Triple(string word, string field, double most, string example, Dictionary<Nutrient, double> figures)
    {
        var parts = word.Split(word.Contains(':', StringComparison.Ordinal) ? ':' : '-');
        if (parts.Length != Primary.Length)
        {
            return new Problem(
                field,
                $"{Say.Quoted(word)} has {parts.Length} parts; N, P2O5 and K2O are three.",
                parts.Length > Primary.Length
                    ? $"Name a fourth nutrient, as in {example} Mg 2, and write a number without a sign."
                    : $"Write 0 for one that is not wanted, as in {example}.");
        }

        for (var i = 0; i < Primary.Length; i++)
        {
            var number = PlainNumber.Read(parts[i], $"{field}, {LabelBasis.Symbol(Primary[i])}", 0, most, example);
            if (!number.Ok)
            {
                return number.Problems[0];
            }

            figures[Primary[i]] = number.Value;
        }

        return null;
    }

    // Mg=2, Mg 2, 2MgO or 2 MgO.
    private static Problem? Named(
        string[] words, ref int next, string field, double most, string example, Dictionary<Nutrient, double> figures, List<Problem> notes)
    {
        var (name, number) = TakeNameAndNumber(words, ref next);
        if (name.Length == 0)
        {
            return new Problem(
                field, $"{Say.Quoted(number)} has no nutrient's name.", $"Write three parts like {example}, or names like N=3 P2O5=1 K2O=2.");
        }

        if (NutrientWord.Find(name) is not { } word)
        {
            return new Problem(field, $"{Say.Quoted(name)} is not a nutrient known here.", $"Use one of {NutrientWord.Known}.");
        }

        var symbol = LabelBasis.Symbol(word.Nutrient);
        if (word.Nutrient is Nutrient.Cl or Nutrient.Na)
        {
            return new Problem(
                $"{field}, {symbol}", "Chloride and sodium are watched, not wanted.", $"Limit them instead, as in --limit \"{symbol}<=2%\".");
        }

        var value = PlainNumber.Read(number.TrimEnd('%'), $"{field}, {name}", 0, most, $"{name} 2");
        if (!value.Ok)
        {
            return value.Problems[0];
        }

        if (!figures.TryAdd(word.Nutrient, value.Value * word.LabelPerWritten))
        {
            return new Problem($"{field}, {symbol}", $"{symbol} is given twice.", "Give each nutrient once.");
        }

        if (word.IsConverted)
        {
            notes.Add(new Problem(
                $"{field}, {name}",
                $"{Say.Number(value.Value)} {name} is read as {Say.Number(value.Value * word.LabelPerWritten)} {symbol}.",
                $"Write {symbol} where you mean that.",
                Severity.Note));
        }

        return null;
    }

    private static (string Name, string Number) TakeNameAndNumber(string[] words, ref int next)
    {
        var word = words[next++];
        var equals = word.IndexOf('=', StringComparison.Ordinal);
        if (equals >= 0)
        {
            return (word[..equals], word[(equals + 1)..]);
        }

        var startsAsNumber = char.IsAsciiDigit(word[0]) || word[0] is '-' or '.';
        if (!startsAsNumber)
        {
            return (word, next < words.Length ? words[next++] : string.Empty);
        }

        // 2MgO: the name starts at the first letter.
        for (var i = 1; i < word.Length; i++)
        {
            if (char.IsAsciiLetter(word[i]))
            {
                return (word[i..], word[..i]);
            }
        }

        return next < words.Length && char.IsAsciiLetter(words[next][0]) && !words[next].Contains('=', StringComparison.Ordinal)
            ? (words[next++], word)
            : (string.Empty, word);
    }
}
