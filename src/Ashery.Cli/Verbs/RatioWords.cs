using Ashery.Cli.Frame;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Cli.Verbs;

/// <summary>The ratio of an injector, as <c>1:100</c> or <c>100</c>.</summary>
internal static class RatioWords
{
    /// <summary>Parts of water to one of stock; null, with a problem kept, when it cannot be read.</summary>
    public static double? Read(Given given, ValueOption option, string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon >= 0 && text[..colon].Trim() != "1")
        {
            given.Add(new Problem(Given.Field(option), $"{SafeText.Quoted(text)} does not begin with 1.", "Write one part of stock to so many of water, as in 1:100."));
            return null;
        }

        var read = NumberReader.Positive(text[(colon + 1)..], Given.Field(option), 1e6, "1:100");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }
}
