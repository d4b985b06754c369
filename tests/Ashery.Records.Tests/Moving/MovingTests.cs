using System.IO.Compression;
using Ashery.Exchange.Gardens;
using Ashery.Records.Moving;
using Ashery.Records.Moving.Backups;
using Ashery.Records.Moving.Exports;
using Ashery.Records.Photos;
using Ashery.Records.Tests.Journals;
using Ashery.Records.Tests.Support;
using CsCheck;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Tests.Moving;

/// <summary>Backup, restore, copy, export and import give back what they took, by the content hash, and refuse what is damaged.</summary>
public sealed class MovingTests : IDisposable
{
    private readonly string folder = Scratch.NewFolder();

    private PhotoFiles Photos => new(In("photos"));

    [Theory]
    [InlineData(Scratch.Sqlite)]
    [InlineData(Scratch.Postgres)]
    public void A_backup_restores_to_equal_content_and_keeps_what_was_there(string database)
    {
        using var temp = Filled(database);
        var photo = Photos.Keep([1, 2, 3], [4]).Value!;
        var before = Hash(temp.Database);
        var made = Backup.Make(temp.Database, Photos, In("a.zip"), TimeProvider.System);
        Assert.True(made.Ok, string.Join(' ', made.Problems));
        Assert.Equal(before, made.Value.ContentHash);

        // Into another place, into one of the other kind, and over what was changed since.
        foreach (var kind in new[] { Scratch.Sqlite, Scratch.Postgres })
        {
            using var fresh = Scratch.Of(kind);
            var elsewhere = new PhotoFiles(In("photos-" + kind));
            var there = Restore.From(In("a.zip"), fresh.Database, elsewhere, In("kept"), TimeProvider.System);
            Assert.True(there.Ok, string.Join(' ', there.Problems));
            Assert.Null(there.Value.KeptIn);
            Assert.Equal(before, Hash(fresh.Database));
            Assert.True(elsewhere.Has(photo));

            // And it goes on counting after what was brought in.
            var added = RandomEntries.Note("after");
            Assert.IsType<JournalOutcome.Written>(fresh.Journal().Write([EntryChange.New(added)]));
            Assert.Single(fresh.Journal().Query(new JournalQuery { Words = "after" }));
            Assert.IsType<SaveOutcome.Saved>(fresh.Store.Save(RandomGardens.Small("after"), fresh.Store.Load()!.Version, "after"));
        }

        temp.Journal().Write([EntryChange.New(RandomEntries.Note("since"))]);
        var changed = Hash(temp.Database);
        var back = Restore.From(In("a.zip"), temp.Database, Photos, In("kept"), TimeProvider.System);
        Assert.True(back.Ok, string.Join(' ', back.Problems));
        Assert.Equal(before, Hash(temp.Database));
        Assert.True(Restore.From(back.Value.KeptIn!, temp.Database, Photos, In("kept-again"), TimeProvider.System).Ok);
        Assert.Equal(changed, Hash(temp.Database));
    }

    [Fact]
    public void A_damaged_backup_is_refused_and_changes_nothing()
    {
        using var temp = Filled(Scratch.Sqlite);
        Photos.Keep([1, 2, 3], [4]);
        Assert.True(Backup.Make(temp.Database, Photos, In("a.zip"), TimeProvider.System).Ok);
        var before = Hash(temp.Database);
        var whole = File.ReadAllBytes(In("a.zip"));
        var random = new Random(1);
        for (var i = 0; i < 12; i++)
        {
            var bytes = i % 3 == 0 ? whole[..random.Next(whole.Length)] : [.. whole];
            if (i % 3 != 0)
            {
                bytes[random.Next(bytes.Length)] ^= 0x41;
            }

            File.WriteAllBytes(In("bad.zip"), bytes);
            var outcome = Restore.From(In("bad.zip"), temp.Database, Photos, In("kept"), TimeProvider.System);

            // A bit may fall where a zip says nothing of the content (a time stamp); then the content must be the old.
            Assert.Equal(before, Hash(temp.Database));
            Assert.True(!outcome.Ok || outcome.Value.ContentHash == before);
        }

        File.WriteAllText(In("no.zip"), "not a zip");
        Assert.False(Restore.From(In("no.zip"), temp.Database, Photos, In("kept"), TimeProvider.System).Ok);
        Edit("records.db", static bytes => bytes[^100] ^= 1);
        Assert.Contains("records.db is not what it was", Refused(temp), StringComparison.Ordinal);
        using (var zip = ZipFile.Open(In("bad.zip"), ZipArchiveMode.Update))
        {
            zip.CreateEntry("../outside.txt");
        }

        Assert.Contains("damaged", Refused(temp), StringComparison.Ordinal);
        Assert.Equal(before, Hash(temp.Database));

        void Edit(string name, Action<byte[]> change)
        {
            File.WriteAllBytes(In("bad.zip"), whole);
            using var zip = ZipFile.Open(In("bad.zip"), ZipArchiveMode.Update);
            using var memory = new MemoryStream();
            using (var old = zip.GetEntry(name)!.Open())
            {
                old.CopyTo(memory);
            }

            zip.GetEntry(name)!.Delete();
            var bytes = memory.ToArray();
            change(bytes);
            using var written = zip.CreateEntry(name).Open();
            written.Write(bytes);
        }
    }

