namespace Ashery.Web.Tests.Support;

/// <summary>A browser window that remembers what the browser complained of: a broken script, a blocked style, a missing file.</summary>
internal sealed class Window : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly List<string> complaints = [];

    public Window(IBrowserContext context, IPage page)
    {
        this.context = context;
        Page = page;
        page.Console += (_, m) =>
        {
            // A page that says what is wrong in a form answers 422; the browser notes every such answer.
            if (m.Type is "error" or "warning" && !m.Text.Contains("status of 422", StringComparison.Ordinal))
            {
                complaints.Add($"{m.Type}: {m.Text}");
            }
        };
        page.PageError += (_, e) => complaints.Add(e);
    }

    public IPage Page { get; }

    /// <summary>Complaints that a test expects, by a part of their words.</summary>
    public void Forgive(string part) => complaints.RemoveAll(c => c.Contains(part, StringComparison.Ordinal));

    public async Task GoAsync(string path)
    {
        var answer = await Page.GotoAsync(path);
        Assert.NotNull(answer);
        Assert.True(answer.Ok, FormattableString.Invariant($"{path} answered {answer.Status}"));
    }

    public ILocator Button(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    public ILocator Link(string name) => Page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true });

    public ILocator Main => Page.Locator("main");

    public Task SeesAsync(string text) => Expect(Main).ToContainTextAsync(text);

    public Task HeadingAsync(string text) => Expect(Page.Locator("main h1")).ToHaveTextAsync(text);

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        Assert.True(complaints.Count == 0, string.Join("; ", complaints));
    }
}
