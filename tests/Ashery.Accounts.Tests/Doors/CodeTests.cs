using System.Net;
using Ashery.Accounts.Databases;
using Ashery.Accounts.Model;
using Ashery.Accounts.People;
using Ashery.Accounts.SignIn;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>Pairing, invitations: codes that work once.</summary>
public sealed class CodeTests
{
    private static async Task<string> CodeAsync(House house, Browser oona)
    {
        using var answer = await oona.SendFormAsync("/account/phone", "show-code");
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("no-store", answer.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
        Assert.Contains("<svg viewBox", text, StringComparison.Ordinal);
        var at = text.IndexOf("class=\"code\">", StringComparison.Ordinal) + 13;
        return text[at..(at + 14)];
    }

    [Fact]
    public async Task A_phone_is_paired_once_and_stays()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        var code = await CodeAsync(house, oona);
        using var phone = house.Browser();
        using (var paired = await phone.SendFormAsync("/pair?code=" + code, "pair"))
        {
            Assert.Equal(HttpStatusCode.Found, paired.StatusCode);
            var cookie = paired.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("ashery=", StringComparison.Ordinal));
            Assert.Contains("expires=", cookie, StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains(House.Secret, (await phone.GetAsync("/settings")).Text, StringComparison.Ordinal);
        house.Clock.Move(TimeSpan.FromDays(59));
        Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync("/help")).Status);
        house.Clock.Move(Sessions.PairedIdle + TimeSpan.FromMinutes(6));
        Assert.Equal(HttpStatusCode.Found, (await phone.GetAsync("/help")).Status);

        using var second = await house.Browser().SendFormAsync("/pair", "pair", ("code", code));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, second.StatusCode);
    }

    [Fact]
    public async Task A_code_ends_after_five_minutes_and_when_a_new_one_is_shown()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        var first = await CodeAsync(house, oona);
        var second = await CodeAsync(house, oona);
        using (var old = await house.Browser().SendFormAsync("/pair", "pair", ("code", first)))
        {
            Assert.Equal(HttpStatusCode.UnprocessableEntity, old.StatusCode);
        }

        house.Clock.Move(TimeSpan.FromMinutes(5.1));
        using var late = await house.Browser().SendFormAsync("/pair", "pair", ("code", second));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.StatusCode);
    }

    [Fact]
    public async Task Of_twenty_who_use_a_code_at_once_one_gets_in()
    {
        await using var house = await House.OpenAsync();
        var id = await house.IdOfAsync("oona");
        var code = await house.WithAsync<Codes, string>(c => c.MakeAsync(CodePurpose.Pairing, Codes.PairingLasts, id));
        var used = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => Task.Run(() => house.WithAsync<Codes, CodeRow?>(c => c.UseAsync(CodePurpose.Pairing, code)))));
        Assert.Single(used, u => u is not null);
    }

    [Fact]
    public async Task A_code_is_for_its_purpose_and_read_as_people_type_it()
    {
        await using var house = await House.OpenAsync();
        var id = await house.IdOfAsync("oona");
        var code = await house.WithAsync<Codes, string>(c => c.MakeAsync(CodePurpose.Pairing, Codes.PairingLasts, id));
        Assert.Null(await house.WithAsync<Codes, CodeRow?>(c => c.UseAsync(CodePurpose.Invitation, code)));
        var typed = $" {code[..4].ToLowerInvariant()} - {code[4..].Replace('0', 'O').Replace('1', 'l')} ";
        Assert.NotNull(await house.WithAsync<Codes, CodeRow?>(c => c.UseAsync(CodePurpose.Pairing, typed)));
    }

    [Fact]
    public async Task Secrets_are_not_in_the_database()
    {
        await using var house = await House.OpenAsync();
        var id = await house.IdOfAsync("oona");
        var code = await house.WithAsync<Codes, string>(c => c.MakeAsync(CodePurpose.Pairing, Codes.PairingLasts, id));
        var token = await house.TokenAsync("oona", TokenScope.Write);
        using var db = house.App.Services.GetRequiredService<AccountsDatabase>().Open();
        await db.Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE);", TestContext.Current.CancellationToken);
        var bytes = await ReadAsync(Path.Combine(house.Folder, "garden.db"));
        Assert.Contains("account_session", bytes, StringComparison.Ordinal);
        Assert.DoesNotContain(code, bytes, StringComparison.Ordinal);
        Assert.DoesNotContain(token, bytes, StringComparison.Ordinal);
        Assert.DoesNotContain(House.Password, bytes, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_invitation_makes_an_account_once_with_the_role_it_says()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        using var made = await oona.SendFormAsync("/garden/people", "invite", ("role", "Reader"));
        var text = await made.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        var code = text[(text.IndexOf("join?code=", StringComparison.Ordinal) + 10)..][..12];
        using var guest = house.Browser();
        using (var joined = await guest.SendFormAsync("/join?code=" + code, "join-new", ("name", "gale"), ("password", "seven green wool hats")))
        {
            Assert.Equal(HttpStatusCode.Found, joined.StatusCode);
        }

        Assert.Contains("You look at this garden as a reader", (await guest.GetAsync("/pots")).Text, StringComparison.Ordinal);
        using var again = await house.Browser().SendFormAsync("/join?code=" + code, "join-new", ("name", "gus"), ("password", "seven green wool hats"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, again.StatusCode);
        Assert.DoesNotContain("gus", (await oona.GetAsync("/garden/people")).Text, StringComparison.Ordinal);
    }

    private static async Task<string> ReadAsync(string path)
    {
        await using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var reader = new StreamReader(file, System.Text.Encoding.Latin1);
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }
}
