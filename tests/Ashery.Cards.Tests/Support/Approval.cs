using System.Runtime.CompilerServices;
using System.Text;

namespace Ashery.Cards.Tests.Support;

/// <summary>
/// Compares a rendered text with the file a person looked at and approved. On a difference it writes <c>NAME.received.EXT</c>
/// beside it and fails with the first lines that differ; to approve, look at it and rename it. Nothing approves itself.
/// </summary>
internal static class Approval
{
    public static void Check(string received, string name, string extension, [CallerFilePath] string caller = "")
    {
        var folder = Path.GetDirectoryName(caller)!;
        var approvedPath = Path.Combine(folder, $"{name}.approved.{extension}");
        var receivedPath = Path.Combine(folder, $"{name}.received.{extension}");
        var approved = File.Exists(approvedPath) ? File.ReadAllText(approvedPath) : null;
        if (approved == received)
        {
            File.Delete(receivedPath);
            return;
        }

        File.WriteAllText(receivedPath, received);
        Assert.Fail(approved is null ? $"Nothing approved yet. Look at {name}.received.{extension}." : Difference(approved, received, name));
    }

    internal static string Difference(string approved, string received, string name)
    {
        var (a, r) = (approved.Split('\n'), received.Split('\n'));
        var text = new StringBuilder().Append(name).Append(" differs:\n");
        var shown = 0;
        for (var i = 0; i < Math.Max(a.Length, r.Length) && shown < 8; i++)
        {
            var (x, y) = (i < a.Length ? a[i] : "(end)", i < r.Length ? r[i] : "(end)");
            if (x != y)
            {
                text.Append("line ").Append(i + 1).Append("\n  approved: ").Append(x).Append("\n  received: ").Append(y).Append('\n');
                shown++;
            }
        }

        return text.ToString();
    }
}
