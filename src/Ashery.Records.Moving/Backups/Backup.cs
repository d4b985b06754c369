using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using Ashery.Problems;
using Ashery.Records.Moving.Tables;
using Ashery.Records.Photos;
using Microsoft.Data.Sqlite;

namespace Ashery.Records.Moving.Backups;

/// <summary>Everything in one zip file, made while the application runs: the database as a SQLite file whatever it was, and the photographs.</summary>
public static class Backup
{
    internal const string Records = "records.db", PhotoFolder = "photos/";

    /// <summary>Writes a backup. The file is there whole or not at all.</summary>
    /// <param name="database">File or address.</param>
    /// <param name="photos">Folder of the photographs; it may be missing.</param>
    /// <param name="file">The backup; what stood under this name is replaced at the end.</param>
    /// <param name="clock">For the manifest.</param>
    /// <param name="sets">Which tables; null: all.</param>
    public static Result<BackupMade> Make(string database, PhotoFiles photos, string file, TimeProvider clock, IReadOnlyList<TableSet>? sets = null) => Trouble.Told(() =>
    {
        var target = Path.GetFullPath(file);
        var half = target + ".half-" + Guid.NewGuid().ToString("N");
        var folder = Directory.CreateTempSubdirectory("ashery-backup-").FullName;
        try
        {
            var copy = Path.Combine(folder, Records);
            var manifest = Snapshot(database, copy, clock, sets ?? TableSet.All);
            if (!manifest.Ok)
            {
                return Result.Fail<BackupMade>(manifest.Problems);
            }

            using (var stream = new FileStream(half, FileMode.CreateNew, FileAccess.ReadWrite))
            {
                using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
                {
                    List<ManifestFile> files = [Put(zip, Records, copy, CompressionLevel.Fastest)];

                    // Pictures do not get smaller.
                    files.AddRange(photos.Names().Select(name => Put(zip, PhotoFolder + name, Path.Combine(photos.Folder, name), CompressionLevel.NoCompression)));
                    using var last = zip.CreateEntry(Manifest.Name).Open();
                    JsonSerializer.Serialize(last, manifest.Value with { Files = files }, ManifestJson.Default.Manifest);
                }

                stream.Flush(flushToDisk: true);
            }

            File.Move(half, target, overwrite: true);
            return Result.Of(new BackupMade(target, new FileInfo(target).Length, manifest.Value.ContentHash));
        }
        finally
        {
            File.Delete(half);
            Directory.Delete(folder, recursive: true);
        }
    });

    // The rows as of one moment, as a SQLite file.
    private static Result<Manifest> Snapshot(string database, string copy, TimeProvider clock, IReadOnlyList<TableSet> sets)
    {
        var source = Copying.Ready(database, sets);
        using var tables = source.Value;
        if (tables is null)
        {
            return Result.Fail<Manifest>(source.Problems);
        }

        if (Databases.IsServer(database))
        {
            var fresh = Copying.Ready(copy, sets);
            using var target = fresh.Value;
            if (target is null || TableCopy.Replace(tables, target) is { Ok: false })
            {
                return Result.Fail<Manifest>("database", "It could not be copied.", "Check the room for temporary files.");
            }
        }
        else
        {
            // SQLite manual, "SQLite Backup API": a copy of one moment, while others write.
            using var from = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = Path.GetFullPath(database), Mode = SqliteOpenMode.ReadWrite, Pooling = false }.ToString());
            using var to = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = copy, Pooling = false }.ToString());
            from.Open();
            to.Open();
            from.BackupDatabase(to);
        }

        var opened = OpenTables.Open(copy, sets);
        Result<Manifest> manifest;
        using (var kept = opened.Value!)
        {
            manifest = Result.Of(new Manifest { Format = Manifest.ThisFormat, MadeAt = clock.GetUtcNow(), ContentHash = ContentHash.Of(kept.Contexts), Schema = kept.Schema(), Files = [] });
        }

        OneFile(copy);
        return manifest;
    }

    // Without the log beside it, so that the one file is the whole of it.
    private static void OneFile(string path)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        SqliteConnection.ClearPool(new SqliteConnection(Ashery.Records.Sqlite.SqliteOptions.Connection(path)));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = DELETE;";
        command.ExecuteNonQuery();
    }

    private static ManifestFile Put(ZipArchive zip, string name, string path, CompressionLevel level)
    {
        using var from = File.OpenRead(path);
        using var to = zip.CreateEntry(name, level).Open();
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var buffer = new byte[128 * 1024];
        int read;
        while ((read = from.Read(buffer)) > 0)
        {
            hash.AppendData(buffer, 0, read);
            to.Write(buffer, 0, read);
        }

        return new(name, Convert.ToHexStringLower(hash.GetHashAndReset()), from.Length);
    }
}

/// <summary>A backup that was made.</summary>
/// <param name="File">Where.</param>
/// <param name="Length">Bytes.</param>
/// <param name="ContentHash">Of all rows in it.</param>
public sealed record BackupMade(string File, long Length, string ContentHash);
