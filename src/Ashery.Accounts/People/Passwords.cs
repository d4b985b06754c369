using Ashery.Problems;

namespace Ashery.Accounts.People;

/// <summary>
/// Which passwords are taken: long ones, of any signs (no rules of composition), none that is guessed first. The words below are common knowledge, no source.
/// </summary>
public static class Passwords
{
    public const int Least = 12;
    public const int Most = 200;
    private const int FewSigns = 5;

    private static readonly string[] GuessedFirst =
    [
        "password", "passwort", "qwerty", "qwertz", "azerty", "letmein", "welcome", "iloveyou", "administrator", "changeme", "ashery",
        "dragon", "monkey", "football", "baseball", "princess", "sunshine", "superman", "trustno", "master", "garden", "flower", "secret",
    ];

    private static readonly string[] Rows = ["01234567890", "abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl", "zxcvbnm", "qwertzuiop", "azertyuiop"];

    /// <summary>What is wrong with a password; null when it is taken.</summary>
    /// <param name="password">As typed, spaces included.</param>
    /// <param name="own">Words that anybody would try for this person: the name, the garden.</param>
    public static Problem? Check(string? password, params IReadOnlyList<string> own)
    {
        var typed = password ?? "";
        if (typed.Length < Least)
        {
            return new("password", FormattableString.Invariant($"A password needs {Least} signs or more; this has {typed.Length}."), "Four words that have nothing to do with each other are easy to keep in mind.");
        }

        if (typed.Length > Most)
        {
            return new("password", FormattableString.Invariant($"A password has at most {Most} signs."), "Take a shorter one.");
        }

        // What is left when everything that is guessed first is struck out must still be long enough to be hard.
        var left = typed.ToLowerInvariant();
        foreach (var word in own.Concat(GuessedFirst).Where(static w => w.Length >= 3))
        {
            left = left.Replace(word.ToLowerInvariant(), "", StringComparison.Ordinal);
        }

        return left.Distinct().Count() < FewSigns || Runs(left) > left.Length / 2
            ? new Problem("password", "This password is one of those that are guessed first.", "Leave out names, rows of keys and repeated signs: four words that have nothing to do with each other will do.")
            : null;
    }

    /// <summary>How many signs follow their neighbour in a row of keys or the alphabet, or repeat it.</summary>
    private static int Runs(string text)
    {
        var count = 0;
        for (var i = 1; i < text.Length; i++)
        {
            var pair = text.Substring(i - 1, 2);
            count += pair[0] == pair[1] || Rows.Any(r => r.Contains(pair, StringComparison.Ordinal)) ? 1 : 0;
        }

        return count;
    }
}
