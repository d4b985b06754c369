namespace Ashery.Accounts.Model;

/// <summary>What a one-time code is for.</summary>
public static class CodePurpose
{
    public const string FirstAccount = "first-account";
    public const string Pairing = "pairing";
    public const string Invitation = "invitation";
}

/// <summary>How far a personal access token reaches.</summary>
public static class TokenScope
{
    public const string Read = "read";
    public const string Write = "write";

    /// <summary>Reads the calendar address and nothing else.</summary>
    public const string Calendar = "calendar";

    public static IReadOnlyList<string> All { get; } = [Read, Write, Calendar];
}

/// <summary>What the log keeps.</summary>
public static class AuditKind
{
    public const string AccountMade = "account-made";
    public const string SignedIn = "signed-in";
    public const string SignInFailed = "sign-in-failed";
    public const string LockedOut = "locked-out";
    public const string SignedOut = "signed-out";
    public const string SignedOutEverywhere = "signed-out-everywhere";
    public const string SessionEnded = "session-ended";
    public const string PasswordChanged = "password-changed";
    public const string PasskeyAdded = "passkey-added";
    public const string PasskeyRemoved = "passkey-removed";
    public const string PairingCodeMade = "pairing-code-made";
    public const string Paired = "paired";
    public const string CodeRefused = "code-refused";
    public const string Invited = "invited";
    public const string Joined = "joined";
    public const string RoleChanged = "role-changed";
    public const string Removed = "removed";
    public const string GardenMade = "garden-made";
    public const string TokenMade = "token-made";
    public const string TokenRemoved = "token-removed";
    public const string Exported = "exported";
    public const string Refused = "refused";
}
