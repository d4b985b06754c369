using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Ashery.Problems;
using Ashery.Records.Moving.Tables;
using Ashery.Records.Photos;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Moving.Backups;

/// <summary>Brings a backup back after looking at every byte of it. What was there is backed up first and kept.</summary>
public static class Restore
{
    private const string Field = "backup";

    // More than any backup of ours unpacks to; a small file that unpacks to more is a trap.
    private const long MostBytes = 64L * 1024 * 1024 * 1024;

    /// <summary>Restores a backup into a database, in one transaction: all of it, or nothing is changed.</summary>
    /// <param name="file">The backup.</param>
    /// <param name="database">File or address.</param>
    /// <param name="photos">Where photographs go; those that are there stay.</param>
    /// <param name="keepIn">Folder for the backup of what was there.</param>
    /// <param name="clock">For its name.</param>
    /// <param name="sets">Which tables; null: all.</param>
    public static Result<Restored> From(string file, string database, PhotoFiles photos, string keepIn, TimeProvider clock, IReadOnlyList<TableSet>? sets = null) => Trouble.Told(() =>
    {
        sets ??= TableSet.All;
        if (!File.Exists(file))
        {
            return Result.Fail<Restored>(Field, $"There is no file {file}.", "Name a backup that ashery backup or the page Settings, Backup made.");
        }

        var folder = Directory.CreateTempSubdirectory("ashery-restore-").FullName;
        try
        {
            var read = Unpacked(file, folder);
            return read.Ok ? Into(read.Value, folder, database, photos, keepIn, clock, sets) : Result.Fail<Restored>(read.Problems);
        }
        catch (Exception e) when (e is InvalidDataException or JsonException)
        {
            return Damaged("it is no whole zip file of a backup");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    });

    private static Result<Restored> Into(Manifest manifest, string folder, string database, PhotoFiles photos, string keepIn, TimeProvider clock, IReadOnlyList<TableSet> sets)
    {
        var copy = Path.Combine(folder, Backup.Records);
        if (!IsSound(copy))
        {
            return Damaged("the database in it is not sound");
        }

        using var backup = OpenTables.Open(copy, sets).Value!;
        var schema = backup.Schema();
        if (backup.Migrate() is { } newer)
        {
            return Result.Fail<Restored>(newer);
        }

        // The hash is of tables of the shape they had; another shape has another hash, and the file's own hash has been looked at.
        if (schema.SequenceEqual(manifest.Schema) && schema.SequenceEqual(backup.Schema()) && ContentHash.Of(backup.Contexts) != manifest.ContentHash)
        {
            return Damaged("its rows are not those it was made of");
        }

        var ready = Copying.Ready(database, sets);
        using var target = ready.Value;
        if (target is null)
        {
            return Result.Fail<Restored>(ready.Problems);
        }

        string? kept = null;
        if (!Copying.IsEmpty(target))
        {
            Directory.CreateDirectory(keepIn);
            kept = Path.Combine(keepIn, $"before-restore-{clock.GetUtcNow().ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}.zip");
            if (Backup.Make(database, photos, kept, clock, sets) is { Ok: false } failed)
            {
                return Result.Fail<Restored>(failed.Problems);
            }
        }

        // Photographs first: an entry never names one that is not there.
        var pictures = Path.Combine(folder, Backup.PhotoFolder);
        foreach (var picture in Directory.Exists(pictures) ? Directory.GetFiles(pictures) : [])
        {
            Directory.CreateDirectory(photos.Folder);
            var to = Path.Combine(photos.Folder, Path.GetFileName(picture));
            if (!File.Exists(to))
            {
                File.Copy(picture, to + ".part", overwrite: true);
                File.Move(to + ".part", to);
            }
        }

        var done = TableCopy.Replace(backup, target);
        return done.Ok ? Result.Of(new Restored(manifest.MadeAt, done.Value, kept)) : Result.Fail<Restored>(done.Problems);
    }

    // Every file the manifest names, whole, and none besides.
    private static Result<Manifest> Unpacked(string file, string folder)
    {
        using var zip = ZipFile.OpenRead(file);
        if (zip.GetEntry(Manifest.Name) is not { } listed)
        {
            return Result.Fail<Manifest>(Field, "This is not a backup of Ashery: it holds no manifest.json.", "Name a file that ashery backup made; a garden .json is brought in on the page Settings, Restore.");
        }

        Manifest? manifest;
        using (var stream = listed.Open())
        {
            manifest = JsonSerializer.Deserialize(stream, ManifestJson.Default.Manifest);
        }

        if (manifest is null || manifest.Format != Manifest.ThisFormat)
        {
            return Result.Fail<Manifest>(Field, "This backup is of another edition.", "Use the Ashery that made it, or a newer one.");
        }

        if (manifest.Files.Sum(static f => f.Length) > MostBytes || zip.Entries.Count != manifest.Files.Count + 1 || manifest.Files.All(static f => f.Path != Backup.Records))
        {
            return Result.Fail<Manifest>(DamagedFile("its list of files is not that of the files in it"));
        }

        foreach (var named in manifest.Files)
        {
            var name = Path.GetFileName(named.Path);
            if (named.Path != Backup.Records && (named.Path != Backup.PhotoFolder + name || !PhotoFiles.IsName(name)))
            {
                return Result.Fail<Manifest>(DamagedFile("it names a file that no backup holds"));
            }

            if (zip.GetEntry(named.Path) is not { } entry || entry.Length != named.Length || Unpack(entry, Path.Combine(folder, named.Path)) != named.Sha256)
            {
                return Result.Fail<Manifest>(DamagedFile($"{named.Path} is not what it was"));
            }
        }

        return Result.Of(manifest);
    }

    private static string Unpack(ZipArchiveEntry entry, string path)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using (var from = entry.Open())
        using (var to = File.Create(path))
        {
            from.CopyTo(to);
        }

        using var written = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(written));
    }

    private static bool IsSound(string path)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check;";
        return command.ExecuteScalar() is "ok";
    }

    private static Result<Restored> Damaged(string how) => Result.Fail<Restored>(DamagedFile(how));

    private static Problem DamagedFile(string how) => new(Field, $"The backup is damaged: {how}. Nothing was changed.", "Try another backup.");
}

/// <summary>A backup that was brought back.</summary>
/// <param name="MadeAt">When the backup was made.</param>
/// <param name="ContentHash">Of what the database holds now.</param>
/// <param name="KeptIn">Backup of what was there; null when there was nothing.</param>
public sealed record Restored(DateTimeOffset MadeAt, string ContentHash, string? KeptIn);
