using System.Net;
using System.Text.RegularExpressions;

namespace Ashery.Accounts.Tests.Support;

/// <summary>What a browser does, without one: keeps cookies, reads forms and sends them back whole.</summary>
internal sealed partial class Browser : IDisposable
{
    private readonly HttpClientHandler handler = new() { AllowAutoRedirect = false };

    public Browser(Uri address, HttpClientHandler? with = null)
    {
        handler = with ?? handler;
        Http = new HttpClient(handler) { BaseAddress = address };
        Http.DefaultRequestHeaders.UserAgent.ParseAdd("Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0");
    }

    public HttpClient Http { get; }

    public CookieContainer Cookies => handler.CookieContainer;

    public async Task<(HttpStatusCode Status, string Text)> GetAsync(string path)
    {
        using var answer = await Http.GetAsync(path, TestContext.Current.CancellationToken);
        return (answer.StatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    /// <summary>Loads a page, fills in its form of this name, sends it.</summary>
    public async Task<HttpResponseMessage> SendFormAsync(string page, string handlerName, params (string Name, string Value)[] typed)
    {
        var (status, html) = await GetAsync(page);
        Assert.Equal(HttpStatusCode.OK, status);
        var form = Form.In(html, page).FirstOrDefault(f => f.Handler == handlerName);
        Assert.True(form is not null, $"{page} has no form {handlerName}: {html}");
        return await SendAsync(form, typed);
    }

    public async Task<HttpResponseMessage> SendAsync(Form form, params (string Name, string Value)[] typed)
    {
        using var body = new FormUrlEncodedContent(form.Fields.Where(f => typed.All(t => t.Name != f.Key)).Concat(typed.Select(t => KeyValuePair.Create(t.Name, t.Value))));
        return await Http.PostAsync(form.Action, body, TestContext.Current.CancellationToken);
    }

    public void Dispose()
    {
        Http.Dispose();
        handler.Dispose();
    }
}

/// <summary>A form of a page that posts.</summary>
internal sealed partial record Form(string Action, string Handler, IReadOnlyList<KeyValuePair<string, string>> Fields)
{
    public static IReadOnlyList<Form> In(string html, string page) =>
    [
        .. Forms().Matches(html).Where(m => Attribute(m.Groups["head"].Value, "method") is "post").Select(m =>
        {
            var inputs = Inputs().Matches(m.Groups["body"].Value)
                .Where(i => Attribute(i.Value, "name") is not null && Attribute(i.Value, "type") is "hidden" or "text" or "password")
                .Select(i => KeyValuePair.Create(Attribute(i.Value, "name")!, Attribute(i.Value, "value") ?? ""))
                .ToList();
            var action = Attribute(m.Groups["head"].Value, "action");
            return new Form(string.IsNullOrEmpty(action) ? page : action, inputs.FirstOrDefault(i => i.Key == "_handler").Value ?? "", inputs);
        }),
    ];

    private static string? Attribute(string tag, string name)
    {
        var match = Regex.Match(tag, $"\\b{name}=\"(?<v>[^\"]*)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
        return match.Success ? WebUtility.HtmlDecode(match.Groups["v"].Value) : null;
    }

    [GeneratedRegex("<form(?<head>[^>]*)>(?<body>.*?)</form>", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Forms();

    [GeneratedRegex("<input[^>]*>", RegexOptions.ExplicitCapture, 5000)]
    private static partial Regex Inputs();
}
