using System.Security.Cryptography;
using System.Text;
using Ashery.Journal;
using Ashery.Problems;
using Ashery.Records;

namespace Ashery.Web.Reminders;

/// <summary>
/// The secret part of a garden's calendar address. The journal keeps its hash alone, in one entry whose revisions tell who made, renewed or
/// ended it when: an export or a backup opens no calendar.
/// </summary>
public sealed class CalendarAddress(IJournal journal)
{
    /// <summary>The stage word of the entry.</summary>
    public const string Stage = "calendar";

    private const int SecretBytes = 20;

    // One entry a garden; the key of the garden is beside it in the table.
    private static readonly Guid Id = new("6f1c3b0e-2a57-4c0d-9a3e-0c1d5b7e9f42");

    /// <summary>When the address that holds was made; null when there is none.</summary>
    public DateTimeOffset? MadeAt => Standing is { } entry ? entry.At : null;

    private StoredEntry? Standing => journal.Find(Id) is { IsRemoved: false } entry ? entry : null;

    /// <summary>Makes a secret; one that was there before ends. It is told this once.</summary>
    public Result<string> Renew(DateOnly today)
    {
        var secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
        var document = new KeptDocument(Stage, "Calendar address", $"{{\"sha256\":\"{Hash(secret)}\"}}");
        var entry = new Entry { Id = Id, Day = today, Facts = document };
        return journal.Write([new EntryChange(Id, journal.Find(Id)?.Revision ?? 0, entry)]) is JournalOutcome.Written
            ? Result.Of(secret)
            : Result.Fail<string>("address", "Somebody else made an address at the same moment.", "Make another one.");
    }

    /// <summary>Ends the address.</summary>
    public void End()
    {
        if (Standing is { } entry)
        {
            journal.Write([new EntryChange(Id, entry.Revision, null)]);
        }
    }

    /// <summary>True for the secret that holds.</summary>
    public bool Opens(string secret) => Standing?.Entry.Facts is KeptDocument { Stage: Stage } kept
        && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(kept.Json), Encoding.UTF8.GetBytes($"{{\"sha256\":\"{Hash(secret)}\"}}"));

    private static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
