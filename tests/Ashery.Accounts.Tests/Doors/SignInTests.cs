using System.Net;
using Ashery.Accounts.Audit;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Accounts.SignIn;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>Passwords, sessions, locks.</summary>
public sealed class SignInTests
{
    [Fact]
    public async Task A_wrong_password_and_an_unknown_name_are_answered_alike()
    {
        await using var house = await House.OpenAsync();
        using var browser = house.Browser();
        var answers = new List<string>();
        foreach (var (name, password) in new[] { ("oona", "not the password"), ("nobody", "not the password") })
        {
            using var answer = await browser.SendFormAsync("/sign-in", "sign-in", ("name", name), ("password", password));
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.DoesNotContain("not the password", text, StringComparison.Ordinal);
            answers.Add(text[text.IndexOf("role=\"alert\"", StringComparison.Ordinal)..text.IndexOf("</ul>", StringComparison.Ordinal)]);
        }

        Assert.Equal(answers[0], answers[1]);
    }

    [Fact]
    public async Task Five_wrong_tries_lock_the_account_for_a_while()
    {
        await using var house = await House.OpenAsync();
        using var browser = house.Browser();
        for (var i = 0; i < 5; i++)
        {
            (await browser.SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", "wrong again and again"))).Dispose();
        }

        using var locked = await browser.SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", House.Password));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, locked.StatusCode);
        var id = await house.IdOfAsync("oona");
        var ends = await house.WithAsync<UserManager<AsheryUser>, DateTimeOffset?>(async u => await u.GetLockoutEndDateAsync((await u.FindByIdAsync(id))!));
        Assert.InRange(ends!.Value - DateTimeOffset.UtcNow, TimeSpan.FromMinutes(4), TimeSpan.FromMinutes(5));
        await house.WithAsync<UserManager<AsheryUser>, IdentityResult>(async u => await u.SetLockoutEndDateAsync((await u.FindByIdAsync(id))!, DateTimeOffset.UtcNow.AddSeconds(-1)));
        using var open = await house.EnterAsync("oona");
        Assert.Equal(HttpStatusCode.OK, (await open.GetAsync("/")).Status);
    }

    [Fact]
    public async Task Tries_from_one_place_are_counted()
    {
        await using var house = await House.OpenAsync(House.Fast with { TriesAMinute = 4 });
        using var browser = house.Browser();
        List<HttpStatusCode> answers = [];
        for (var i = 0; i < 6; i++)
        {
            using var answer = await browser.SendFormAsync("/pair", "pair", ("code", "0000-0000-0000"));
            answers.Add(answer.StatusCode);
        }

        Assert.Equal([.. Enumerable.Repeat(HttpStatusCode.UnprocessableEntity, 4), HttpStatusCode.TooManyRequests, HttpStatusCode.TooManyRequests], answers);
    }

    [Theory]
    [InlineData("short", false)]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", false)]
    [InlineData("abcdefghijklmnop", false)]
    [InlineData("qwertyuiopasdfgh", false)]
    [InlineData("passwordpassword", false)]
    [InlineData("oonaoonaoona12", false)]
    [InlineData("1234567890123456", false)]
    [InlineData("four odd words together", true)]
    [InlineData("Zg7-kq2.vW9xB", true)]
    [InlineData("पानी और मिट्टी का गमला", true)]
    public void Passwords_are_long_and_not_guessed_first(string password, bool taken) => Assert.Equal(taken, Passwords.Check(password, "oona") is null);

    [Fact]
    public void Passwords_of_two_hundred_signs_are_taken_longer_ones_not()
    {
        var phrase = string.Concat(Enumerable.Repeat("moss tin lamp ", 20));
        Assert.Null(Passwords.Check(phrase[..200]));
        Assert.NotNull(Passwords.Check(phrase[..201]));
    }

    [Fact]
    public async Task A_password_is_taken_exactly_as_typed_and_kept_as_a_slow_hash()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        const string Spaced = " twelve quiet herons ";
        using (var changed = await oona.SendFormAsync("/account", "password", ("current", House.Password), ("fresh", Spaced)))
        {
            Assert.Equal(HttpStatusCode.Found, changed.StatusCode);
        }

        using var trimmed = await house.Browser().SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", Spaced.Trim()));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, trimmed.StatusCode);
        using var exact = await house.EnterAsync("oona", Spaced);
        var hash = await house.WithAsync<UserManager<AsheryUser>, string>(async u => (await u.FindByNameAsync("oona"))!.PasswordHash!);

        // Identity's format, version 3: a byte 1, then the function (2: HMAC-SHA512) and the rounds, big-endian.
        var bytes = Convert.FromBase64String(hash);
        Assert.Equal([1, 0, 0, 0, 2], bytes[..5]);
        Assert.True(AccountsSetup.HashRounds >= 210_000);
    }

