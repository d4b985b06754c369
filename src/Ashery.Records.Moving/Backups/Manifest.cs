using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ashery.Records.Moving.Backups;

/// <summary>What a backup says of itself, in <c>manifest.json</c> (schema: docs/schemas/backup.schema.json).</summary>
internal sealed record Manifest
{
    public const string Name = "manifest.json", ThisFormat = "ashery-backup/1";

    public required string Format { get; init; }

    /// <summary>When it was made.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>Hash of all rows (docs/records.md).</summary>
    public required string ContentHash { get; init; }

    /// <summary>Newest migration of each set of tables when it was made: the content hash is of tables of that shape.</summary>
    public required IReadOnlyList<string> Schema { get; init; }

    public required IReadOnlyList<ManifestFile> Files { get; init; }
}

/// <summary>A file of the backup.</summary>
/// <param name="Path">Inside the backup.</param>
/// <param name="Sha256">Of its bytes, 64 hexadecimal signs.</param>
/// <param name="Length">Bytes.</param>
internal sealed record ManifestFile(string Path, string Sha256, long Length);

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(Manifest))]
internal sealed partial class ManifestJson : JsonSerializerContext;
