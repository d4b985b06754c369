using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>Properties of a material that rules ask for; a grower's own bag has them as well, by its ions and forms of nitrogen.</summary>
[Flags]
internal enum Traits
{
    None = 0,
    Nitrate = 1 << 0,
    Ammonium = 1 << 1,
    AmmoniumNitrate = 1 << 2,
    NitricAcid = 1 << 3,
    Sulfur = 1 << 4,
    Thiosulfate = 1 << 5,
    Organic = 1 << 6,
    Meal = 1 << 7,
    DryCompost = 1 << 8,
    MoistCompost = 1 << 9,
    Moist = 1 << 10,
    Soluble = 1 << 11,
    Urea = 1 << 12,
    MetalSalt = 1 << 13,
    AlkalinePhosphate = 1 << 14,
    AcidPhosphate = 1 << 15,
}

internal static class MaterialTraits
{
    /// <summary>Less of a nitrogen form than this (mass fraction) is a trace that decides nothing.</summary>
    private const double TraceOfNitrogen = 0.005;

    /// <summary>Organic material wetter than this (mass fraction) dissolves salts and ferments; air-dry meals hold 8 to 12 % (from memory).</summary>
    private const double Moist = 0.15;

    public static Traits Of(Material m)
    {
        var group = m.CompatibilityGroup;
        var traits = Traits.None;
        if (m.Ions.Contains("nitrate") || m.Nitrogen.Nitrate > TraceOfNitrogen || group is "AN" or "CAN" or "CN" or "NKN" or "ASN")
        {
            traits |= Traits.Nitrate;
        }

        if (m.Ions.Contains("ammonium") || m.Nitrogen.Ammonium > TraceOfNitrogen)
        {
            traits |= Traits.Ammonium;
        }

        // The calcium nitrate double salt holds a trace of ammonium and is no ammonium nitrate.
        if (group is "AN" or "CAN" or "ASN"
            || (group is not "CN" && !m.IsLiquid && m.Nitrogen.Nitrate > TraceOfNitrogen && m.Nitrogen.Ammonium > TraceOfNitrogen))
        {
            traits |= Traits.AmmoniumNitrate;
        }

        if (m.Ions.Contains("acid") && m.Ions.Contains("nitrate"))
        {
            traits |= Traits.NitricAcid;
        }

        if (group is "SUL" or "SCU")
        {
            traits |= Traits.Sulfur;
        }

        if (m.Ions.Contains("thiosulfate"))
        {
            traits |= Traits.Thiosulfate;
        }

        if (group is "UREA" or "SCU" || (!m.IsLiquid && group is not "ACID" && m.Nitrogen.Urea > TraceOfNitrogen))
        {
            traits |= Traits.Urea;
        }

        return traits | Organic(m) | InWater(m, group);
    }

    /// <summary>The property that a word of the data files means.</summary>
    public static Traits Parse(string word) => word switch
    {
        "nitrate" => Traits.Nitrate,
        "ammonium" => Traits.Ammonium,
        "ammoniumNitrate" => Traits.AmmoniumNitrate,
        "nitricAcid" => Traits.NitricAcid,
        "sulfur" => Traits.Sulfur,
        "thiosulfate" => Traits.Thiosulfate,
        "organic" => Traits.Organic,
        "meal" => Traits.Meal,
        "dryCompost" => Traits.DryCompost,
        "moistCompost" => Traits.MoistCompost,
        "moist" => Traits.Moist,
        "soluble" => Traits.Soluble,
        "urea" => Traits.Urea,
        "metalSalt" => Traits.MetalSalt,
        "alkalinePhosphate" => Traits.AlkalinePhosphate,
        "acidPhosphate" => Traits.AcidPhosphate,
        _ => throw DataRows.Unknown(word),
    };

    private static Traits Organic(Material m)
    {
        if (!m.IsOrganic)
        {
            return Traits.None;
        }

        var bulky = m.Kind == MaterialKind.BulkyOrganic;
        return Traits.Organic | (m.Moisture >= Moist
            ? Traits.Moist | (bulky ? Traits.MoistCompost : Traits.Meal)
            : bulky ? Traits.DryCompost : Traits.Meal);
    }

    private static Traits InWater(Material m, string group)
    {
        var traits = Traits.None;
        if (m.Dissolves || group is "MAP" or "DAP" or "CAN" or "SOP" or "KCL" or "MGS")
        {
            traits |= Traits.Soluble;
        }

        if (group is "MICRO")
        {
            traits |= Traits.MetalSalt;
        }

        if (m.Ions.Contains("phosphate"))
        {
            traits |= group is "DAP" or "DKP" ? Traits.AlkalinePhosphate : Traits.AcidPhosphate;
        }

        return traits;
    }
}
