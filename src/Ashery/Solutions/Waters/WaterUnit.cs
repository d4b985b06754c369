using System.Text;
using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>What a unit of a water report counts.</summary>
public enum WaterUnitKind
{
    /// <summary>mg/L.</summary>
    Mass,

    /// <summary>mmol/L.</summary>
    Molar,

    /// <summary>meq/L.</summary>
    Charge,

    /// <summary>mg/L of calcium carbonate: the degrees of hardness.</summary>
    CalciumCarbonate,
}

/// <summary>A unit of a water report. Rows of data/solutions/water-units.json.</summary>
/// <param name="Id">As it is written here.</param>
/// <param name="Kind">What it counts.</param>
/// <param name="Factor">How much of what it counts is in one.</param>
/// <param name="Names">Other ways to write it, lower case without blanks.</param>
public sealed record WaterUnit(string Id, WaterUnitKind Kind, double Factor, IReadOnlyList<string> Names)
{
    private static readonly Lazy<IReadOnlyList<WaterUnit>> Rows = new(static () => DataRows.Read("data/solutions/water-units.json", Read));

    public static IReadOnlyList<WaterUnit> All => Rows.Value;

    /// <summary>
    /// The unit of a text and the basis it names: <c>mg/L as CaCO3</c>, <c>mg N/L</c>, <c>°dH</c>. Null when it is no unit of a water report.
    /// </summary>
    public static (WaterUnit Unit, string? Basis)? Named(string text)
    {
        var trimmed = text.Trim();
        if (Plain(trimmed) is { } plain)
        {
            return (plain, null);
        }

        // mg N/L, mg CaCO3/L
        var blank = trimmed.IndexOf(' ', StringComparison.Ordinal);
        var slash = trimmed.LastIndexOf('/');
        if (blank > 0 && slash > blank && Plain(trimmed[..blank] + trimmed[slash..]) is { } split)
        {
            return (split, Basis(trimmed[(blank + 1)..slash]));
        }

        for (var at = blank; at > 0; at = trimmed.IndexOf(' ', at + 1))
        {
            if (Plain(trimmed[..at]) is { } unit && Basis(trimmed[(at + 1)..]) is { Length: > 0 } basis)
            {
                return (unit, basis);
            }
        }

        return null;
    }

    private static string Basis(string text)
    {
        var basis = text.Trim(' ', '(', ')');
        return (basis.StartsWith("as ", StringComparison.OrdinalIgnoreCase) ? basis[3..] : basis).Trim(' ', '(', ')');
    }

    private static WaterUnit? Plain(string text)
    {
        var key = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            if (c is not (' ' or '.' or '°' or 'º'))
            {
                key.Append(c is 'µ' or 'μ' ? 'u' : char.ToLowerInvariant(c));
            }
        }

        var plain = key.ToString();
        foreach (var unit in All)
        {
            foreach (var name in unit.Names)
            {
                if (name == plain)
                {
                    return unit;
                }
            }
        }

        return null;
    }

    private static WaterUnit Read(JsonElement row) => new(
        row.Text("id"),
        row.Text("kind") switch
        {
            "mass" => WaterUnitKind.Mass,
            "molar" => WaterUnitKind.Molar,
            "charge" => WaterUnitKind.Charge,
            "calciumCarbonate" => WaterUnitKind.CalciumCarbonate,
            var word => throw DataRows.Unknown(word),
        },
        row.Number("factor"),
        row.Texts("names"));
}
