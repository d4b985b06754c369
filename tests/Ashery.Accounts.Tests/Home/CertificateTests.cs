using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Ashery.Web.Home;

namespace Ashery.Accounts.Tests.Home;

/// <summary>The machine's own authority, judged by the platform's chain building (OpenSSL on Linux).</summary>
public sealed class CertificateTests : IDisposable
{
    private static readonly string[] Names = ["terrace.local", "terrace", "localhost"];

    private readonly string folder = Path.Combine(Path.GetTempPath(), "ashery-home-" + Guid.NewGuid().ToString("N"));
    private readonly Movable clock = new();
    private IReadOnlyList<IPAddress> numbers = [IPAddress.Parse("192.168.7.9"), IPAddress.Loopback, IPAddress.IPv6Loopback];

    private HomeCertificates Make() => new(folder, clock, () => (Names, numbers));

    private bool Trusted(X509Certificate2 server, byte[] authority, out string why)
    {
        using var chain = new X509Chain();
        using var root = X509CertificateLoader.LoadCertificate(authority);
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(root);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = clock.GetUtcNow().UtcDateTime;
        chain.ChainPolicy.ApplicationPolicy.Add(new Oid("1.3.6.1.5.5.7.3.1"));
        var fine = chain.Build(server);
        why = string.Join(' ', chain.ChainStatus.Select(s => s.Status));
        return fine;
    }

    [Fact]
    public void The_certificate_is_good_for_every_name_and_address_of_the_machine_and_no_other()
    {
        using var home = Make();
        var server = home.Current();
        Assert.True(Trusted(server, home.Authority, out var why), why);
        foreach (var host in new[] { "terrace.local", "terrace", "localhost", "192.168.7.9", "127.0.0.1" })
        {
            Assert.True(server.MatchesHostname(host, allowWildcards: false, allowCommonName: false), host);
        }

        Assert.False(server.MatchesHostname("192.168.7.10"));
        Assert.False(server.MatchesHostname("bank.example"));
    }

    [Theory]
    [InlineData("bank.example", null, false)]
    [InlineData(null, "203.0.113.7", false)]
    [InlineData("terrace.local", null, true)]
    [InlineData(null, "192.168.200.1", true)]
    public void The_authority_speaks_for_the_home_network_alone(string? name, string? number, bool trusted)
    {
        using var home = Make();
        var pem = File.ReadAllText(Path.Combine(folder, "authority.pem"));
        using var stolen = X509Certificate2.CreateFromPem(pem, pem);
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=x", key, HashAlgorithmName.SHA256);
        var san = new SubjectAlternativeNameBuilder();
        if (name is not null)
        {
            san.AddDnsName(name);
        }
        else
        {
            san.AddIpAddress(IPAddress.Parse(number!));
        }

        request.CertificateExtensions.Add(san.Build());
        var now = clock.GetUtcNow();
        using var forged = request.Create(stolen, now.AddHours(-1), now.AddDays(30), [1, 2, 3]);
        Assert.Equal(trusted, Trusted(forged, home.Authority, out _));
    }

    [Fact]
    public void The_certificate_is_renewed_in_time_and_the_authority_stays()
    {
        byte[] authority;
        using (var home = Make())
        {
            authority = home.Authority;
            var first = home.Current().Thumbprint;
            clock.Move(TimeSpan.FromDays(360));
            Assert.Equal(first, home.Current().Thumbprint);
            clock.Move(TimeSpan.FromDays(10));
            var second = home.Current();
            Assert.NotEqual(first, second.Thumbprint);
            Assert.True(Trusted(second, authority, out var why), why);
        }

        using var later = Make();
        Assert.Equal(authority, later.Authority);
        Assert.True(Trusted(later.Current(), authority, out _));
        clock.Move(TimeSpan.FromDays(3300));
        Assert.NotEqual(authority, (later.Current(), later.Authority).Authority);
    }

    [Fact]
    public void Another_address_of_the_machine_gets_into_the_certificate()
    {
        using var home = Make();
        Assert.False(home.Current().MatchesHostname("192.168.7.50"));
        numbers = [.. numbers, IPAddress.Parse("192.168.7.50")];
        clock.Move(TimeSpan.FromMinutes(2));
        Assert.True(home.Current().MatchesHostname("192.168.7.50"));
        Assert.Contains("192.168.7.50", home.Hosts);
    }

    [Fact]
    public void The_key_is_readable_by_its_owner_alone()
    {
        using var home = Make();
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(folder, "authority.pem")));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(folder));
        }

        using var shown = X509CertificateLoader.LoadCertificate(home.Authority);
        Assert.False(shown.HasPrivateKey);
        Assert.Equal(32, home.Fingerprint.Split(':').Length);
        Assert.Equal(Convert.ToHexString(shown.GetCertHash(HashAlgorithmName.SHA256)), home.Fingerprint.Replace(":", "", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("10.1.2.3", true)]
    [InlineData("172.16.0.1", true)]
    [InlineData("172.32.0.1", false)]
    [InlineData("192.168.0.1", true)]
    [InlineData("203.0.113.9", false)]
    [InlineData("fd12::1", true)]
    [InlineData("2001:db8::1", false)]
    public void Private_addresses_are_told_from_public_ones(string address, bool isPrivate) => Assert.Equal(isPrivate, HomeAddresses.IsPrivate(IPAddress.Parse(address)));

    public void Dispose()
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
