namespace Ashery.Web.Show;

/// <summary>Words at the head of a line.</summary>
public static class Say
{
    /// <summary>With a capital at the beginning; pH stays as it is written.</summary>
    public static string Capital(string words) => words.Length == 0 || words.StartsWith("pH", StringComparison.Ordinal) ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
