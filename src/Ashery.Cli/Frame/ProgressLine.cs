using System.Globalization;
using Ashery.Planning.Fit;

namespace Ashery.Cli.Frame;

/// <summary>One line on the error stream that says how far a long run is; nothing where no one watches.</summary>
internal sealed class ProgressLine(Terminal terminal) : IProgress<FitProgress>
{
    private readonly Lock gate = new();
    private int shown = -1;

    public void Report(FitProgress value)
    {
        if (!terminal.Watched)
        {
            return;
        }

        lock (gate)
        {
            var percent = (int)(value.Share * 100);
            if (percent > shown)
            {
                shown = percent;
                terminal.Errors.Write(string.Create(CultureInfo.InvariantCulture, $"\r{value.Stage}: {percent} %").PadRight(40));
                terminal.Errors.Flush();
            }
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Clear()
    {
        if (terminal.Watched && shown >= 0)
        {
            terminal.Errors.Write("\r".PadRight(41) + "\r");
            shown = -1;
        }
    }
}