    [Fact]
    public async Task A_backup_made_under_writing_is_of_one_moment()
    {
        using var temp = Filled(Scratch.Sqlite);
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(() =>
        {
            // Two entries a write: of one moment are both or none.
            for (var n = 0; !stop.IsCancellationRequested; n++)
            {
                temp.Journal().Write([EntryChange.New(RandomEntries.Note(FormattableString.Invariant($"pair{n} a"))), EntryChange.New(RandomEntries.Note(FormattableString.Invariant($"pair{n} b")))]);
            }
        });
        for (var i = 0; i < 3; i++)
        {
            Assert.True(Backup.Make(temp.Database, Photos, In("busy.zip"), TimeProvider.System).Ok);
            using var fresh = Scratch.Of(Scratch.Sqlite);
            Assert.True(Restore.From(In("busy.zip"), fresh.Database, Photos, In("kept"), TimeProvider.System).Ok);
            Assert.Equal(0, fresh.Journal().Query(new JournalQuery { Words = "pair", AtMost = 100_000 }).Count % 2);
        }

        await stop.CancelAsync();
        await writing;
    }

    [Fact]
    public void From_file_to_server_and_back_nothing_is_lost()
    {
        using var file = Filled(Scratch.Sqlite);
        using var server = Scratch.Of(Scratch.Postgres);
        var there = Copying.Copy(file.Database, server.Database);
        Assert.True(there.Ok, string.Join(' ', there.Problems));
        var back = Copying.Copy(server.Database, In("back.db"));
        Assert.True(back.Ok, string.Join(' ', back.Problems));
        Assert.Equal(Hash(file.Database), there.Value);
        Assert.Equal(there.Value, back.Value);
        Assert.Equal(Hash(file.Database), Hash(In("back.db")));
        Assert.False(Copying.Copy(file.Database, server.Database).Ok);

        // The hash sees a single sign.
        server.Journal().Write([EntryChange.New(RandomEntries.Note("one more"))]);
        Assert.NotEqual(there.Value, Hash(server.Database));
    }

    [Theory]
    [InlineData(Scratch.Sqlite, "out")]
    [InlineData(Scratch.Postgres, "out.zip")]
    public void An_export_comes_back_without_loss(string database, string target)
    {
        using var temp = Filled(database);
        var photo = Photos.Keep([1, 2, 3], [4]).Value!;
        var written = Export.To(temp.Database, Photos, In(target));
        Assert.True(written.Ok, string.Join(' ', written.Problems));
        using var fresh = Scratch.Of(database == Scratch.Sqlite ? Scratch.Postgres : Scratch.Sqlite);
        var elsewhere = new PhotoFiles(In("elsewhere"));
        var read = Import.From(In(target), fresh.Database, elsewhere);
        Assert.True(read.Ok, string.Join(' ', read.Problems));
        Assert.True(elsewhere.Has(photo));
        Assert.True(Export.To(fresh.Database, Photos, In("again")).Ok);
        if (target.EndsWith(".zip", StringComparison.Ordinal))
        {
            ZipFile.ExtractToDirectory(In(target), In("out"));
        }

        Assert.Equal(Files(In("out")), Files(In("again")));
        Assert.False(Import.From(In(target), fresh.Database, elsewhere).Ok);
    }

    [Fact]
    public void A_line_with_a_mistake_is_named_and_nothing_comes_in()
    {
        using var temp = Filled(Scratch.Sqlite);
        Assert.True(Export.To(temp.Database, Photos, In("out")).Ok);
        var file = Path.Combine(In("out"), "gardens", "home", "journal.jsonl");
        var lines = File.ReadAllLines(file);
        lines[1] = lines[1].Replace("\"entry\":{", "\"entry\":{\"oops\":", StringComparison.Ordinal);
        File.WriteAllLines(file, lines);
        using var fresh = Scratch.Of(Scratch.Sqlite);
        var read = Import.From(In("out"), fresh.Database, Photos);
        Assert.False(read.Ok);
        Assert.Contains("line 2", read.Problems[0].Field, StringComparison.Ordinal);
        Assert.Empty(fresh.Records.Gardens());
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private string Refused(Scratch temp) => string.Join(' ', Restore.From(In("bad.zip"), temp.Database, Photos, In("kept"), TimeProvider.System).Problems);

    private static SortedDictionary<string, string> Files(string folder) => new(
        Directory.GetFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(folder, f), File.ReadAllText), StringComparer.Ordinal);

    private string In(string name) => Path.Combine(folder, name);

    private static string Hash(string database)
    {
        var hash = Copying.HashOf(database);
        Assert.True(hash.Ok, string.Join(' ', hash.Problems));
        return hash.Value;
    }

    private static Scratch Filled(string kind)
    {
        var temp = Scratch.Of(kind);
        var demo = DemoGarden.Create(new DateOnly(2027, 3, 1));
        temp.Store.Save(demo, 0, "the demo garden");
        temp.Records.Garden(IRecords.Home, "Ana").Save(demo with { Name = "Roof, \"east\"" }, 1, "a name");
        temp.Records.Garden("second").Save(RandomGardens.Small("second"), 0, "begin");
        var journal = temp.Journal("Ben");
        var random = new PCG(7);
        var entries = Enumerable.Range(0, 40).Select(_ => RandomEntries.Any.Generate(random, null, out Size _));
        entries.Chunk(10).ToList().ForEach(some => journal.Write([.. some.Select(EntryChange.New)]));
        foreach (var (stored, i) in journal.Latest(12).Select(static (e, i) => (e, i)))
        {
            journal.Write([new(stored.Entry.Id, 1, i % 3 == 0 ? null : stored.Entry with { Note = "changed" })]);
        }

        temp.Records.Journal("second").Write([EntryChange.New(RandomEntries.Note("in the second"))]);
        return temp;
    }
}
