namespace Ashery.Solutions;

/// <summary>
/// The equations of one set of components at one temperature, laid out in arrays for the solver. Unknowns are the logarithms of the
/// activity of H+ (first) and of each component that reacts; a component that forms nothing with any other stays free.
/// Open to the air, carbonate has the activity the air gives it and its amount is an answer, not a question.
/// </summary>
public sealed class AqueousSystem
{
    /// <summary>mol of one molecule (SI brochure, 2019: the Avogadro constant). Less than that in a kilogram of water is none, and its products would underflow.</summary>
    public const double OneMolecule = 1 / 6.02214076e23;

    internal const int MostParts = 4;

    private AqueousSystem(Chemistry chemistry, double celsius, Air air)
    {
        Chemistry = chemistry;
        Celsius = celsius;
        Air = air;
        Water = WaterProperties.At(celsius);
    }

    public Chemistry Chemistry { get; }

    public double Celsius { get; }

    public Air Air { get; }

    public WaterProperties Water { get; }

    /// <summary>Number of unknown activities, H+ among them.</summary>
    public int Unknowns { get; private init; }

    /// <summary>The reacting species, H+ first.</summary>
    public IReadOnlyList<AqueousSpecies> Species { get; private init; } = [];

    /// <summary>Component of each unknown; -1 for H+.</summary>
    internal int[] ComponentOf { get; private init; } = [];

    /// <summary>Components present that react with nothing.</summary>
    internal int[] Inert { get; private init; } = [];

    internal int Carbonate { get; private init; } = -1;

    // By species, padded to a whole number of vectors.
    internal double[] LogK { get; private init; } = [];

    internal double[] Charge { get; private init; } = [];

    internal double[] Shield { get; private init; } = [];

    internal double[] Size { get; private init; } = [];

    internal double[] Linear { get; private init; } = [];

    internal double[] HalfChargeSquared { get; private init; } = [];

    // Numbers of the unknowns in the species: by species, Width entries each, and by unknown, one entry a species.
    internal int Width { get; private init; }

    internal double[] Rows { get; private init; } = [];

    internal double[] Columns { get; private init; } = [];

    internal PairTerms Pairs { get; private set; } = PairTerms.None;

    // MostParts entries a species; unused ones point to unknown 0 with number 0.
    internal int[] PartIndex { get; private init; } = [];

    internal double[] PartNumber { get; private init; } = [];

    internal int[] PartCount { get; private init; } = [];

    /// <summary>Lays out the equations for the components that are present.</summary>
    public static AqueousSystem For(Chemistry chemistry, ReadOnlySpan<double> totals, double celsius, Air air)
    {
        var carbonate = chemistry.Known("carbonate");
        var open = air == Air.Open;
        var present = new bool[chemistry.Components.Count];
        for (var c = 0; c < present.Length; c++)
        {
            present[c] = totals[c] >= OneMolecule || (open && c == carbonate);
        }

        var species = new List<AqueousSpecies>();
        var reacts = new bool[present.Length];
        foreach (var s in chemistry.Species)
        {
            if (!AllPresent(s, present))
            {
                continue;
            }

            species.Add(s);
            if (s.Formation.Count > 0)
            {
                foreach (var (component, _) in s.Parts)
                {
                    reacts[component] = true;
                }
            }
        }

        species.RemoveAll(s => s.Parts.Count == 1 && !reacts[s.Parts[0].Component]);
        var unknownOf = new int[present.Length];
        var componentOf = new List<int> { -1 };
        var inert = new List<int>();
        for (var c = 0; c < present.Length; c++)
        {
            unknownOf[c] = -1;
            if (present[c] && !reacts[c])
            {
                inert.Add(c);
            }
            else if (present[c] && !(open && c == carbonate))
            {
                unknownOf[c] = componentOf.Count;
                componentOf.Add(c);
            }
        }

        var padded = (species.Count + 7) / 8 * 8;
        var width = (componentOf.Count + 7) / 8 * 8;
        var system = new AqueousSystem(chemistry, celsius, air)
        {
            Unknowns = componentOf.Count,
            Species = species,
            ComponentOf = [.. componentOf],
            Inert = [.. inert],
            Carbonate = open ? carbonate : -1,
            LogK = new double[padded],
            Charge = new double[padded],
            Shield = new double[padded],
            Size = new double[padded],
            Linear = new double[padded],
            HalfChargeSquared = new double[padded],
            Width = width,
            Rows = new double[padded * width],
            Columns = new double[padded * componentOf.Count],
            PartIndex = new int[padded * MostParts],
            PartNumber = new double[padded * MostParts],
            PartCount = new int[padded],
        };
        system.LogK.AsSpan(species.Count).Fill(double.NegativeInfinity);

        // Ln a(CO3-2) = ln(K_H p) - ln K(CO2) - 2 ln a(H+), from CO3-2 + 2 H+ = CO2 + H2O.
        var carbonDioxide = species.Find(s => s.Id == "CO2");
        var fixedCarbonate = open
            ? Math.Log(10) * (chemistry.CarbonDioxide.At(celsius) + chemistry.LogCarbonDioxideInAir - carbonDioxide!.LogFormation(celsius))
            : 0;
        for (var i = 0; i < species.Count; i++)
        {
            system.Lay(i, species[i], unknownOf, fixedCarbonate);
        }

        system.Pairs = PairTerms.Of(system);
        return system;
    }

    private static bool AllPresent(AqueousSpecies s, bool[] present)
    {
        foreach (var (component, _) in s.Parts)
        {
            if (!present[component])
            {
                return false;
            }
        }

        return true;
    }

    private void Lay(int i, AqueousSpecies s, int[] unknownOf, double fixedCarbonate)
    {
        var ln10 = Math.Log(10);
        LogK[i] = s.LogFormation(Celsius) * ln10;
        Charge[i] = s.Charge;
        HalfChargeSquared[i] = 0.5 * s.Charge * s.Charge;

        // Ln g = -shield sqrt(I)/(1 + size sqrt(I)) + linear I; Davies' equation is the same with size 1 and linear 0.3 A z².
        Shield[i] = Water.A * s.Charge * s.Charge * ln10;
        Size[i] = s.Charge == 0 ? 0 : s.Size is { } size ? Water.B * size : 1;
        Linear[i] = s.ByDavies ? s.Linear * Shield[i] : s.Linear * ln10;
        var protons = s.Protons;
        var at = i * MostParts;
        foreach (var (component, number) in s.Parts)
        {
            if (component == Carbonate)
            {
                LogK[i] += number * fixedCarbonate;
                protons -= 2 * number;
                continue;
            }

            PartIndex[at] = unknownOf[component];
            PartNumber[at++] = number;
        }

        if (protons != 0)
        {
            PartIndex[at] = 0;
            PartNumber[at++] = protons;
        }

        PartCount[i] = at - (i * MostParts);
        for (var a = i * MostParts; a < at; a++)
        {
            Rows[(i * Width) + PartIndex[a]] += PartNumber[a];
            Columns[(PartIndex[a] * LogK.Length) + i] += PartNumber[a];
        }
    }
}

/// <summary>Whether carbon dioxide can come and go.</summary>
public enum Air
{
    /// <summary>A full, closed bottle or a can just mixed.</summary>
    Closed,

    /// <summary>In balance with the carbon dioxide of the air.</summary>
    Open,
}
