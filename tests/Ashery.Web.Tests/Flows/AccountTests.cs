using Ashery.Web.Access;

namespace Ashery.Web.Tests.Flows;

/// <summary>The first account, a passkey, a phone that is paired, people and tokens: one walk, each page looked at on a phone and wide.</summary>
public sealed class AccountTests(TheBrowser browser)
{
    private const string Password = "four odd words together";

    [Fact]
    public async Task From_the_first_account_to_a_paired_phone()
    {
        await using var site = await Site.StartAsync(change: o => o with { Clock = TimeProvider.System, Access = new AccessOptions { HashRounds = 1000, TriesAMinute = 1000 } });
        var address = site.Address.Replace("127.0.0.1", "localhost", StringComparison.Ordinal);
        await using var w = await browser.OpenAsync(site, 1280);
        var page = w.Page;

        // A device with a lock of its own, as the browser's own test protocol makes one (Chrome DevTools protocol, WebAuthn).
        var cdp = await page.Context.NewCDPSessionAsync(page);
        await cdp.SendAsync("WebAuthn.enable");
        await cdp.SendAsync("WebAuthn.addVirtualAuthenticator", new Dictionary<string, object>
        {
            ["options"] = new Dictionary<string, object>
            {
                ["protocol"] = "ctap2", ["transport"] = "internal", ["hasResidentKey"] = true, ["hasUserVerification"] = true, ["isUserVerified"] = true, ["automaticPresenceSimulation"] = true,
            },
        });

        var code = await AccessSetup.FirstCode(site.Services);
        await w.GoAsync($"{address}first?code={code}");
        await LookAsync(w, "first");
        await page.GetByLabel("Your name here").FillAsync("oona");
        await page.GetByLabel("Password").FillAsync("short");
        await w.Button("Make the account").ClickAsync();
        await w.SeesAsync("A password needs 12 signs or more");
        await page.GetByLabel("Password").FillAsync(Password);
        await w.Button("Make the account").ClickAsync();
        await Expect(page.Locator(".account")).ToContainTextAsync("oona");

        await w.GoAsync(address + "account");
        await LookAsync(w, "account");
        await w.Button("Add a passkey of this device").ClickAsync();
        await Expect(w.Button("Remove this passkey")).ToBeVisibleAsync();
        await w.Button("Sign out here").ClickAsync();
        await w.HeadingAsync("Sign in");
        await LookAsync(w, "sign-in");
        await w.Button("With a passkey").ClickAsync();
        await Expect(page.Locator(".account")).ToContainTextAsync("oona");

        foreach (var (name, path) in new[] { ("tokens", "account/tokens"), ("log", "account/log"), ("gardens", "gardens"), ("people", "garden/people") })
        {
            await w.GoAsync(address + path);
            await LookAsync(w, name);
        }

        await w.Button("Make an invitation").ClickAsync();
        await w.SeesAsync("join?code=");
        await LookAsync(w, "invitation");
        await w.GoAsync(address + "account/phone");
        await w.Button("Show a code").ClickAsync();
        await Expect(page.Locator(".qr svg")).ToBeVisibleAsync();
        await LookAsync(w, "phone-code");
        var typed = await page.Locator("strong.code").InnerTextAsync();

        await using var phone = await browser.OpenAsync(site, 390, scripts: false);
        await phone.GoAsync(address + "pair");
        await phone.Page.GetByLabel("Code on the computer's screen").FillAsync(typed);
        await phone.Button("Pair this phone").ClickAsync();
        await Expect(phone.Page.Locator(".garden-name")).ToHaveTextAsync(site.Garden.Name);
    }

    private static async Task LookAsync(Window w, string name)
    {
        foreach (var width in new[] { 390, 1280 })
        {
            await w.Page.SetViewportSizeAsync(width, 900);
            await Checks.NoSidewaysScrollAsync(w.Page, name);
            await Checks.BigTargetsAsync(w.Page, name);
            if (Environment.GetEnvironmentVariable("ASHERY_PICTURES") is { } folder)
            {
                await w.Page.ScreenshotAsync(new() { Path = Path.Combine(folder, FormattableString.Invariant($"{name}-{width}.png")), FullPage = true });
            }
        }

        await Checks.OutlineAsync(w.Page, name);
        await Checks.AxeAsync(w.Page, name);
    }
}
