using Ashery.Solutions.Can;
using Ashery.Sources;

namespace Ashery.Solutions.Foliar;

/// <summary>Each salt of a spray against what is printed for it.</summary>
internal static class SpraySalts
{
    // Above four fifths of a limit it is worth a word.
    public const double Near = 0.8;

    public static IReadOnlyList<SprayFinding> Judge(SprayRequest request)
    {
        var rows = SprayLimit.For(request.Crop, request.Rules);
        var findings = new List<SprayFinding>();
        var judged = new HashSet<string>(StringComparer.Ordinal);
        foreach (var group in rows.GroupBy(static row => row.Name, StringComparer.Ordinal))
        {
            if (Salt(request, [.. group], judged) is { } finding)
            {
                findings.Add(finding);
            }
        }

        foreach (var (material, grams) in request.Additions)
        {
            if (!judged.Contains(material.Id))
            {
                findings.Add(new(
                    material.Name, SprayLevel.Mind, grams, null, "g/L",
                    "No published strength of it for leaves is known here; only the spray as a whole is judged. Begin with 1 g/L on one leaf.", null, Provenance.FromMemory));
            }
        }

        return findings;
    }

    // All grades of a salt together, against the limit printed for the crop, else the general one.
    private static SprayFinding? Salt(SprayRequest request, IReadOnlyList<SprayLimit> rows, HashSet<string> judged)
    {
        var limit = rows.FirstOrDefault(static r => r.Kind is SprayLimitKind.Most or SprayLimitKind.None && r.Crops.Count > 0)
            ?? rows.FirstOrDefault(static r => r.Kind is SprayLimitKind.Most or SprayLimitKind.None);
        var grams = 0.0;
        foreach (var addition in request.Additions)
        {
            var share = rows[0].Share(addition.Material);
            if (share > 0)
            {
                grams += addition.Grams * share;
                judged.Add(addition.Material.Id);
            }
        }

        if (grams <= 0)
        {
            return null;
        }

        IReadOnlyList<SprayLimit> beside = [.. rows.Where(r => r != limit)];
        if (limit is null)
        {
            return new(rows[0].Name, SprayLevel.Mind, grams, null, "g/L", "Its limit is switched off in the rules.", null, Provenance.FromMemory) { Beside = beside };
        }

        if (limit.Kind == SprayLimitKind.None)
        {
            return new(limit.Name, SprayLevel.Over, grams, null, "g/L", "Not on leaves. " + limit.Words, limit.SourceId, limit.Provenance) { Beside = beside };
        }

        var burns = rows.FirstOrDefault(r => r.Kind == SprayLimitKind.Burns && grams >= r.GramsPerLitre);
        var level = grams > limit.GramsPerLitre * (1 + 1e-9) ? SprayLevel.Over : grams > limit.GramsPerLitre * Near ? SprayLevel.Mind : SprayLevel.Fine;
        return new(limit.Name, level, grams, limit.GramsPerLitre, "g/L", burns is null ? limit.Words : burns.Words, limit.SourceId, limit.Provenance) { Beside = beside };
    }
}
