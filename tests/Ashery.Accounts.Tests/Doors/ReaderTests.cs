using System.Net;
using Ashery.Accounts.Model;
using Ashery.Records;
using Ashery.Web.Gardens;

namespace Ashery.Accounts.Tests.Doors;

/// <summary>A reader changes nothing, whatever the page.</summary>
public sealed class ReaderTests
{
    [Fact]
    public async Task Every_form_of_every_page_is_refused_to_a_reader_and_the_page_says_so()
    {
        await using var house = await House.OpenAsync();
        using var oona = await house.EnterAsync("oona");
        using var rhea = await house.EnterAsync("rhea");
        var (version, written) = (house.Store.Load()!.Version, Last(house));
        var refused = 0;
        List<string> wrong = [];
        foreach (var (_, path, _) in Addresses.All(house).Where(a => !a.IsAsset && a.Pattern is not ("/light" or "/account" or "/sign-in" or "/pair" or "/join" or "/first")
            && !a.Pattern.StartsWith("/account/", StringComparison.Ordinal) && a.Pattern != "/gardens"))
        {
            var (status, html) = await oona.GetAsync(path);
            if (status != HttpStatusCode.OK)
            {
                continue;
            }

            // The forms an owner is offered, sent with the reader's own proof against forgery.
            var proof = Form.In((await rhea.GetAsync("/help")).Text, "/help")[0].Fields.First(f => f.Key == "__RequestVerificationToken").Value;
            foreach (var form in Form.In(html, path).Where(f => f.Action != "/light"))
            {
                using var answer = await rhea.SendAsync(form, ("__RequestVerificationToken", proof));
                var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
                refused++;
                if (answer.StatusCode != HttpStatusCode.Forbidden || !text.Contains("Not allowed", StringComparison.Ordinal))
                {
                    wrong.Add(FormattableString.Invariant($"{path} {form.Handler}: {(int)answer.StatusCode}"));
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(refused > 25, FormattableString.Invariant($"{refused} forms"));
        Assert.Equal(version, house.Store.Load()!.Version);
        Assert.Equal(written, Last(house));
    }

    [Fact]
    public async Task A_reader_sees_the_garden_and_why_there_are_no_buttons()
    {
        await using var house = await House.OpenAsync();
        using var rhea = await house.EnterAsync("rhea");
        var (status, text) = await rhea.GetAsync("/pots");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains(House.Secret, text, StringComparison.Ordinal);
        Assert.Contains("You look at this garden as a reader", text, StringComparison.Ordinal);
        Assert.Contains("class=\"reading\"", text, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"reading\"", (await rhea.GetAsync("/account")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_helper_changes_the_garden_in_her_name()
    {
        await using var house = await House.OpenAsync();
        using var hugh = await house.EnterAsync("hugh");
        using var answer = await hugh.SendFormAsync("/settings", "settings", ("name", House.Secret + " East"), ("units", "metric"));
        var text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.StatusCode == HttpStatusCode.Found, text);
        Assert.Equal("hugh", house.Store.History(1)[0].By);
    }

    [Fact]
    public void The_store_and_the_journal_refuse_a_reader_whatever_the_way()
    {
        var whose = new CurrentGarden { Role = GardenRole.Reader };
        var store = new GuardedStore(new Untouchable(), whose);
        var journal = new GuardedJournal(new Untouchable(), whose);
        Assert.Throws<ReaderMayNotWriteException>(() => store.Save(null!, 0, ""));
        Assert.Throws<ReaderMayNotWriteException>(() => journal.Write([]));
        Assert.Throws<ReaderMayNotWriteException>(() => journal.Undo(Guid.Empty, 1));
        whose.Role = GardenRole.Helper;
        Assert.Throws<NotSupportedException>(() => store.Save(null!, 0, ""));
    }

    [Fact]
    public async Task Only_an_owner_says_who_belongs_and_a_garden_keeps_an_owner()
    {
        await using var house = await House.OpenAsync();
        var (oona, hugh, rhea) = (await house.IdOfAsync("oona"), await house.IdOfAsync("hugh"), await house.IdOfAsync("rhea"));
        Task<Problems.Problem?> Change(string by, string who, MemberRole? role) => house.WithAsync<People.Memberships, Problems.Problem?>(m => m.ChangeAsync(by, "home", who, role, ""));
        Assert.NotNull(await Change(hugh, hugh, MemberRole.Owner));
        Assert.NotNull(await Change(rhea, rhea, MemberRole.Helper));
        Assert.NotNull(await Change(hugh, rhea, null));
        Assert.NotNull(await Change(oona, oona, MemberRole.Reader));
        Assert.NotNull(await Change(oona, oona, null));
        Assert.Null(await Change(oona, hugh, MemberRole.Owner));
        Assert.Null(await Change(oona, oona, MemberRole.Reader));
        Assert.False((await house.WithAsync<People.Roster, Problems.Result<string>>(r => r.InviteAsync(oona, "home", MemberRole.Owner, ""))).Ok);

        // The page asks the same.
        using var reader = await house.EnterAsync("rhea");
        Assert.DoesNotContain("Invite somebody", (await reader.GetAsync("/garden/people")).Text, StringComparison.Ordinal);
    }

    private static long Last(House house) => house.Journal.Latest(1) is [var last, ..] ? last.Sequence : 0;

    private sealed class Untouchable : IGardenStore, IJournal
    {
        public bool HasGarden => throw new NotSupportedException();

        public StoredGarden? Load() => throw new NotSupportedException();

        public StoredGarden? LoadState(long version) => throw new NotSupportedException();

        public SaveOutcome Save(Gardens.Garden garden, long basedOn, string what) => throw new NotSupportedException();

        public IReadOnlyList<Change> History(int atMost) => throw new NotSupportedException();

        public IReadOnlyDictionary<string, DateTimeOffset> PotsSince() => throw new NotSupportedException();

        public JournalOutcome Write(IReadOnlyList<EntryChange> changes) => throw new NotSupportedException();

        public StoredEntry? Find(Guid id) => throw new NotSupportedException();

        public IReadOnlyList<StoredEntry> Query(JournalQuery query) => throw new NotSupportedException();

        public long Count(JournalQuery query) => throw new NotSupportedException();

        public IReadOnlyList<StoredEntry> Revisions(Guid id) => throw new NotSupportedException();

        public IReadOnlyList<StoredEntry> Latest(int atMost) => throw new NotSupportedException();

        public JournalOutcome Undo(Guid id, int revision) => throw new NotSupportedException();
    }
}
