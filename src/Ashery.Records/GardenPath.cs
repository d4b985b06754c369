namespace Ashery.Records;

/// <summary>Where the garden is kept when nobody says otherwise.</summary>
public static class GardenPath
{
    /// <summary><c>$ASHERY_HOME/garden.db</c>, else the XDG data folder, else <c>~/.local/share/ashery/garden.db</c>.</summary>
    public static string Default(Func<string, string?> environment)
    {
        if (environment("ASHERY_HOME") is { Length: > 0 } home)
        {
            return Path.Combine(Path.GetFullPath(home), "garden.db");
        }

        // XDG Base Directory Specification: a relative path in the variable is to be ignored.
        var data = environment("XDG_DATA_HOME") is { Length: > 0 } xdg && Path.IsPathRooted(xdg)
            ? xdg
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share");
        return Path.Combine(data, "ashery", "garden.db");
    }

    /// <summary>The address of a PostgreSQL database in <c>ASHERY_DATABASE</c>; null where the garden is a file.</summary>
    public static string? Server(Func<string, string?> environment) => environment("ASHERY_DATABASE") is { Length: > 0 } address ? address : null;

    public static string Default() => Default(Environment.GetEnvironmentVariable);
}
