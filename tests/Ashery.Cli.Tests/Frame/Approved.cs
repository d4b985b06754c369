using System.Runtime.CompilerServices;

namespace Ashery.Cli.Tests.Frame;

/// <summary>
/// Compares a text with the approved one in <c>Approved/NAME.approved.txt</c>. On a difference the new text is put beside it as
/// <c>NAME.received.txt</c>; when it is right, it is renamed over the approved one, by a person.
/// </summary>
internal static class Approved
{
    public static void Match(string name, string text, [CallerFilePath] string here = "")
    {
        var folder = Path.Combine(Repository.Root(here), "tests", "Ashery.Cli.Tests", "Approved");
        var approved = Path.Combine(folder, name + ".approved.txt");
        var received = Path.Combine(folder, name + ".received.txt");
        var wanted = File.Exists(approved) ? File.ReadAllText(approved) : string.Empty;
        if (wanted == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"{name} differs from what is approved; compare {name}.received.txt with {name}.approved.txt.\n{FirstDifference(wanted, text)}");
    }

    private static string FirstDifference(string wanted, string text)
    {
        var (a, b) = (wanted.Split('\n'), text.Split('\n'));
        for (var i = 0; i < Math.Max(a.Length, b.Length); i++)
        {
            var (before, now) = (i < a.Length ? a[i] : "(end)", i < b.Length ? b[i] : "(end)");
            if (before != now)
            {
                return FormattableString.Invariant($"line {i + 1}\napproved: {before}\nnow:      {now}");
            }
        }

        return "no line differs";
    }
}
