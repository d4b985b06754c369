using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Ashery.Web.Home;

/// <summary>
/// This machine's own authority and the certificate it gives the application, in a folder that only its owner reads. The certificate is renewed in time
/// and when the machine has another address; the authority stays, so that phones need to trust it once.
/// </summary>
public sealed class HomeCertificates : IDisposable
{
    private static readonly TimeSpan AuthorityLasts = TimeSpan.FromDays(3650), AuthorityLeft = TimeSpan.FromDays(60);

    // Browsers take at most 398 days from an authority they know of themselves; no browser asks more of ours.
    private static readonly TimeSpan Lasts = TimeSpan.FromDays(397), Left = TimeSpan.FromDays(30), Early = TimeSpan.FromDays(1);
    private static readonly TimeSpan LookAgain = TimeSpan.FromMinutes(1);

    private readonly Lock gate = new();
    private readonly string folder;
    private readonly TimeProvider clock;
    private readonly Func<(IReadOnlyList<string> Names, IReadOnlyList<IPAddress> Numbers)> addresses;
    private X509Certificate2 authority;
    private X509Certificate2? server;
    private string servedFor = "";
    private DateTimeOffset looked;

    public HomeCertificates(string folder, TimeProvider clock, Func<(IReadOnlyList<string>, IReadOnlyList<IPAddress>)>? addresses = null)
    {
        this.folder = folder;
        this.clock = clock;
        this.addresses = addresses ?? (static () => (HomeAddresses.Names(), HomeAddresses.Numbers()));
        OwnersOnly.Folder(folder);
        authority = LoadOrMakeAuthority();
    }

    /// <summary>The authority, as a phone installs it (DER, no key).</summary>
    public byte[] Authority
    {
        get
        {
            lock (gate)
            {
                return authority.RawData;
            }
        }
    }

    /// <summary>SHA-256 of the authority, as phones and browsers show it.</summary>
    public string Fingerprint => string.Join(':', SHA256.HashData(Authority).Select(static b => b.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>Under which names and addresses the certificate is valid now.</summary>
    public IReadOnlySet<string> Hosts
    {
        get
        {
            var (names, numbers) = addresses();
            return names.Concat(numbers.Select(static a => a.ToString())).ToHashSet(StringComparer.OrdinalIgnoreCase);
        }
    }

    /// <summary>The certificate to serve with.</summary>
    public X509Certificate2 Current()
    {
        lock (gate)
        {
            var now = clock.GetUtcNow();
            if (server is not null && now < looked + LookAgain)
            {
                return server;
            }

            looked = now;
            if (authority.NotAfter.ToUniversalTime() - now.UtcDateTime < AuthorityLeft)
            {
                authority = MakeAuthority();
                server = null;
            }

            var hosts = string.Join(' ', Hosts.Order(StringComparer.Ordinal));
            if (server is null || hosts != servedFor || server.NotAfter.ToUniversalTime() - now.UtcDateTime < Left)
            {
                // A connection may still use the one before: the collector disposes of it.
                (server, servedFor) = (MakeServer(), hosts);
            }

            return server;
        }
    }

    public void Dispose()
    {
        authority.Dispose();
        server?.Dispose();
    }

    private X509Certificate2 LoadOrMakeAuthority()
    {
        var file = Path.Combine(folder, "authority.pem");
        if (!File.Exists(file))
        {
            return MakeAuthority();
        }

        var pem = File.ReadAllText(file);
        return X509Certificate2.CreateFromPem(pem, pem);
    }

    private X509Certificate2 MakeAuthority()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var names = addresses().Names;
        var request = new CertificateRequest($"CN=Ashery at home on {names[0]}", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForCertificateAuthority(pathLengthConstraint: 0));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, critical: true));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        request.CertificateExtensions.Add(NameConstraints.HomeOnly(names));
        var now = clock.GetUtcNow();
        var made = request.CreateSelfSigned(now - Early, now + AuthorityLasts);
        OwnersOnly.File(Path.Combine(folder, "authority.pem"), made.ExportCertificatePem() + "\n" + key.ExportPkcs8PrivateKeyPem() + "\n");
        return made;
    }

    // Its key is made anew each time and never leaves memory.
    private X509Certificate2 MakeServer()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var (names, numbers) = addresses();
        var request = new CertificateRequest($"CN={names[0]}", key, HashAlgorithmName.SHA256);
        var alternatives = new SubjectAlternativeNameBuilder();
        foreach (var name in names)
        {
            alternatives.AddDnsName(name);
        }

        foreach (var number in numbers)
        {
            alternatives.AddIpAddress(number);
        }

        request.CertificateExtensions.Add(alternatives.Build());
        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForEndEntity(critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], critical: false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(authority, includeKeyIdentifier: true, includeIssuerAndSerial: false));
        var now = clock.GetUtcNow();
        var (longest, last) = (now + Lasts, new DateTimeOffset(authority.NotAfter));
        var ends = longest < last ? longest : last;
        using var bare = request.Create(authority, now - Early, ends, RandomNumberGenerator.GetBytes(16));
        using var whole = bare.CopyWithPrivateKey(key);

        // Windows serves only from a certificate that went through a file's form.
        return X509CertificateLoader.LoadPkcs12(whole.Export(X509ContentType.Pfx), null);
    }
}
