namespace Ashery.Accounts.Model;

/// <summary>What somebody may do in a garden. Each may do what the ones before it may.</summary>
public enum MemberRole
{
    /// <summary>Looks.</summary>
    Reader = 1,

    /// <summary>Changes the garden and its journal.</summary>
    Helper = 2,

    /// <summary>Also says who belongs to the garden.</summary>
    Owner = 3,
}