    [Fact]
    public async Task The_hash_of_the_real_program_has_all_its_rounds()
    {
        await using var house = await House.OpenAsync(House.Fast with { HashRounds = null }, people: false);
        var rounds = house.App.Services.GetRequiredService<Microsoft.Extensions.Options.IOptions<PasswordHasherOptions>>().Value.IterationCount;
        Assert.Equal(AccountsSetup.HashRounds, rounds);
    }

    [Fact]
    public async Task Another_password_ends_every_other_session()
    {
        await using var house = await House.OpenAsync();
        using var here = await house.EnterAsync("oona");
        using var there = await house.EnterAsync("oona");
        using (var changed = await here.SendFormAsync("/account", "password", ("current", House.Password), ("fresh", "nine slow copper kettles")))
        {
            Assert.Equal(HttpStatusCode.Found, changed.StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, (await here.GetAsync("/account")).Status);
        Assert.Equal(HttpStatusCode.Found, (await there.GetAsync("/account")).Status);
        using var wrong = await here.SendFormAsync("/account", "password", ("current", "not it at all"), ("fresh", "nine slow copper bottles"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
    }

    [Fact]
    public async Task Signing_out_makes_a_copied_cookie_worthless()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        using var thief = house.Browser();
        foreach (Cookie cookie in oona.Cookies.GetAllCookies())
        {
            thief.Cookies.Add(house.Address, new Cookie(cookie.Name, cookie.Value));
        }

        Assert.Equal(HttpStatusCode.OK, (await thief.GetAsync("/account")).Status);
        var (_, html) = await oona.GetAsync("/account");
        var own = Form.In(html, "/account").First(f => f.Handler.StartsWith("end-", StringComparison.Ordinal));
        (await oona.SendAsync(own)).Dispose();
        Assert.Equal(HttpStatusCode.Found, (await thief.GetAsync("/account")).Status);
        Assert.Equal(HttpStatusCode.Found, (await oona.GetAsync("/account")).Status);
    }

    [Fact]
    public async Task Signing_out_everywhere_ends_all_sessions()
    {
        await using var house = await House.OpenAsync();
        using var here = await house.EnterAsync("oona");
        using var there = await house.EnterAsync("oona");
        (await here.SendFormAsync("/account", "everywhere")).Dispose();
        Assert.Equal(HttpStatusCode.Found, (await here.GetAsync("/")).Status);
        Assert.Equal(HttpStatusCode.Found, (await there.GetAsync("/")).Status);
        using var again = await house.EnterAsync("oona");
        Assert.Equal(HttpStatusCode.OK, (await again.GetAsync("/")).Status);
    }

    [Fact]
    public async Task A_session_ends_when_it_is_not_used_and_at_the_latest_after_two_weeks()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        house.Clock.Move(Sessions.Idle - TimeSpan.FromMinutes(10));
        Assert.Equal(HttpStatusCode.OK, (await oona.GetAsync("/help")).Status);
        house.Clock.Move(Sessions.Idle + TimeSpan.FromMinutes(1));
        Assert.Equal(HttpStatusCode.Found, (await oona.GetAsync("/help")).Status);

        using var busy = await house.EnterAsync("oona");
        for (var day = 0; day < 28; day++)
        {
            house.Clock.Move(TimeSpan.FromHours(11.9));
            Assert.Equal(HttpStatusCode.OK, (await busy.GetAsync("/help")).Status);
        }

        house.Clock.Move(TimeSpan.FromHours(12));
        Assert.Equal(HttpStatusCode.Found, (await busy.GetAsync("/help")).Status);
    }

    [Fact]
    public async Task A_new_sign_in_is_a_new_session()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        var before = oona.Cookies.GetCookies(house.Address)["ashery"]!.Value;
        (await oona.SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", House.Password))).Dispose();
        Assert.NotEqual(before, oona.Cookies.GetCookies(house.Address)["ashery"]!.Value);
        var id = await house.IdOfAsync("oona");
        Assert.Equal(2, (await house.WithAsync<Sessions, IReadOnlyList<SessionRow>>(s => s.OfAsync(id))).Count);
        Assert.Contains("Firefox on Linux", (await oona.GetAsync("/account")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    public async Task The_sign_in_leads_nowhere_else(string back)
    {
        await using var house = await House.OpenAsync();
        using var browser = house.Browser();
        using var answer = await browser.SendFormAsync("/sign-in?back=" + Uri.EscapeDataString(back), "sign-in", ("name", "oona"), ("password", House.Password), ("back", back));
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Equal(house.Address, new Uri(house.Address, answer.Headers.Location!));
    }

    [Fact]
    public async Task The_first_account_needs_the_code_of_the_computer_and_there_is_only_one_first()
    {
        await using var house = await House.OpenAsync(people: false);
        var code = await house.WithAsync<Roster, string?>(r => r.FirstCodeAsync());
        using var browser = house.Browser();
        using (var wrong = await browser.SendFormAsync("/first", "first", ("code", "0000"), ("name", "eve"), ("password", House.Password)))
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.StatusCode);
        }

        using (var right = await browser.SendFormAsync("/first?code=" + code, "first", ("name", "oona"), ("password", House.Password)))
        {
            Assert.Equal(HttpStatusCode.Found, right.StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/pots")).Status);
        Assert.Null(await house.WithAsync<Roster, string?>(r => r.FirstCodeAsync()));
        using var late = await house.Browser().SendFormAsync("/first", "first", ("code", code!), ("name", "eve"), ("password", House.Password));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.StatusCode);
    }

    [Fact]
    public async Task The_log_tells_what_happened_and_no_secret()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        (await house.Browser().SendFormAsync("/sign-in", "sign-in", ("name", "oona"), ("password", "wrong one this time"))).Dispose();
        (await oona.GetAsync("/garden.json")).ToString();
        var token = await house.TokenAsync("oona", TokenScope.Read);
        (await oona.SendFormAsync("/account/phone", "show-code")).Dispose();
        var log = house.App.Services.GetRequiredService<AuditLog>().About(await house.IdOfAsync("oona"), 100);
        Assert.Superset(
            new HashSet<string> { AuditKind.AccountMade, AuditKind.SignedIn, AuditKind.SignInFailed, AuditKind.Exported, AuditKind.TokenMade, AuditKind.PairingCodeMade },
            log.Select(l => l.Kind).ToHashSet());
        var all = string.Join('\n', log.Select(l => l.Detail + l.From));
        Assert.DoesNotContain(token, all, StringComparison.Ordinal);
        Assert.DoesNotContain(House.Password, all, StringComparison.Ordinal);
        Assert.DoesNotContain("wrong one", all, StringComparison.Ordinal);
        Assert.All(log.Where(l => l.Kind == AuditKind.SignedIn), l => Assert.Contains("127.0.0.1", l.From, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_name_with_a_line_break_stays_one_line_of_the_log()
    {
        await using var house = await House.OpenAsync();
        var log = house.App.Services.GetRequiredService<AuditLog>();
        log.Write(AuditKind.SignInFailed, null, "192.0.2.1", "x\r\nsigned-in user root", "home");
        Assert.Equal("x  signed-in user root", log.OfGarden("home", 1)[0].Detail);
    }
}
