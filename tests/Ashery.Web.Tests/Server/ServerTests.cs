using System.Net;
using System.Net.Sockets;
using System.Text.RegularExpressions;
using Ashery.Web.Hosting;

namespace Ashery.Web.Tests.Server;

public sealed class ServerTests
{
    [Fact]
    public async Task It_listens_on_this_machine_alone()
    {
        await using var site = await Site.StartAsync();
        Assert.StartsWith("http://127.0.0.1:", site.Address, StringComparison.Ordinal);
    }

    [Fact]
    public void A_taken_port_is_stepped_over()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        Assert.InRange(FreePort.From(port), port + 1, port + 99);
    }

    [Theory]
    [InlineData("--port", "abc")]
    [InlineData("--port", "99999")]
    [InlineData("--prot", "80")]
    [InlineData("--garden")]
    public void Wrong_words_are_explained(params string[] args) => Assert.False(ServerOptions.Read(args, _ => null).Ok);

    [Fact]
    public async Task A_name_of_another_machine_is_refused()
    {
        await using var site = await Site.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "garden.example";
        using var answer = await site.Http.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task A_form_from_elsewhere_is_refused()
    {
        await using var site = await Site.StartAsync();
        using var form = new FormUrlEncodedContent([new("_handler", "start-over"), new("version", "1")]);
        using var answer = await site.Http.PostAsync("/settings", form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.True(site.Garden.IsDemo);
    }

    [Theory]
    [InlineData("/nothing", HttpStatusCode.NotFound)]
    [InlineData("/crops/none", HttpStatusCode.NotFound)]
    [InlineData("/materials/none", HttpStatusCode.NotFound)]
    [InlineData("/pots/none", HttpStatusCode.NotFound)]
    [InlineData("/shelf/none", HttpStatusCode.NotFound)]
    [InlineData("/cards/none", HttpStatusCode.NotFound)]
    [InlineData("/year/rules/none", HttpStatusCode.NotFound)]
    [InlineData("/download/card.pdf?of=none", HttpStatusCode.UnprocessableEntity)]
    [InlineData("/download/card.exe?of=year", HttpStatusCode.NotFound)]
    [InlineData("/download/year.ics?from=soon", HttpStatusCode.UnprocessableEntity)]
    [InlineData("/too-large", HttpStatusCode.RequestEntityTooLarge)]
    [InlineData("/health", HttpStatusCode.OK)]
    public async Task Each_address_answers_as_it_should(string path, HttpStatusCode expected)
    {
        await using var site = await Site.StartAsync();
        using var answer = await site.Http.GetAsync(path, TestContext.Current.CancellationToken);
        Assert.Equal(expected, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/mix?want=%00%ff%fe&from=shelf")]
    [InlineData("/mix?want=1e308:1e308:1e308&from=shelf")]
    [InlineData("/mix?m=<script>&from=chosen&want=1:1:1")]
    [InlineData("/mix?show=-5&blend=99999999999999999999")]
    [InlineData("/pots?on=9999-12-31&max=1e400&feed='--")]
    [InlineData("/year?from=0001-01-01")]
    [InlineData("/compatible?with=&with=%27%3B--&with=urea")]
    [InlineData("/crops?find=%25%5B%28")]
    [InlineData("/cards/blend?blend=-1&want=x")]
    [InlineData("/?saved=99999999999999999999")]
    public async Task Hostile_addresses_are_answered_with_a_page(string path)
    {
        await using var site = await Site.StartAsync();
        using var answer = await site.Http.GetAsync(path, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("</html>", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_hundred_megabytes_are_read_to_the_end_and_answered_with_words()
    {
        await using var site = await Site.StartAsync();
        using var body = new StreamContent(new Zeros(200L * 1024 * 1024));
        body.Headers.ContentType = new("multipart/form-data") { Parameters = { new("boundary", "x") } };
        body.Headers.ContentLength = 200L * 1024 * 1024;
        using var answer = await site.Http.PostAsync("/shelf/import", body, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("It has 200 MB", text, StringComparison.Ordinal);
        Assert.Contains("href=\"/shelf/import\"", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Files_of_the_pages_are_kept_by_the_browser_and_everything_is_compressed()
    {
        await using var site = await Site.StartAsync();
        var page = await site.Http.GetStringAsync("/", TestContext.Current.CancellationToken);
        var files = Regex.Matches(page, "(?:href|src)=\"(?<file>[^\"]+\\.(?:css|js|svg)[^\"]*)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5)).Select(m => m.Groups["file"].Value).ToList();
        Assert.True(files.Count >= 5, string.Join(' ', files));
        foreach (var file in files)
        {
            using var request = new HttpRequestMessage(HttpMethod.Get, WebUtility.HtmlDecode(file));
            request.Headers.AcceptEncoding.ParseAdd("br");
            using var answer = await site.Http.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            if (!file.EndsWith(".svg", StringComparison.Ordinal))
            {
                Assert.Equal(["br"], answer.Content.Headers.ContentEncoding);
            }
        }

        using var whole = new HttpRequestMessage(HttpMethod.Get, "/mix");
        whole.Headers.AcceptEncoding.ParseAdd("br");
        using var mix = await site.Http.SendAsync(whole, TestContext.Current.CancellationToken);
        Assert.Equal(["br"], mix.Content.Headers.ContentEncoding);
        Assert.Contains(mix.Headers.GetValues("Server-Timing"), v => v.StartsWith("mix;dur=", StringComparison.Ordinal));
        Assert.Contains("default-src 'none'", mix.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
    }

    private sealed class Zeros(long length) : Stream
    {
        private long left = length;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var n = (int)Math.Min(left, count);
            Array.Clear(buffer, offset, n);
            left -= n;
            return n;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
