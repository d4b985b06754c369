namespace Ashery.Cli.Frame;

/// <summary>Everything a verb may touch of the world, so that a test can hand it another one.</summary>
internal sealed record Terminal
{
    public required TextWriter Output { get; init; }

    public required TextWriter Errors { get; init; }

    /// <summary>Bold and colour are wanted: a terminal, and neither NO_COLOR nor a dumb one.</summary>
    public bool Styled { get; init; }

    /// <summary>Errors go to a terminal: a line of progress may be written over itself there.</summary>
    public bool Watched { get; init; }

    public Func<string, string?> Environment { get; init; } = static _ => null;

    /// <summary>The day by the grower's clock.</summary>
    public required Func<DateOnly> Today { get; init; }

    /// <summary>The moment, for stamps in files.</summary>
    public required Func<DateTimeOffset> Now { get; init; }

    /// <summary>Signs in a line of text.</summary>
    public int Width { get; init; } = 80;

    public static Terminal OfProcess(TextWriter output, TextWriter errors) => new()
    {
        Output = output,
        Errors = errors,
        Environment = System.Environment.GetEnvironmentVariable,
        Today = static () => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
        Now = static () => TimeProvider.System.GetUtcNow(),
        Watched = !Console.IsErrorRedirected,
        Styled = !Console.IsOutputRedirected
            && string.IsNullOrEmpty(System.Environment.GetEnvironmentVariable("NO_COLOR"))
            && System.Environment.GetEnvironmentVariable("TERM") is { Length: > 0 } and not "dumb",
    };
}
