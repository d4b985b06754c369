using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>
/// How strong a stock of two materials may be. Two rules, both on the safe side: the grams of each over its own solubility add up
/// to at most 1 (for salts with a common ion and constant activity the true bound lies above that line), and no salt that could
/// form across the two may pass its solubility if all of its scarcer ion went into it.
/// </summary>
internal sealed class StockStrength
{
    /// <summary>g in 1 kg of water at 20 °C below which a salt limits a usual concentrate of 100 to 300 g/L.</summary>
    public const double LimitsAConcentrate = 400;

    private readonly List<SaltRow> salts = DataRows.Read("data/compatibility/salts.json", SaltRow.Read);

    /// <summary>The bound for equal weights of the two, or null where no solubility is known.</summary>
    public Strength? Of(Material a, Material b)
    {
        var (ownA, ownB) = (Own(a), Own(b));
        var least = Math.Min(ownA?.At20 ?? double.MaxValue, ownB?.At20 ?? double.MaxValue);
        var name = least == double.MaxValue ? null : (ownA?.At20 ?? double.MaxValue) <= (ownB?.At20 ?? double.MaxValue) ? ownA!.Name : ownB!.Name;
        var at10 = Half(ownA?.At10, ownB?.At10);
        var at20 = Half(ownA?.At20, ownB?.At20);
        foreach (var salt in salts)
        {
            var (cationsA, anionsA) = (a.Ions.Contains(salt.Cation), a.Ions.Contains(salt.Anion));
            var (cationsB, anionsB) = (b.Ions.Contains(salt.Cation), b.Ions.Contains(salt.Anion));
            if (!((cationsA && anionsB) || (cationsB && anionsA)))
            {
                continue;
            }

            // g of this salt for 1 g of the mix, if all of its scarcer ion went into it.
            var moles = Math.Min(
                (Moles(a, salt.Cation) + Moles(b, salt.Cation)) / 2 / salt.Cations,
                (Moles(a, salt.Anion) + Moles(b, salt.Anion)) / 2 / salt.Anions);
            var grams = moles * salt.MolarMass;
            if (grams <= 0)
            {
                continue;
            }

            if (salt.At20 < least)
            {
                (least, name) = (salt.At20, salt.Name);
            }

            at10 = Math.Min(at10, salt.At10 / grams);
            at20 = Math.Min(at20, salt.At20 / grams);
        }

        return name is null ? null : new Strength(name, least, at10, at20, ownA?.At20, ownB?.At20);
    }

    private static double Half(double? a, double? b) => (a, b) switch
    {
        (null, null) => double.MaxValue,
        ({ } x, null) => 2 * x,
        (null, { } y) => 2 * y,
        ({ } x, { } y) => 1 / ((0.5 / x) + (0.5 / y)),
    };

    private OwnSalt? Own(Material m)
    {
        SaltRow? main = null;
        foreach (var salt in salts)
        {
            if (m.Ions.Contains(salt.Cation) && m.Ions.Contains(salt.Anion) && (main is null || Held(m, salt) > Held(m, main)))
            {
                main = salt;
            }
        }

        // Di-ammonium phosphate holds the ions of the mono salt and is far more soluble: its own figure below is the right one.
        if (main is not null && m.CompatibilityGroup is not ("DAP" or "DKP"))
        {
            return new(main.Name, main.At10, main.At20);
        }

        var pure = m.Solubility.Count > 0 ? m : m.TechnicalGrade is { } grade ? MaterialCatalogue.Default.Find(grade) : null;
        return pure is not null && At(pure, 20) is { } at20 ? new(m.Name, At(pure, 10) ?? at20, at20) : null;
    }

    private static double Held(Material m, SaltRow salt) =>
        salt.MolarMass * Math.Min(Moles(m, salt.Cation) / salt.Cations, Moles(m, salt.Anion) / salt.Anions);

    /// <summary>g in 1 kg of water at a temperature, between the nearest published points; the nearest point outside them.</summary>
    private static double? At(Material m, double celsius)
    {
        var points = m.Solubility;
        if (points.Count == 0)
        {
            return null;
        }

        for (var i = 1; i < points.Count; i++)
        {
            var (lower, upper) = (points[i - 1], points[i]);
            if (celsius >= lower.Celsius && celsius <= upper.Celsius)
            {
                var t = (celsius - lower.Celsius) / (upper.Celsius - lower.Celsius);
                return lower.GramsPerKgWater + (t * (upper.GramsPerKgWater - lower.GramsPerKgWater));
            }
        }

        return celsius < points[0].Celsius ? points[0].GramsPerKgWater : points[^1].GramsPerKgWater;
    }

    /// <summary>mol of an ion in 1 g, from the label. Molar masses: IUPAC 2021 abridged.</summary>
    private static double Moles(Material m, string ion) => !m.Ions.Contains(ion) ? 0 : ion switch
    {
        "ammonium" => m.Nitrogen.Ammonium / 14.007,
        "nitrate" => m.Nitrogen.Nitrate / 14.007,
        "potassium" => m.Label[Nutrient.K] * 2 / 94.195,
        "phosphate" => m.Label[Nutrient.P] * 2 / 141.943,
        "sulfate" => m.Label[Nutrient.S] / 32.06,
        "chloride" => m.Label[Nutrient.Cl] / 35.45,
        _ => 0,
    };

    private sealed record OwnSalt(string Name, double At10, double At20);
}

/// <summary>Bound of a stock of two materials in equal weights.</summary>
/// <param name="Salt">The salt that comes out first.</param>
/// <param name="SaltSolubility">Its solubility at 20 °C, g in 1 kg of water.</param>
/// <param name="At10">g of both together in 1 kg of water at 10 °C.</param>
/// <param name="At20">The same at 20 °C.</param>
/// <param name="A">Solubility of the first alone at 20 °C; null when unknown.</param>
/// <param name="B">Solubility of the second alone at 20 °C; null when unknown.</param>
internal sealed record Strength(string Salt, double SaltSolubility, double At10, double At20, double? A, double? B)
{
    public string Words
    {
        get
        {
            var words = FormattableString.Invariant($"half and half at most {Math.Floor(At20)} g together in 1 L of water at 20 °C, {Math.Floor(At10)} g at 10 °C; {Salt} comes out first ({Math.Round(SaltSolubility, 1)} g/L alone at 20 °C)");
            return A is { } a && B is { } b
                ? words + FormattableString.Invariant($"; in other proportions keep g/{Math.Floor(a)} + g/{Math.Floor(b)} below 1")
                : words;
        }
    }
}
