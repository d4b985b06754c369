using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>A salt or pure acid and what a mole of it gives to the solution. Rows of data/solutions/salts.json.</summary>
/// <param name="Formula">As written on the label, <c>MgSO4·7H2O</c>.</param>
/// <param name="MolarMass">g/mol.</param>
/// <param name="Gives">Components: index and mol a mol.</param>
/// <param name="CrystalWater">mol of water a mol.</param>
public sealed record Salt(string Formula, double MolarMass, IReadOnlyList<(int Component, double Number)> Gives, double CrystalWater)
{
    private static readonly Lazy<Dictionary<string, Salt>> Rows = new(static () =>
    {
        var rows = new Dictionary<string, Salt>(StringComparer.Ordinal);
        foreach (var salt in DataRows.Read("data/solutions/salts.json", Read))
        {
            rows.Add(salt.Formula, salt);
        }

        return rows;
    });

    public static IReadOnlyCollection<Salt> All => Rows.Value.Values;

    /// <summary>
    /// The salt of this formula; a full stop or an asterisk may stand for the raised dot. A known salt with other crystal water, or without,
    /// is one too: it gives the same to the solution.
    /// </summary>
    public static bool TryFind(string formula, [NotNullWhen(true)] out Salt? salt)
    {
        var dotted = formula.Replace('.', '·').Replace('*', '·');
        if (!Rows.Value.TryGetValue(dotted, out salt))
        {
            salt = WithOtherWater(dotted);
        }

        return salt is not null;
    }

    private static Salt? WithOtherWater(string formula)
    {
        const int most = 24;
        var bare = Bare(formula);
        var water = 0;
        if (bare.Length < formula.Length)
        {
            var last = formula.AsSpan(bare.Length + 1);
            if (!last.EndsWith("H2O", StringComparison.Ordinal))
            {
                return null;
            }

            water = last.Length == 3 ? 1 : int.TryParse(last[..^3], NumberStyles.None, CultureInfo.InvariantCulture, out var moles) && moles is > 0 and <= most ? moles : -1;
        }

        foreach (var salt in All)
        {
            if (water >= 0 && Bare(salt.Formula) == bare)
            {
                return salt with { Formula = formula, MolarMass = Nutrients.Formula.Parse(formula).Value!.MolarMass, CrystalWater = water };
            }
        }

        return null;
    }

    private static string Bare(string formula) => formula.IndexOf('·', StringComparison.Ordinal) is > 0 and var dot ? formula[..dot] : formula;

    private static Salt Read(JsonElement row)
    {
        var formula = row.Text("formula");
        var gives = new List<(int, double)>();
        foreach (var part in row.GetProperty("gives").EnumerateObject())
        {
            gives.Add((Chemistry.Default.Known(part.Name), part.Value.GetDouble()));
        }

        return new(formula, Nutrients.Formula.Parse(formula).Value!.MolarMass, gives, Water(formula));
    }

    private static double Water(string formula)
    {
        var last = formula[(formula.LastIndexOf('·') + 1)..];
        return !last.EndsWith("H2O", StringComparison.Ordinal) || last.Length == formula.Length ? 0
            : last.Length == 3 ? 1
            : double.Parse(last.AsSpan(0, last.Length - 3), CultureInfo.InvariantCulture);
    }
}
