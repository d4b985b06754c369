using Ashery.Problems;
using Ashery.Records.Moving.Backups;
using Ashery.Records.Photos;

namespace Ashery.Web.Gardens;

/// <summary>Backup and restore of all that is stored, for the page that offers them.</summary>
/// <param name="database">File or address.</param>
/// <param name="gardenFile">File of the garden; kept backups lie beside it.</param>
/// <param name="photos">Where photographs are.</param>
/// <param name="clock">For names and manifests.</param>
public sealed class BackupDesk(string database, string gardenFile, PhotoFiles photos, TimeProvider clock)
{
    /// <summary>Largest backup that a page takes; a larger one is brought back by the command.</summary>
    public const long Most = 1024L * 1024 * 1024;

    /// <summary>Makes a backup into a file that goes when it is closed.</summary>
    public Result<Stream> Make()
    {
        var file = Path.Combine(Path.GetTempPath(), $"ashery-{Guid.NewGuid():N}.zip");
        var made = Backup.Make(database, photos, file, clock);
        return made.Ok
            ? Result.Of<Stream>(new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.None, 64 * 1024, FileOptions.DeleteOnClose | FileOptions.Asynchronous))
            : Result.Fail<Stream>(made.Problems);
    }

    /// <summary>Brings an uploaded backup back.</summary>
    public async Task<Result<Restored>> RestoreAsync(IFormFile uploaded, CancellationToken stop)
    {
        var file = Path.Combine(Path.GetTempPath(), $"ashery-{Guid.NewGuid():N}.zip");
        try
        {
            await using (var written = File.Create(file))
            {
                await uploaded.CopyToAsync(written, stop);
            }

            return Restore.From(file, database, photos, Path.Combine(Path.GetDirectoryName(Path.GetFullPath(gardenFile))!, "backups"), clock);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
