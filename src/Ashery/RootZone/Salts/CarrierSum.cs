using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Ashery.Solutions;

namespace Ashery.RootZone.Salts;

/// <summary>
/// Sum of the conductivities of all carriers, λ = (λ° - B2 |z| √I/(1 + κa)) (1 - B1 √I/(1 + κa)²), four at a time; equation and constants are
/// those of <see cref="Conductivity"/> at 25 °C.
/// </summary>
internal sealed class CarrierSum
{
    internal const int Width = 28;

    private const int FirstAnion = 12;

    /// <summary>Species of data/solutions by place; empty places carry nothing.</summary>
    internal static readonly string[] Ids =
    [
        "H+", "Na+", "K+", "NH4+", "Mg+2", "Ca+2", "CaHCO3+", "MgHCO3+", "CaH2PO4+", "MgH2PO4+", "Fe+2", "",
        "Cl-", "NO3-", "SO4-2", "HCO3-", "H2PO4-", "HPO4-2", "KSO4-", "NH4SO4-", "NaSO4-", "Mg(SO4)2-2", "KHPO4-", "NaHPO4-", "CaPO4-", "MgPO4-", "CO3-2", "",
    ];

    private static readonly CarrierSum Shared = new();

    private readonly double[] limiting = new double[Width], charge = new double[Width], size = new double[Width], diffusion = new double[Width], shrink = new double[Width];
    private readonly double b, electrophoretic, relaxation, density, volume;

    private CarrierSum()
    {
        var water = WaterProperties.At(25);
        b = water.B;
        density = 1 / water.Density;
        volume = WaterProperties.EquivalentVolume;
        electrophoretic = WaterProperties.Charge * WaterProperties.Charge * WaterProperties.Avogadro * water.Kappa / (6 * Math.PI * water.Viscosity * 1e-3) * 1e4;
        relaxation = WaterProperties.Charge * WaterProperties.Charge * water.Kappa
            / (12 * Math.PI * WaterProperties.VacuumPermittivity * water.Permittivity * WaterProperties.Boltzmann * 298.15);
        for (var i = 0; i < Width; i++)
        {
            if (Ids[i].Length == 0)
            {
                continue;
            }

            var species = Chemistry.Default.Species.First(s => s.Id == Ids[i]);
            var z = Math.Abs(species.Charge);
            charge[i] = z;
            limiting[i] = Conductivity.Limiting(species, 25);
            size[i] = species.Mobility!.Size;
            diffusion[i] = z * species.Mobility.Diffusion25;
            shrink[i] = species.Charge < 0 ? WaterProperties.AnionShrinking * z : 0;
        }
    }

    /// <summary>mS/cm at 25 °C of concentrations in mol/kg and the root of the ionic strength.</summary>
    public static double Ec(in Carriers m, double root) => Shared.Sum(in m, root);

    private double Sum(in Carriers m, double root)
    {
        Side(in m, 0, FirstAnion, out var cations, out var cationCharge, out var cationDiffusion);
        Side(in m, FirstAnion, Width, out var anions, out var anionCharge, out var anionDiffusion);
        if (cations <= 0 || anions <= 0)
        {
            return 0;
        }

        double zp = cationCharge / cations, zm = anionCharge / anions, dp = cationDiffusion / cations, dm = anionDiffusion / anions;
        var t = dp / (dp + dm);
        var q = 1 / (((t / zp) + ((1 - t) / zm)) * (zp + zm));
        var relax = Vector256.Create(relaxation * zp * zm * q / (1 + Math.Sqrt(q)) * root);
        var drag = Vector256.Create(electrophoretic * root);
        var radius = Vector256.Create(b * root);
        var over = Vector256.Create(zp - 1);
        var sum = Vector256<double>.Zero;
        for (var i = 0; i < Width; i += Vector256<double>.Count)
        {
            var z = Vector256.Create(charge, i);
            var a = Vector256.Max(Vector256<double>.Zero, Vector256.Create(size, i) - (Vector256.Create(shrink, i) * over));
            var ka = Vector256<double>.One / (Vector256<double>.One + (radius * a));
            var lambda = (Vector256.Create(limiting, i) - (drag * z * ka)) * (Vector256<double>.One - (relax * ka * ka));
            sum += z * m[i / Vector256<double>.Count] * Vector256.Max(Vector256<double>.Zero, lambda);
        }

        var litres = density + (volume * cationCharge);
        return Vector256.Sum(sum) / (litres * litres);
    }

    private void Side(in Carriers m, int from, int to, out double amount, out double charged, out double moved)
    {
        Vector256<double> n = default, c = default, d = default;
        for (var i = from; i < to; i += Vector256<double>.Count)
        {
            var four = m[i / Vector256<double>.Count];
            n += four;
            c += four * Vector256.Create(charge, i);
            d += four * Vector256.Create(diffusion, i);
        }

        (amount, charged, moved) = (Vector256.Sum(n), Vector256.Sum(c), Vector256.Sum(d));
    }

    /// <summary>Concentrations of what carries current, mol/kg, in the order of <see cref="Ids"/>: cations 0 to 11, anions from 12.</summary>
    [InlineArray(Width / 4)]
    internal struct Carriers
    {
        private Vector256<double> first;
    }
}
