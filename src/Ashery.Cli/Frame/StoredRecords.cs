using System.Globalization;
using System.Runtime.CompilerServices;
using Ashery.Problems;
using Ashery.Records;
using Ashery.Records.Moving;
using Ashery.Records.Moving.Backups;
using Ashery.Records.Moving.Exports;
using Ashery.Records.Photos;

namespace Ashery.Cli.Frame;

/// <summary>Backup, restore, copy, export and import of all that is stored. Apart, so that the database's assemblies are loaded only here.</summary>
internal static class StoredRecords
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<MovedJson> Backup(Terminal terminal, string file)
    {
        if (Nothing(terminal) is { } nothing)
        {
            return Result.Fail<MovedJson>(nothing);
        }

        var made = Records.Moving.Backups.Backup.Make(Place(terminal), Photos(terminal), file, Clock(terminal));
        return made.Ok
            ? Result.Of(new MovedJson(string.Create(CultureInfo.InvariantCulture, $"Backed up, {made.Value.Length / 1024.0:0} KiB."), made.Value.File, made.Value.ContentHash))
            : Result.Fail<MovedJson>(made.Problems);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<MovedJson> Restore(Terminal terminal, string file)
    {
        var done = Records.Moving.Backups.Restore.From(file, Place(terminal), Photos(terminal), Path.Combine(Home(terminal), "backups"), Clock(terminal));
        return done.Ok
            ? Result.Of(new MovedJson($"Restored the backup of {done.Value.MadeAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC.", Path.GetFullPath(file), done.Value.ContentHash, done.Value.KeptIn))
            : Result.Fail<MovedJson>(done.Problems);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<MovedJson> Copy(string from, string to)
    {
        var hash = Copying.Copy(from, to);
        return hash.Ok
            ? Result.Of(new MovedJson("Copied. Photographs are files: take the folder photos along.", Databases.IsServer(to) ? "the database" : Path.GetFullPath(to), hash.Value))
            : Result.Fail<MovedJson>(hash.Problems);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<MovedJson> Export(Terminal terminal, string target)
    {
        if (Nothing(terminal) is { } nothing)
        {
            return Result.Fail<MovedJson>(nothing);
        }

        var written = Records.Moving.Exports.Export.To(Place(terminal), Photos(terminal), target);
        return written.Ok ? Result.Of(new MovedJson("Exported everything.", written.Value)) : Result.Fail<MovedJson>(written.Problems);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static Result<MovedJson> Import(Terminal terminal, string source)
    {
        var read = Records.Moving.Exports.Import.From(source, Place(terminal), Photos(terminal));
        return read.Ok ? Result.Of(new MovedJson($"Brought in {read.Value}.", Path.GetFullPath(source))) : Result.Fail<MovedJson>(read.Problems);
    }

    private static string Place(Terminal terminal) => GardenPath.Server(terminal.Environment) ?? GardenPath.Default(terminal.Environment);

    private static string Home(Terminal terminal) => Path.GetDirectoryName(GardenPath.Default(terminal.Environment))!;

    private static PhotoFiles Photos(Terminal terminal) => PhotoFiles.Beside(GardenPath.Default(terminal.Environment));

    private static Problem? Nothing(Terminal terminal) => GardenPath.Server(terminal.Environment) is not null || File.Exists(GardenPath.Default(terminal.Environment))
        ? null
        : new("garden", "There is no stored garden yet.", "Start ./run once and enter it there, or name its folder with ASHERY_HOME.");

    private static At Clock(Terminal terminal) => new At(terminal.Now());

    private sealed class At(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
