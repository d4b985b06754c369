using System.Text.Json;
using Ashery.Crops;
using Ashery.Sources;

namespace Ashery.Clinic.Knowledge;

/// <summary>Crops by what they are prone to.</summary>
internal sealed class CropGroups
{
    private readonly IReadOnlyList<GroupRow> groups;
    private readonly IReadOnlyList<ProneRow> prone;

    private CropGroups(IReadOnlyList<GroupRow> groups, IReadOnlyList<ProneRow> prone) => (this.groups, this.prone) = (groups, prone);

    public static CropGroups Shipped => new(
        DataRows.Read("data/clinic/crop-groups.json", GroupRow.Read), DataRows.Read("data/clinic/susceptibility.json", ProneRow.Read));

    public CropGroups Without(string sourceId) => new(groups, [.. prone.Where(r => r.SourceId != sourceId)]);

    /// <summary>Groups of a crop of the catalogue, or of one in a grower's words.</summary>
    public IReadOnlyList<string> Of(string? cropId, string? words)
    {
        var text = (words ?? string.Empty).ToLowerInvariant();
        var found = new List<string>();
        foreach (var group in groups)
        {
            if ((cropId is not null && group.Crops.Contains(cropId, StringComparer.Ordinal)) || (text.Length > 0 && HasWord(text, group.Words)))
            {
                found.Add(group.Id);
            }
        }

        return found;
    }

    /// <summary>The crop of the catalogue that a grower's words name: its key, its name or a word of it; null for none.</summary>
    public static Crop? Find(string? words)
    {
        if (string.IsNullOrWhiteSpace(words))
        {
            return null;
        }

        var text = words.ToLowerInvariant();
        Crop? best = null;
        var length = 0;
        foreach (var crop in CropCatalogue.Default.All)
        {
            foreach (var name in (ReadOnlySpan<string?>)[crop.Id, crop.Name, crop.Latin, crop.Id.Replace('-', ' ')])
            {
                if (name is { Length: > 0 } && name.Length > length && Words.Phrases.Has(text, name.ToLowerInvariant()))
                {
                    (best, length) = (crop, name.Length);
                }
            }
        }

        return best;
    }

    /// <summary>By how much the odds of a cause are multiplied for plants of these groups.</summary>
    public double Times(string causeId, IReadOnlyList<string> of, bool cropKnown)
    {
        var times = 1.0;
        foreach (var row in prone)
        {
            if (row.CauseId != causeId)
            {
                continue;
            }

            if (row.OnlyGroup is { } only)
            {
                times *= of.Contains(only) ? 1 : cropKnown ? row.Times : row.TimesUnknown;
            }
            else if (of.Contains(row.Group!))
            {
                times *= row.Times;
            }
        }

        return times;
    }

    /// <summary>Whose knowledge the factor is.</summary>
    public Voice? VoiceOf(string causeId, IReadOnlyList<string> of)
    {
        foreach (var row in prone)
        {
            if (row.CauseId == causeId && row.Group is { } group && of.Contains(group))
            {
                return new(row.SourceId, row.Provenance);
            }
        }

        return null;
    }

    private static bool HasWord(string text, string[] words)
    {
        foreach (var word in words)
        {
            if (Words.Phrases.Has(text, word))
            {
                return true;
            }
        }

        return false;
    }

    private sealed record GroupRow(string Id, string[] Words, string[] Crops)
    {
        public static GroupRow Read(JsonElement row) => new(row.Text("id"), row.Texts("words"), row.Texts("crops"));
    }

    private sealed record ProneRow(string? Group, string? OnlyGroup, string CauseId, double Times, double TimesUnknown, string SourceId, Provenance Provenance)
    {
        public static ProneRow Read(JsonElement row) => new(
            row.TextOrNull("group"), row.TextOrNull("onlyGroup"), row.Text("cause"), row.Number("times"),
            row.TryGetProperty("timesUnknown", out var unknown) ? unknown.GetDouble() : 1, row.Text("source"), row.Provenance());
    }
}
