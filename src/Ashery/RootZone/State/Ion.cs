namespace Ashery.RootZone.State;

/// <summary>Places of the dissolved forms in <see cref="Ions"/>, with their charge. Nitrogen forms are counted in moles of nitrogen.</summary>
public static class Ion
{
    public const int Nitrate = 0;
    public const int Ammonium = 1;
    public const int Phosphate = 2;
    public const int Potassium = 3;
    public const int Calcium = 4;
    public const int Magnesium = 5;
    public const int Sulfate = 6;
    public const int Chloride = 7;
    public const int Sodium = 8;
    public const int Boron = 9;
    public const int Iron = 10;
    public const int Manganese = 11;
    public const int Zinc = 12;
    public const int Copper = 13;
    public const int Urea = 14;

    /// <summary>Places in use.</summary>
    public const int Count = 15;

    private static readonly string[] Symbols = ["NO3", "NH4", "P", "K", "Ca", "Mg", "S", "Cl", "Na", "B", "Fe", "Mn", "Zn", "Cu", "urea"];

    // g of the element (of nitrogen for its three forms) a mole: IUPAC 2021 abridged.
    private static readonly double[] Masses = [14.007, 14.007, 30.974, 39.098, 40.078, 24.305, 32.06, 35.45, 22.990, 10.81, 55.845, 54.938, 65.38, 63.546, 14.007];

    /// <summary>Short name of a place, as <c>NO3</c>, <c>K</c>, <c>urea</c>.</summary>
    public static string Symbol(int ion) => Symbols[ion];

    /// <summary>g of the element a mole; of nitrogen for nitrate, ammonium and urea.</summary>
    public static double GramsPerMole(int ion) => Masses[ion];

    /// <summary>Place of a symbol, or -1.</summary>
    public static int IndexOf(string symbol) => Array.IndexOf(Symbols, symbol);

    /// <summary>
    /// Charge of each form in the acid-base balance of the pot. Phosphate counts as H2PO4-, the reference level of alkalinity. Metals
    /// count as none: on humic sites and as hydroxides they set free as many protons as they bring charge.
    /// </summary>
    internal static Ions Charges
    {
        get
        {
            var z = default(Ions);
            z[Nitrate] = -1;
            z[Ammonium] = 1;
            z[Phosphate] = -1;
            z[Potassium] = 1;
            z[Calcium] = 2;
            z[Magnesium] = 2;
            z[Sulfate] = -2;
            z[Chloride] = -1;
            z[Sodium] = 1;
            return z;
        }
    }
}
