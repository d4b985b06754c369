namespace Ashery.Web.Access;

/// <summary>Who may reach the application; null in <c>ServerOptions</c> where there are no accounts.</summary>
public sealed record AccessOptions
{
    /// <summary>The one address people use, as in https://garden.example; null: only this machine's names.</summary>
    public Uri? Address { get; init; }

    /// <summary>Serve the home network over HTTPS with certificates of this machine's own authority.</summary>
    public bool Home { get; init; }

    /// <summary>Addresses of reverse proxies besides this machine whose word on the caller is taken.</summary>
    public IReadOnlyList<System.Net.IPAddress> Proxies { get; init; } = [];

    /// <summary>Rounds of the password hash; null: as many as <c>AccountsSetup</c> says.</summary>
    public int? HashRounds { get; init; }

    /// <summary>How often one network address may try a password or a code in a minute.</summary>
    public int TriesAMinute { get; init; } = 10;

    /// <summary>How often one account may call the HTTP interface in a minute.</summary>
    public int CallsAMinute { get; init; } = 600;

    /// <summary>True where everybody comes over HTTPS under one address.</summary>
    public bool SecureOnly => Address?.Scheme == Uri.UriSchemeHttps;
}
