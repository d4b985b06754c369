using System.Text.Json;
using Ashery.Solutions.Can;
using Ashery.Sources;

namespace Ashery.Solutions.Tanks;

/// <summary>Two kinds of material that never share a tank. Rows of data/tanks/apart.json.</summary>
public sealed record ApartRule(string A, string B, string Reason, string WayOut, string SourceId, Provenance Provenance)
{
    // Alkalinity a gram of a salt takes (mol); less than this is the acidity of an ordinary phosphate.
    private const double Acidic = 1e-4;

    private static readonly Lazy<List<ApartRule>> Rows = new(static () => DataRows.Read("data/tanks/apart.json", Read));

    /// <summary>The rule that keeps two materials apart, or null.</summary>
    public static ApartRule? Between(MaterialInWater one, MaterialInWater other)
    {
        foreach (var rule in Rows.Value)
        {
            if ((Is(one, rule.A) && Is(other, rule.B)) || (Is(one, rule.B) && Is(other, rule.A)))
            {
                return rule;
            }
        }

        return null;
    }

    /// <summary>True for what takes alkalinity from a water: every acid, and salts made with one such as urea phosphate.</summary>
    public static bool IsAcid(MaterialInWater material)
    {
        var alkalinity = 0.0;
        foreach (var (component, moles) in material.Gives)
        {
            var c = Chemistry.Default.Components[component];
            alkalinity += (c.AlkalinityProtons + c.Charge) * moles;
        }

        return alkalinity < -Acidic;
    }

    /// <summary>True for a chelate of iron, manganese, zinc or copper.</summary>
    public static bool IsChelate(MaterialInWater material) => material.Material?.Ions.Contains("chelate") == true
        || material.Gives.Any(static g => Chemistry.Default.Components[g.Component].Name is var name
            && (name.EndsWith("EDTA", StringComparison.Ordinal) || name.EndsWith("DTPA", StringComparison.Ordinal) || name.EndsWith("EDDHA", StringComparison.Ordinal)));

    private static bool Is(MaterialInWater material, string kind) => kind switch
    {
        "acid" => IsAcid(material),
        "phosphoric" => IsAcid(material) && Gives(material, "phosphate"),
        "chelate" => IsChelate(material),
        "carbonate" or "calcium" or "thiosulfate" => Gives(material, kind),
        _ => throw DataRows.Unknown(kind),
    };

    internal static bool Gives(MaterialInWater material, string component)
    {
        var index = Chemistry.Default.Known(component);
        foreach (var (given, moles) in material.Gives)
        {
            if (given == index && moles > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static ApartRule Read(JsonElement row) => new(
        row.Text("a"), row.Text("b"), row.Text("reason"), row.Text("wayOut"), row.Text("source"), row.Provenance());
}
