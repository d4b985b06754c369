using System.IO.Compression;
using System.Text;
using Ashery.Exchange.Gardens;
using Ashery.Problems;
using Ashery.Records.Photos;
using Ashery.Records.Stores;

namespace Ashery.Records.Moving.Exports;

/// <summary>
/// Everything of all gardens as documented JSON and CSV (docs/records.md): every kept state, every revision of every entry, the photographs. For
/// whoever wants their records outside of Ashery; accounts are not in it.
/// </summary>
public static class Export
{
    public const string Head = "export.json", Format = "ashery-export/1", States = "states.jsonl", Journal = "journal.jsonl", Gardens = "gardens", Photos = "photos";

    /// <summary>Writes into a folder that is empty or not there, or into one file when the name ends in <c>.zip</c>.</summary>
    /// <returns>Where it is.</returns>
    public static Result<string> To(string database, PhotoFiles photos, string target) => Trouble.Told(() =>
    {
        var full = Path.GetFullPath(target);
        var isFile = full.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);
        if (!isFile && Directory.Exists(full) && Directory.EnumerateFileSystemEntries(full).Any())
        {
            return Result.Fail<string>("export", $"{full} holds files already.", "Name a folder that is empty or not there yet.");
        }

        var records = Databases.Open(database);
        if (!records.Ok)
        {
            return Result.Fail<string>(records.Problems);
        }

        var folder = isFile ? Directory.CreateTempSubdirectory("ashery-export-").FullName : Directory.CreateDirectory(full).FullName;
        try
        {
            Write(records.Value, photos, folder);
            if (isFile)
            {
                var half = full + ".half-" + Guid.NewGuid().ToString("N");
                ZipFile.CreateFromDirectory(folder, half);
                File.Move(half, full, overwrite: true);
            }

            return Result.Of(full);
        }
        finally
        {
            if (isFile)
            {
                Directory.Delete(folder, recursive: true);
            }
        }
    });

    private static void Write(DbRecords records, PhotoFiles photos, string folder)
    {
        foreach (var garden in records.Gardens())
        {
            var place = Directory.CreateDirectory(Path.Combine(folder, Gardens, garden.Key)).FullName;
            var store = records.Garden(garden.Key);
            using (var states = Writer(place, States))
            {
                foreach (var change in store.History(int.MaxValue).Reverse())
                {
                    if (store.LoadState(change.Version) is { } state)
                    {
                        states.Write(ExportLines.State(change, state.Garden) + "\n");
                    }
                }
            }

            var journal = records.Journal(garden.Key);
            using (var revisions = Writer(place, Journal))
            {
                foreach (var revision in journal.Latest(int.MaxValue).Reverse())
                {
                    revisions.Write(ExportLines.Revision(revision) + "\n");
                }
            }

            using (var table = Writer(place, "journal.csv"))
            {
                JournalTable.Write(table, journal.Query(new JournalQuery { AtMost = int.MaxValue }));
            }

            File.WriteAllText(Path.Combine(place, "garden.json"), store.Load() is { } newest ? GardenFile.Write(newest.Garden) : "");
        }

        foreach (var name in photos.Names())
        {
            Directory.CreateDirectory(Path.Combine(folder, Photos));
            File.Copy(Path.Combine(photos.Folder, name), Path.Combine(folder, Photos, name));
        }

        // Last, so that a folder with it in is whole.
        File.WriteAllText(Path.Combine(folder, Head), $$"""{ "format": "{{Format}}" }""" + "\n");
    }

    private static StreamWriter Writer(string folder, string name) => new(Path.Combine(folder, name), append: false, new UTF8Encoding(false)) { NewLine = "\n" };
}
