using System.Text.Json;
using Ashery.Solutions;

namespace Ashery.Tests.Solutions;

/// <summary>
/// Reference values of a general geochemical code (PHREEQC 3) with conductivity corrected for mixtures, handbook standards and measured
/// single salts; what was seen and what is from memory is said in the file.
/// </summary>
internal static class Reference
{
    private static readonly Lazy<JsonDocument> File = new(static () => JsonDocument.Parse(RepositoryFile.Read("tests/Ashery.Tests/Solutions/reference.json")));
    private static readonly Lazy<Dictionary<string, SolutionInput>> Waters = new(static () => Root.GetProperty("source_waters").EnumerateObject()
        .ToDictionary(w => w.Name, w => Water(w.Value.GetProperty("mg_per_L"))));

    public static JsonElement Root => File.Value.RootElement;

    public static IEnumerable<JsonElement> Cases => Root.GetProperty("cases").EnumerateArray();

    public static SolutionInput WaterNamed(string name) => name.StartsWith("pure", StringComparison.Ordinal) ? SolutionInput.Pure() : Waters.Value[name];

    public static Salt Salt(string words)
    {
        var formula = words.Replace(" (100 %)", "", StringComparison.Ordinal).Split(' ')[^1];
        Assert.True(Ashery.Solutions.Salt.TryFind(formula, out var salt), formula);
        return salt;
    }

    public static SolutionInput Input(JsonElement c, Air air = Air.Closed) =>
        Can(c).Input().At(c.GetProperty("temperature_C").GetDouble()).Under(air);

    public static double WaterMass(JsonElement c) => Can(c).WaterMass;

    private static Dissolving Can(JsonElement c)
    {
        var can = new Dissolving(WaterNamed(c.GetProperty("water").GetString()!));
        foreach (var salt in c.GetProperty("g_per_kg_water").EnumerateObject())
        {
            can.Add(Salt(salt.Name), salt.Value.GetDouble());
        }

        return can;
    }

    // A litre taken as a kilogram of water, chloride closing the ion balance, inorganic carbon from pH.
    private static SolutionInput Water(JsonElement mg)
    {
        double Eq(string ion, double equivalent) => mg.GetProperty(ion).GetDouble() / equivalent / 1000;
        double ca = Eq("Ca", 40.078) * 2, magnesium = Eq("Mg", 24.305) * 2, na = Eq("Na", 22.990), k = Eq("K", 39.098), sulfate = Eq("SO4", 96.056) * 2;
        var alkalinity = Eq("Alk", 50.0435);
        var water = SolutionInput.Pure().With("calcium", ca / 2).With("magnesium", magnesium / 2).With("sodium", na).With("potassium", k)
            .With("sulfate", sulfate / 2).With("chloride", ca + magnesium + na + k - sulfate - alkalinity);
        return water.With("carbonate", CarbonateFromPh.Find(water, mg.GetProperty("pH").GetDouble()).Carbonate);
    }
}
