using Ashery.Cli.Text;

namespace Ashery.Cli.Frame;

/// <summary>When the fault is ours: a short word, no trace on the screen, the trace on request.</summary>
internal static class Apology
{
    public static int Print(Terminal terminal, Exception ours)
    {
        Paragraph.Write(
            terminal.Errors,
            $"ashery: sorry, something went wrong inside ashery ({ours.GetType().Name}). Nothing was changed. Please report what you "
            + "typed. With ASHERY_TRACE=1 the details are printed for the report.",
            terminal.Width);
        if (terminal.Environment("ASHERY_TRACE") == "1")
        {
            terminal.Errors.WriteLine(ours.ToString());
        }

        return ExitCode.Failed;
    }
}
