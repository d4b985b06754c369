using Microsoft.AspNetCore.Identity;

namespace Ashery.Accounts.Model;

/// <summary>Somebody with an account. Names stand in histories; there is no e-mail address to lose.</summary>
public sealed class AsheryUser : IdentityUser
{
    /// <summary>Looks after the installation: backups and restores touch every garden in the database.</summary>
    public bool IsKeeper { get; set; }

    /// <summary>UTC ticks.</summary>
    public long MadeAtTicks { get; set; }
}
