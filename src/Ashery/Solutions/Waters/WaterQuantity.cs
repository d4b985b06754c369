using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions.Waters;

/// <summary>What a quantity of a report counts.</summary>
public enum WaterQuantityKind
{
    /// <summary>A component of the solution.</summary>
    Ion,

    /// <summary>Bases against acid, mol of charge.</summary>
    Alkalinity,

    /// <summary>Calcium and magnesium together, mol.</summary>
    Hardness,

    /// <summary>Dissolved solids, mg/L.</summary>
    Solids,
}

/// <summary>Something a laboratory reports. Rows of data/solutions/water-quantities.json.</summary>
public sealed record WaterQuantity
{
    private static readonly Lazy<IReadOnlyList<WaterQuantity>> Rows = new(static () => DataRows.Read("data/solutions/water-quantities.json", Read));

    public static IReadOnlyList<WaterQuantity> All => Rows.Value;

    /// <summary>Plain name, as <c>nitrate</c>.</summary>
    public required string Id { get; init; }

    public required WaterQuantityKind Kind { get; init; }

    /// <summary>Plain name of the component it counts; null for alkalinity, hardness and solids.</summary>
    public string? Component { get; init; }

    /// <summary>Names on reports, each with the formula it is reported as.</summary>
    public required IReadOnlyList<(string Name, string Basis)> Names { get; init; }

    /// <summary>Formulas it may be reported as, each with mol in a mol of the formula.</summary>
    public required IReadOnlyList<(string Basis, double Moles)> Bases { get; init; }

    /// <summary>Charge a mol, for meq/L; 0 where it hangs on the pH.</summary>
    public int Charge { get; init; }

    /// <summary>Degrees of hardness and mg/L CaCO3 make sense for it.</summary>
    public bool Degrees { get; init; }

    /// <summary>Symbol by which files name it: the first name.</summary>
    public string Symbol => Names[0].Name;

    /// <summary>mg a mmol in this basis; NaN when it is not reported so.</summary>
    public double MassOf(string basis)
    {
        foreach (var (formula, moles) in Bases)
        {
            if (string.Equals(formula, basis, StringComparison.OrdinalIgnoreCase))
            {
                return Formula.Parse(formula).Value!.MolarMass / moles;
            }
        }

        return double.NaN;
    }

    /// <summary>The quantity and basis behind a name of a report; null when no quantity has it.</summary>
    public static (WaterQuantity Quantity, string Basis)? Named(string name)
    {
        var (bare, suffix) = Split(name.Trim());
        foreach (var quantity in All)
        {
            foreach (var (known, basis) in quantity.Names)
            {
                if (string.Equals(known, bare, StringComparison.OrdinalIgnoreCase))
                {
                    return (quantity, suffix ?? basis);
                }
            }
        }

        return null;
    }

    // "alkalinity as CaCO3", "nitrate (as N)", "Ca2+": the name and the basis it names.
    private static (string Name, string? Basis) Split(string name)
    {
        var at = name.IndexOf(" as ", StringComparison.OrdinalIgnoreCase);
        if (at > 0)
        {
            return (name[..at].TrimEnd(' ', '(', ','), name[(at + 4)..].Trim(' ', ')'));
        }

        if (name.IndexOf('(', StringComparison.Ordinal) is > 0 and var open && name.EndsWith(')'))
        {
            var inside = name[(open + 1)..^1].Trim();
            return (name[..open].TrimEnd(), inside.StartsWith("as ", StringComparison.OrdinalIgnoreCase) ? inside[3..].Trim() : inside);
        }

        // A charge after the symbol: Ca2+, SO4 2-, Cl-.
        var bare = name.TrimEnd('+', '-', '⁺', '⁻', '²', '³');
        return bare.Length < name.Length && bare.Length > 2 && bare[^1] is '2' or '3' && Is(bare[..^1].TrimEnd())
            ? (bare[..^1].TrimEnd(), null)
            : (bare.Length < name.Length ? bare.TrimEnd() : name, null);
    }

    private static bool Is(string name)
    {
        foreach (var quantity in All)
        {
            foreach (var (known, _) in quantity.Names)
            {
                if (string.Equals(known, name, StringComparison.OrdinalIgnoreCase))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static WaterQuantity Read(JsonElement row)
    {
        var names = new List<(string, string)>();
        foreach (var name in row.GetProperty("names").EnumerateObject())
        {
            names.Add((name.Name, name.Value.GetString()!));
        }

        var bases = new List<(string, double)>();
        foreach (var basis in row.GetProperty("as").EnumerateObject())
        {
            bases.Add((basis.Name, basis.Value.GetDouble()));
        }

        return new()
        {
            Id = row.Text("id"),
            Kind = row.Text("kind") switch
            {
                "ion" => WaterQuantityKind.Ion,
                "alkalinity" => WaterQuantityKind.Alkalinity,
                "hardness" => WaterQuantityKind.Hardness,
                "solids" => WaterQuantityKind.Solids,
                var word => throw DataRows.Unknown(word),
            },
            Component = row.TextOrNull("component"),
            Names = names,
            Bases = bases,
            Charge = (int)row.Number("charge"),
            Degrees = row.Flag("degrees"),
        };
    }
}
