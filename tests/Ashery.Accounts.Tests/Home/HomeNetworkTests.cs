using System.Net;
using System.Net.Security;
using System.Net.Sockets;
using System.Security.Cryptography.X509Certificates;
using Ashery.Web.Home;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Home;

/// <summary>The application on the home network: HTTPS that a phone can trust, plain HTTP only for what comes before.</summary>
public sealed class HomeNetworkTests
{
    // Real time: the connection's certificates are judged by the platform's clock.
    private static Task<House> OpenAsync() => House.OpenAsync(House.Fast with { Home = true }, o => o with { Clock = TimeProvider.System });

    private static int SecurePort(House house) => house.App.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!
        .Addresses.Where(a => a.StartsWith("https:", StringComparison.Ordinal)).Select(a => new Uri(a.Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal)).Port).Single();

    private static Browser Phone(House house, string host)
    {
        var authority = X509CertificateLoader.LoadCertificate(house.App.Services.GetRequiredService<HomeCertificates>().Authority);
        return new Browser(new Uri(FormattableString.Invariant($"https://{host}:{SecurePort(house)}/")), new HttpClientHandler
        {
            AllowAutoRedirect = false,
#pragma warning disable MA0039 // a phone that trusts this one authority, and no other
            ServerCertificateCustomValidationCallback = (_, certificate, chain, errors) =>
            {
                chain!.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
                chain.ChainPolicy.CustomTrustStore.Add(authority);
                chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
                return !errors.HasFlag(SslPolicyErrors.RemoteCertificateNameMismatch) && chain.Build(certificate!);
            },
#pragma warning restore MA0039
        });
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    public async Task A_phone_that_trusts_the_authority_signs_in_over_HTTPS(string host)
    {
        await using var house = await OpenAsync();
        using var phone = Phone(house, host);
        using var entered = await phone.SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", House.Password));
        Assert.Equal(HttpStatusCode.Found, entered.StatusCode);
        var cookie = entered.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("ashery=", StringComparison.Ordinal));
        Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(House.Secret, (await phone.GetAsync("/settings")).Text, StringComparison.Ordinal);

        // A browser would not be let back after the authority is gone, and ignores it for numbers (RFC 6797, 8.1.1): not sent at home.
        Assert.False(entered.Headers.Contains("Strict-Transport-Security"));
    }

    [Fact]
    public async Task Who_does_not_trust_the_authority_is_warned()
    {
        await using var house = await OpenAsync();
        using var browser = new Browser(new Uri(FormattableString.Invariant($"https://localhost:{SecurePort(house)}/")));
        var refused = await Assert.ThrowsAsync<HttpRequestException>(() => browser.GetAsync("/"));
        Assert.IsType<System.Security.Authentication.AuthenticationException>(refused.InnerException);
    }

    [Fact]
    public async Task Old_versions_of_TLS_are_refused()
    {
        await using var house = await OpenAsync();
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, SecurePort(house), TestContext.Current.CancellationToken);
        await using var tls = new SslStream(socket.GetStream());
        await Assert.ThrowsAnyAsync<Exception>(() => tls.AuthenticateAsClientAsync(new SslClientAuthenticationOptions
        {
            TargetHost = "localhost",
#pragma warning disable SYSLIB0039, CA5359, CA5397, MA0039 // that it is refused is what is tested
            EnabledSslProtocols = System.Security.Authentication.SslProtocols.Tls11,
            RemoteCertificateValidationCallback = (_, _, _, _) => true,
#pragma warning restore SYSLIB0039, CA5359, CA5397, MA0039
        }));
    }

    [Theory]
    [InlineData("192.168.7.20", "http", "GET", "/trust", null)]
    [InlineData("192.168.7.20", "http", "GET", "/trust/ashery-home.crt", null)]
    [InlineData("192.168.7.20", "http", "GET", "/look.css", null)]
    [InlineData("192.168.7.20", "http", "GET", "/", "https://terrace:8743/")]
    [InlineData("192.168.7.20", "http", "GET", "/pots?on=2027-01-01", "https://terrace:8743/pots?on=2027-01-01")]
    [InlineData("192.168.7.20", "http", "GET", "/api/gardens", "https://terrace:8743/api/gardens")]
    [InlineData("192.168.7.20", "http", "POST", "/sign-in", "/trust")]
    [InlineData("192.168.7.20", "http", "POST", "/trust", "/trust")]
    [InlineData("192.168.7.20", "https", "POST", "/sign-in", null)]
    [InlineData("127.0.0.1", "http", "POST", "/sign-in", null)]
    [InlineData("::1", "http", "GET", "/", null)]
    public async Task Plain_HTTP_from_the_network_gets_the_page_of_trust_and_nothing_else(string from, string scheme, string method, string path, string? sentTo)
    {
        var folder = Directory.CreateTempSubdirectory("ashery-plain-").FullName;
        using var certificates = new HomeCertificates(folder, TimeProvider.System, () => (["terrace"], [IPAddress.Loopback]));
        var http = new DefaultHttpContext();
        http.Connection.RemoteIpAddress = IPAddress.Parse(from);
        var parts = path.Split('?');
        (http.Request.Scheme, http.Request.Method, http.Request.Host, http.Request.Path) = (scheme, method, new HostString("terrace", 8741), parts[0]);
        http.Request.QueryString = new QueryString(parts.Length > 1 ? "?" + parts[1] : "");
        var passed = false;
        await new HomeHost(certificates, 8741, 8743).Guard(http, _ =>
        {
            passed = true;
            return Task.CompletedTask;
        });
        Assert.Equal(sentTo is null, passed);
        Assert.Equal(sentTo ?? "", http.Response.Headers.Location.ToString());
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task A_name_of_another_machine_is_refused_at_home_too()
    {
        await using var house = await OpenAsync();
        using var browser = house.Browser();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/trust");
        request.Headers.Host = "garden.example";
        using var answer = await browser.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task The_page_of_trust_shows_the_fingerprint_and_nothing_of_the_garden()
    {
        await using var house = await OpenAsync();
        using var browser = house.Browser();
        var (_, text) = await browser.GetAsync("/trust");
        Assert.Contains(house.App.Services.GetRequiredService<HomeCertificates>().Fingerprint, text, StringComparison.Ordinal);
        Assert.DoesNotContain(House.Secret, text, StringComparison.Ordinal);
    }
}
