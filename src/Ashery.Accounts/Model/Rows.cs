namespace Ashery.Accounts.Model;

// Instants are UTC ticks: SQLite has no type for them, and both databases compare numbers alike.

/// <summary>Somebody's part in a garden.</summary>
public sealed class MembershipRow
{
    public string Garden { get; set; } = "";

    public string UserId { get; set; } = "";

    public MemberRole Role { get; set; }
}

/// <summary>A code that may be used once before it ends. Only its hash is kept.</summary>
public sealed class CodeRow
{
    public Guid Id { get; set; }

    /// <summary>A word of <see cref="CodePurpose"/>.</summary>
    public string Purpose { get; set; } = "";

    public string Hash { get; set; } = "";

    /// <summary>Who made it; null for the code of the first start.</summary>
    public string? UserId { get; set; }

    /// <summary>Garden of an invitation.</summary>
    public string? Garden { get; set; }

    public MemberRole? Role { get; set; }

    public long MadeAtTicks { get; set; }

    public long EndsAtTicks { get; set; }

    public long? UsedAtTicks { get; set; }
}

/// <summary>A browser somebody is signed in with.</summary>
public sealed class SessionRow
{
    public Guid Id { get; set; }

    public string UserId { get; set; } = "";

    /// <summary>What the browser says it is, in a few words.</summary>
    public string Device { get; set; } = "";

    public bool IsPaired { get; set; }

    public long BeganAtTicks { get; set; }

    public long SeenAtTicks { get; set; }

    public long EndsAtTicks { get; set; }
}

/// <summary>A personal access token. Only its hash is kept.</summary>
public sealed class TokenRow
{
    public Guid Id { get; set; }

    public string UserId { get; set; } = "";

    public string Name { get; set; } = "";

    /// <summary>A word of <see cref="TokenScope"/>.</summary>
    public string Scope { get; set; } = "";

    /// <summary>The one garden it opens; null: all of its maker.</summary>
    public string? Garden { get; set; }

    public string Hash { get; set; } = "";

    /// <summary>The first signs, to tell tokens apart in a list.</summary>
    public string Start { get; set; } = "";

    public long MadeAtTicks { get; set; }

    public long EndsAtTicks { get; set; }

    public long? SeenAtTicks { get; set; }
}

/// <summary>A line of the log of who did what about access.</summary>
public sealed class AuditRow
{
    public long Id { get; set; }

    public long AtTicks { get; set; }

    /// <summary>A word of <see cref="AuditKind"/>.</summary>
    public string Kind { get; set; } = "";

    /// <summary>Who it is about; null when no account was recognised.</summary>
    public string? UserId { get; set; }

    public string? Garden { get; set; }

    public string Detail { get; set; } = "";

    /// <summary>Network address it came from.</summary>
    public string From { get; set; } = "";
}

/// <summary>A key that signs cookies and forms, as ASP.NET Core writes it.</summary>
public sealed class ProtectionKeyRow
{
    public long Id { get; set; }

    public string Name { get; set; } = "";

    public string Xml { get; set; } = "";
}
