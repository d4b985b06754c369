using System.Text.Json;
using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Cautions;

/// <summary>The cautions the library ships: words for every hazard and for what a grower is about to do.</summary>
public sealed class CautionIndex
{
    private static readonly Lazy<CautionIndex> Shipped = new(
        static () => new(DataRows.Read("data/cautions/cautions.json", CautionRow.Read)));

    private readonly List<CautionRow> rows;
    private readonly Dictionary<string, Caution> byId;

    private CautionIndex(List<CautionRow> rows)
    {
        this.rows = rows;
        byId = new(rows.Count, StringComparer.Ordinal);
        foreach (var row in rows)
        {
            byId.Add(row.Id, new Caution(row.Id, row.Words, row.Source, row.Provenance));
        }
    }

    /// <summary>The cautions of <c>data/cautions</c>, read at first use.</summary>
    public static CautionIndex Default => Shipped.Value;

    /// <summary>In the order they are to be shown.</summary>
    public IReadOnlyList<Caution> All => [.. rows.Select(row => byId[row.Id])];

    /// <summary>The caution of this id, or null.</summary>
    public Caution? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>
    /// Ids of the cautions for handling <paramref name="materials"/> in these ways, in the order they are to be shown.
    /// A caution for a hazard is given when a material has the hazard and the use is one in which it matters;
    /// one without a hazard goes with the use alone.
    /// </summary>
    public IReadOnlyList<string> CautionsFor(IEnumerable<Material> materials, params ReadOnlySpan<CautionUse> uses)
    {
        var hazards = new HashSet<Hazard>();
        foreach (var material in materials)
        {
            hazards.UnionWith(material.Hazards);
        }

        var ids = new List<string>();
        foreach (var row in rows)
        {
            if (row.Always || (Touches(row.Uses, uses) && (row.Hazards.Length == 0 || HasOne(row.Hazards, hazards))))
            {
                ids.Add(row.Id);
            }
        }

        return ids;
    }

    private static bool HasOne(Hazard[] some, HashSet<Hazard> hazards)
    {
        foreach (var hazard in some)
        {
            if (hazards.Contains(hazard))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Touches(CautionUse[] some, ReadOnlySpan<CautionUse> others)
    {
        foreach (var use in some)
        {
            if (others.Contains(use))
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>What a grower is about to do.</summary>
public enum CautionUse
{
    /// <summary>Weighing and mixing dry.</summary>
    Mixing,

    /// <summary>Dissolving in a can or tank.</summary>
    Dissolving,

    /// <summary>Keeping a bag or a mix.</summary>
    Storing,

    /// <summary>Giving feed to the medium, dry or by the can.</summary>
    Feeding,

    /// <summary>Spraying leaves.</summary>
    Spraying,

    /// <summary>First aid when too much was given.</summary>
    Overdose,
}

internal sealed record CautionRow(string Id, string Words, string Source, Provenance Provenance, Hazard[] Hazards, CautionUse[] Uses, bool Always)
{
    public static CautionRow Read(JsonElement row)
    {
        var hazards = row.Texts("hazards");
        var uses = row.Texts("uses");
        var caution = new CautionRow(
            row.Text("id"), row.Text("words"), row.Text("source"), row.Provenance(), new Hazard[hazards.Length], new CautionUse[uses.Length], row.Flag("always"));
        for (var i = 0; i < hazards.Length; i++)
        {
            caution.Hazards[i] = MaterialWords.Hazard(hazards[i]);
        }

        for (var i = 0; i < uses.Length; i++)
        {
            caution.Uses[i] = Use(uses[i]);
        }

        return caution;
    }

    private static CautionUse Use(string word) => word switch
    {
        "mixing" => CautionUse.Mixing,
        "dissolving" => CautionUse.Dissolving,
        "storing" => CautionUse.Storing,
        "feeding" => CautionUse.Feeding,
        "spraying" => CautionUse.Spraying,
        "overdose" => CautionUse.Overdose,
        _ => throw DataRows.Unknown(word),
    };
}
