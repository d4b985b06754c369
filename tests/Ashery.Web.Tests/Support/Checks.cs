using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace Ashery.Web.Tests.Support;

/// <summary>What every page has to pass.</summary>
internal static class Checks
{
    /// <summary>No violation of any rule of axe-core, best practices among them.</summary>
    public static async Task AxeAsync(IPage page, string where, params string[] onlyRules)
    {
        var options = onlyRules.Length == 0 ? null : new AxeRunOptions { RunOnly = new RunOnlyOptions { Type = "rule", Values = [.. onlyRules] } };
        var result = await page.RunAxe(options);
        Assert.True(
            result.Violations.Length == 0,
            $"{where}: " + string.Join("\n", result.Violations.Select(v => $"{v.Id} ({v.Help}): {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html[..Math.Min(200, n.Html.Length)]))}")));
    }

    /// <summary>Nothing is wider than the window.</summary>
    public static async Task NoSidewaysScrollAsync(IPage page, string where)
    {
        var wide = await page.EvaluateAsync<string[]>(
            """
            () => document.documentElement.scrollWidth <= innerWidth ? [] :
              [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > innerWidth + 1)
                .slice(0, 5).map(e => e.tagName + '.' + e.className + ' ' + Math.round(e.getBoundingClientRect().right))
            """);
        Assert.True(wide.Length == 0, $"{where} scrolls sideways: {string.Join(", ", wide)}");
    }

    /// <summary>
    /// What is touched is at least 44 by 44 CSS px (WCAG 2.2, success criterion 2.5.5); links within a sentence and boxes with a label of that
    /// size are the exceptions it names.
    /// </summary>
    public static async Task BigTargetsAsync(IPage page, string where)
    {
        var small = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll('button, select, summary, textarea, .button, nav a, .tiles a, input:not([type=hidden]):not([type=checkbox]):not([type=radio]), label.tick')]
              .filter(e => e.checkVisibility({ visibilityProperty: true }))
              .map(e => [e, e.getBoundingClientRect()])
              .filter(([e, b]) => b.width > 0 && (b.height < 43.9 || b.width < 43.9))
              .slice(0, 5).map(([e, b]) => e.outerHTML.slice(0, 90) + ' ' + Math.round(b.width) + 'x' + Math.round(b.height))
            """);
        Assert.True(small.Length == 0, $"{where} has small targets: {string.Join(", ", small)}");
    }

    /// <summary>One main heading, a title of its own, and headings that step down one by one.</summary>
    public static async Task OutlineAsync(IPage page, string where)
    {
        Assert.Equal(1, await page.Locator("main h1").CountAsync());
        Assert.EndsWith("· Ashery", await page.TitleAsync(), StringComparison.Ordinal);
        var ids = await page.EvaluateAsync<string[]>(
            "() => { const all = [...document.querySelectorAll('[id]')].map(e => e.id); return all.filter((id, i) => all.indexOf(id) !== i); }");
        Assert.True(ids.Length == 0, $"{where} has ids twice: {string.Join(", ", ids)}");
    }
}
