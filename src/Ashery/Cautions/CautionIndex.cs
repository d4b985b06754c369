using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Cautions;

/// <summary>The cautions the library ships: words for every hazard and for what a grower is about to do.</summary>
public sealed class CautionIndex
{
    private static readonly Lazy<CautionIndex> Shipped = new(
        static () => new(CautionRow.Read()));

    private readonly CautionRow[] rows;
    private readonly Dictionary<string, Caution> byId;

    private CautionIndex(CautionRow[] rows)
    {
        this.rows = rows;
        byId = rows.ToDictionary(static row => row.Id, static row => new Caution(row.Id, row.Words, row.Source, row.Provenance), StringComparer.Ordinal);
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
            if (row.Always || (Touches(row.Uses, uses) && (row.Hazards.Length == 0 || row.Hazards.Any(hazards.Contains))))
            {
                ids.Add(row.Id);
            }
        }

        return ids;
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
    public static CautionRow[] Read() => ReferenceRow.Read("data/cautions/cautions.json", static row => new CautionRow(
        row.Text("id"),
        row.Text("words"),
        row.Text("source"),
        MaterialWords.Provenance(row.Text("provenance")),
        HazardsOf(row.Texts("hazards")),
        UsesOf(row.Texts("uses")),
        row.Flag("always")));

    private static Hazard[] HazardsOf(string[] words)
    {
        var hazards = new Hazard[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            hazards[i] = MaterialWords.Hazard(words[i]);
        }

        return hazards;
    }

    private static CautionUse[] UsesOf(string[] words)
    {
        var uses = new CautionUse[words.Length];
        for (var i = 0; i < words.Length; i++)
        {
            uses[i] = words[i] switch
            {
                "mixing" => CautionUse.Mixing,
                "dissolving" => CautionUse.Dissolving,
                "storing" => CautionUse.Storing,
                "feeding" => CautionUse.Feeding,
                "spraying" => CautionUse.Spraying,
                "overdose" => CautionUse.Overdose,
                _ => throw ReferenceRow.Unknown(words[i]),
            };
        }

        return uses;
    }
}
