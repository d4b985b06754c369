namespace Ashery.Cli.Frame;

/// <summary>What the program's end says.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>A wish that cannot be met; the answer says why and what is nearest.</summary>
    public const int OutOfReach = 1;

    /// <summary>Wrong use or bad input; the message names the field and the way out.</summary>
    public const int WrongUse = 2;

    /// <summary>Our own mistake (EX_SOFTWARE of sysexits.h).</summary>
    public const int Failed = 70;
}
