using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>Physical properties of water and the Debye-Hückel parameters that follow from them, 0 to 40 °C. Rows of data/solutions/water.json.</summary>
public readonly record struct WaterProperties
{
    private static readonly Lazy<Dictionary<string, double[]>> Rows = new(static () =>
    {
        var rows = new Dictionary<string, double[]>(StringComparer.Ordinal);
        foreach (var (id, coefficients) in DataRows.Read(
            "data/solutions/water.json", row => Tuple.Create(row.Text("id"), EquilibriumConstant.Numbers(row.GetProperty("coefficients")))))
        {
            rows.Add(id, coefficients);
        }

        return rows;
    });

    private WaterProperties(double celsius)
    {
        Celsius = celsius;
        var d = Rows.Value["density"];
        var t = celsius;
        Density = (d[0] + (t * (d[1] + (t * (d[2] + (t * (d[3] + (t * (d[4] + (t * d[5])))))))))) / (1 + (d[6] * t)) / 1000;
        var e = Rows.Value["permittivity"];
        Permittivity = e[0] + (t * (e[1] + (t * (e[2] + (t * e[3])))));
        var v = Rows.Value["viscosity"];
        Viscosity = v[0] * Math.Pow(10, ((v[1] * (20 - t)) - (v[2] * (t - 20) * (t - 20))) / (t + v[3]));

        // Debye length and energy in SI units: kappa1 (1/m at I = 1 mol/kg) = sqrt(2 e² N_A ρ / (ε0 ε k T)),
        // A = e² kappa1/(8 π ε0 ε k T ln 10).
        var kelvin = t + 273.15;
        var field = VacuumPermittivity * Permittivity * Boltzmann * kelvin;
        Kappa = Math.Sqrt(2 * Charge * Charge * Avogadro * Density * 1000 / field);
        A = Charge * Charge * Kappa / (8 * Math.PI * field * Math.Log(10));
    }

    /// <summary>J/(mol K).</summary>
    public static double GasConstant => Physics[4];

    /// <summary>C/mol.</summary>
    public static double Faraday => Physics[3];

    /// <summary>L a mole of charge adds to the volume of a kg of water.</summary>
    public static double EquivalentVolume => Rows.Value["equivalentVolume"][0];

    /// <summary>Å by which an anion shrinks in conductivity per charge of its own and per mean cation charge above 1.</summary>
    public static double AnionShrinking => Rows.Value["anionSize"][0];

    /// <summary>Lowering of the activity of water per mol/kg of everything dissolved.</summary>
    public static double ActivityLowering => Rows.Value["waterActivity"][0];

    public double Celsius { get; }

    /// <summary>kg/L.</summary>
    public double Density { get; }

    /// <summary>Relative permittivity.</summary>
    public double Permittivity { get; }

    /// <summary>mPa s.</summary>
    public double Viscosity { get; }

    /// <summary>Inverse Debye length at an ionic strength of 1 mol/kg, 1/m.</summary>
    public double Kappa { get; }

    /// <summary>Debye-Hückel A, (kg/mol)^½, log10.</summary>
    public double A { get; }

    /// <summary>Debye-Hückel B, (kg/mol)^½/Å: kappa per ångström.</summary>
    public double B => Kappa * 1e-10;

    internal static double Charge => Physics[0];

    internal static double Avogadro => Physics[1];

    internal static double Boltzmann => Physics[2];

    internal static double VacuumPermittivity => Physics[5];

    private static double[] Physics => Rows.Value["physics"];

    public static WaterProperties At(double celsius) => new(celsius);
}
