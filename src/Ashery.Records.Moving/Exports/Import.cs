using System.IO.Compression;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Records.Photos;
using Ashery.Records.Stores;

namespace Ashery.Records.Moving.Exports;

/// <summary>Brings in what <see cref="Export"/> wrote, with all numbers, names and instants: all of it, or nothing.</summary>
public static class Import
{
    /// <param name="source">Folder or <c>.zip</c>.</param>
    /// <param name="database">File or address; it must hold nothing yet.</param>
    /// <param name="photos">Where photographs go.</param>
    /// <returns>How many gardens and entries came, in words.</returns>
    public static Result<string> From(string source, string database, PhotoFiles photos) => Trouble.Told(() =>
    {
        if (Directory.Exists(source))
        {
            return Read(source, database, photos);
        }

        if (!File.Exists(source))
        {
            return Result.Fail<string>("import", $"There is no file or folder {source}.", "Name what ashery export wrote.");
        }

        var folder = Directory.CreateTempSubdirectory("ashery-import-").FullName;
        try
        {
            // Refuses names that lead out of the folder.
            ZipFile.ExtractToDirectory(source, folder);
            return Read(folder, database, photos);
        }
        catch (InvalidDataException)
        {
            return Result.Fail<string>("import", $"{source} is no zip file.", "Name what ashery export wrote.");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    });

    private static Result<string> Read(string folder, string database, PhotoFiles photos)
    {
        var head = Path.Combine(folder, Export.Head);
        if (!File.Exists(head) || !File.ReadAllText(head).Contains($"\"{Export.Format}\"", StringComparison.Ordinal))
        {
            return Result.Fail<string>("import", "This is no export of Ashery, or one that was not finished: its export.json is missing.", "Name the folder or file that ashery export wrote.");
        }

        List<(string Key, List<(Change, Garden)> States, List<StoredEntry> Revisions)> gardens = [];
        var root = Path.Combine(folder, Export.Gardens);
        foreach (var place in Directory.Exists(root) ? Directory.GetDirectories(root).Order(StringComparer.Ordinal) : Enumerable.Empty<string>())
        {
            var key = Path.GetFileName(place);
            var states = Lines(Path.Combine(place, Export.States), ExportLines.ReadState);
            var revisions = Lines(Path.Combine(place, Export.Journal), ExportLines.ReadRevision);
            if (!states.Ok || !revisions.Ok)
            {
                return Result.Fail<string>([.. states.Problems, .. revisions.Problems]);
            }

            gardens.Add((key, states.Value, revisions.Value));
        }

        var records = Databases.Open(database);
        return records.Ok ? Into(records.Value, gardens, Path.Combine(folder, Export.Photos), photos) : Result.Fail<string>(records.Problems);
    }

    private static Result<string> Into(DbRecords records, List<(string Key, List<(Change Change, Garden Garden)> States, List<StoredEntry> Revisions)> gardens, string pictures, PhotoFiles photos)
    {
        using var db = records.Engine.Connect();
        using var transaction = records.Engine.BeginWrite(db, "import");
        if (!RecordsLoading.IsEmpty(db))
        {
            return Result.Fail<string>("import", "There are records already. Nothing was brought in.", "Name an empty database, or another folder with ASHERY_HOME.");
        }

        foreach (var (key, states, revisions) in gardens)
        {
            foreach (var (change, garden) in states)
            {
                RecordsLoading.State(db, key, change, garden);
            }

            RecordsLoading.Revisions(db, key, revisions);
        }

        foreach (var picture in Directory.Exists(pictures) ? Directory.GetFiles(pictures).Where(static p => PhotoFiles.IsName(Path.GetFileName(p))) : [])
        {
            Directory.CreateDirectory(photos.Folder);
            File.Copy(picture, Path.Combine(photos.Folder, Path.GetFileName(picture)), overwrite: true);
        }

        transaction.Commit();
        return Result.Of(FormattableString.Invariant($"{gardens.Count} gardens, {gardens.Sum(static g => g.States.Count)} states, {gardens.Sum(static g => g.Revisions.Count)} revisions of entries"));
    }

    private static Result<List<T>> Lines<T>(string file, Func<string, int, string, Result<T>> read)
        where T : notnull
    {
        List<T> found = [];
        List<Problem> problems = [];
        var number = 0;
        foreach (var line in File.Exists(file) ? File.ReadLines(file) : [])
        {
            number++;
            var one = read(Path.GetFileName(file), number, line);
            if (one.Ok)
            {
                found.Add(one.Value);
            }
            else
            {
                problems.AddRange(one.Problems);
            }
        }

        return problems.Count == 0 ? Result.Of(found) : Result.Fail<List<T>>(problems);
    }
}
