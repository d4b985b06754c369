using System.Net;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>A stranger, and somebody who belongs to another garden, see nothing: by any address the application has.</summary>
public sealed class StrangerTests
{
    [Fact]
    public async Task Every_endpoint_is_closed_to_a_stranger_unless_it_is_open_on_purpose()
    {
        await using var house = await House.OpenAsync();
        using var stranger = house.Browser();
        var addresses = Addresses.All(house);
        Assert.True(addresses.Count > 60, FormattableString.Invariant($"{addresses.Count} endpoints"));
        List<string> wrong = [];
        foreach (var (pattern, path, isAsset) in addresses)
        {
            var (status, text) = await stranger.GetAsync(path);
            if (text.Contains(House.Secret, StringComparison.OrdinalIgnoreCase))
            {
                wrong.Add($"{path} shows the garden's name");
            }

            if (!isAsset && !Addresses.Open.Contains(pattern) && status is not (HttpStatusCode.Found or HttpStatusCode.Unauthorized))
            {
                wrong.Add(FormattableString.Invariant($"{path} answers {(int)status}"));
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    [Fact]
    public async Task A_stranger_is_sent_to_the_sign_in_and_a_program_is_told()
    {
        await using var house = await House.OpenAsync();
        using var stranger = house.Browser();
        using var page = await stranger.Http.GetAsync("/pots", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Found, page.StatusCode);
        Assert.Equal("/sign-in?back=%2Fpots", page.Headers.Location!.PathAndQuery);
        using var api = await stranger.Http.GetAsync("/api/gardens", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Unauthorized, api.StatusCode);
        Assert.Equal("application/problem+json", api.Content.Headers.ContentType!.MediaType);
        Assert.Equal(HttpStatusCode.Found, (await stranger.GetAsync("/nothing-here")).Status);
    }

    [Fact]
    public async Task Nothing_is_posted_by_a_stranger()
    {
        await using var house = await House.OpenAsync();
        using var stranger = house.Browser();
        var before = house.Store.Load()!.Version;
        foreach (var (pattern, path, _) in Addresses.All(house).Where(a => !a.IsAsset && !Addresses.Open.Contains(a.Pattern)))
        {
            using var body = new StringContent("{}", System.Text.Encoding.UTF8, "application/json");
            using var answer = await stranger.Http.PostAsync(path, body, TestContext.Current.CancellationToken);
            Assert.True((int)answer.StatusCode is 400 or 401 or 403 or 404 or 405, FormattableString.Invariant($"{pattern}: {(int)answer.StatusCode}"));
        }

        Assert.Equal(before, house.Store.Load()!.Version);
    }

    [Fact]
    public async Task Somebody_of_another_garden_sees_nothing_of_this_one()
    {
        await using var house = await House.OpenAsync();
        using var sten = await house.EnterAsync("sten");
        sten.Cookies.Add(house.Address, new Cookie("garden", "home"));
        Assert.Contains("Other", (await sten.GetAsync("/settings")).Text, StringComparison.Ordinal);
        List<string> wrong = [];
        foreach (var (_, path, _) in Addresses.All(house))
        {
            if ((await sten.GetAsync(path)).Text.Contains(House.Secret, StringComparison.OrdinalIgnoreCase))
            {
                wrong.Add(path);
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Equal(HttpStatusCode.NotFound, (await sten.GetAsync("/api/gardens/home")).Status is var s && s == HttpStatusCode.Forbidden ? HttpStatusCode.NotFound : s);

        // The same addresses do show it to who belongs here, so that the search above can find something.
        using var oona = await house.EnterAsync("oona");
        Assert.Contains(House.Secret, (await oona.GetAsync("/settings")).Text, StringComparison.Ordinal);
        Assert.Contains(House.Secret, (await oona.GetAsync("/api/gardens/home")).Text, StringComparison.Ordinal);
        Assert.Contains(House.Secret, (await oona.GetAsync("/garden.json")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_left_a_garden_is_out_at_once()
    {
        await using var house = await House.OpenAsync();
        using var hugh = await house.EnterAsync("hugh");
        Assert.Contains(House.Secret, (await hugh.GetAsync("/settings")).Text, StringComparison.Ordinal);
        var (oona, other) = (await house.IdOfAsync("oona"), await house.IdOfAsync("hugh"));
        Assert.Null(await house.WithAsync<People.Memberships, Problems.Problem?>(m => m.ChangeAsync(oona, "home", other, null, "")));
        Assert.DoesNotContain(House.Secret, (await hugh.GetAsync("/settings")).Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await hugh.GetAsync("/garden.json")).Status);
    }
}
