using System.Security.Cryptography;
using System.Text;

namespace Ashery.Accounts.Keys;

/// <summary>Random secrets and what is kept of them.</summary>
public static class Secrets
{
    /// <summary>Signs that are not mistaken for one another when read aloud or typed: no I, L, O, U (Crockford's base 32).</summary>
    private const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>A code of random signs, 5 bits each.</summary>
    public static string Code(int signs) => RandomNumberGenerator.GetString(Signs, signs);

    /// <summary>
    /// Hash that is kept instead of the secret. Secrets are random and of 60 bits or more, so that a plain SHA-256 cannot be run back by trying; passwords,
    /// which are not, go through Identity's slow hash.
    /// </summary>
    public static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    /// <summary>As somebody may type a code: any case, spaces and dashes between, O for 0, I and L for 1.</summary>
    public static string Tidy(string? typed) => new string([.. (typed ?? "").ToUpperInvariant().Where(char.IsAsciiLetterOrDigit)])
        .Replace('O', '0').Replace('I', '1').Replace('L', '1');
}
