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

    /// <summary>The salt of this formula; a full stop or an asterisk may stand for the raised dot.</summary>
    public static bool TryFind(string formula, [NotNullWhen(true)] out Salt? salt) =>
        Rows.Value.TryGetValue(formula.Replace('.', '·').Replace('*', '·'), out salt);

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
