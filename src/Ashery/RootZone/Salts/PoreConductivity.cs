using System.Runtime.CompilerServices;
using Ashery.RootZone.State;
using Ashery.Solutions;

namespace Ashery.RootZone.Salts;

/// <summary>
/// EC of pore water at 25 °C, a fast form of <see cref="Conductivity"/>: the same equation and the same data (mobilities, ion sizes,
/// pairing constants of data/solutions), with ion pairs found by a few rounds of substitution instead of Newton, and their conditional constants
/// read from a table by ionic strength. Iron, manganese, zinc and copper count as iron; urea and boron carry none. A test holds it within 2 % of the full solution.
/// </summary>
public static class PoreConductivity
{
    private const int Rounds = 4;

    /// <summary>mS/cm at 25 °C of mol/L and the proton concentration 10^-pH.</summary>
    public static double At25(in Ions water, double proton)
    {
        var t = Tables.Shared;
        double no3 = water[Ion.Nitrate], cl = water[Ion.Chloride], so4T = water[Ion.Sulfate], pT = water[Ion.Phosphate];
        double nh4T = water[Ion.Ammonium], kT = water[Ion.Potassium], naT = water[Ion.Sodium], caT = water[Ion.Calcium], mgT = water[Ion.Magnesium];
        var metals = water[Ion.Iron] + water[Ion.Manganese] + water[Ion.Zinc] + water[Ion.Copper];
        var cations = nh4T + kT + naT + (2 * (caT + mgT + metals));
        var strength = 0.5 * (nh4T + kT + naT + no3 + cl + pT + (4 * (caT + mgT + so4T)));
        double so4 = 0.7 * so4T, h2po4 = pT, hpo4 = 0, hco3 = 0, nh4 = nh4T, k = kT, na = naT, ca = caT, mg = mgT;
        Row c = default;
        for (var round = 0; round < Rounds; round++)
        {
            t.At(Math.Sqrt(strength), out c);
            double hydroxyl = 1 / proton, second = c.Second * hydroxyl;
            double caHpo4 = c.CaHpo4 + (c.CaPo4 * hydroxyl), mgHpo4 = c.MgHpo4 + (c.MgPo4 * hydroxyl);
            double caHco3 = c.CaHco3 + (c.CaCo3 * hydroxyl), mgHco3 = c.MgHco3 + (c.MgCo3 * hydroxyl);
            nh4 = nh4T / (1 + (c.Nh4So4 * so4) + (c.Ammonia * hydroxyl));
            k = kT / (1 + (c.KSo4 * so4) + (c.KHpo4 * hpo4));
            na = naT / (1 + (c.NaSo4 * so4) + (c.NaHpo4 * hpo4));
            ca = caT / (1 + (c.CaSo4 * so4) + (caHpo4 * hpo4) + (c.CaH2po4 * h2po4) + (caHco3 * hco3));
            mg = mgT / (1 + (so4 * (c.MgSo4 + (c.MgSo42 * so4))) + (mgHpo4 * hpo4) + (c.MgH2po4 * h2po4) + (mgHco3 * hco3));
            so4 = so4T / (1 + (c.Nh4So4 * nh4) + (c.KSo4 * k) + (c.NaSo4 * na) + (c.CaSo4 * ca) + (mg * (c.MgSo4 + (2 * c.MgSo42 * so4))));
            h2po4 = pT / (1 + (c.CaH2po4 * ca) + (c.MgH2po4 * mg) + (second * (1 + (c.KHpo4 * k) + (c.NaHpo4 * na) + (caHpo4 * ca) + (mgHpo4 * mg))));
            hpo4 = second * h2po4;

            // Bicarbonate is what balances the charge; HPO4 in all its forms takes one more than counted, PO4 two, carbonate one.
            var third = hydroxyl * ((c.CaPo4 * ca) + (c.MgPo4 * mg));
            var secondAll = hpo4 * (1 + (c.KHpo4 * k) + (c.NaHpo4 * na) + (caHpo4 * ca) + (mgHpo4 * mg) + third);
            var hco3T = Math.Max(0, cations + proton - no3 - cl - pT - (2 * so4T) - secondAll - (nh4 * c.Ammonia * hydroxyl));
            hco3 = hco3T / (1 + (c.CaHco3 * ca) + (c.MgHco3 * mg) + (2 * hydroxyl * (c.Carbonate + (c.CaCo3 * ca) + (c.MgCo3 * mg))));
            var pairs = (c.Nh4So4 * nh4 * so4) + (c.KSo4 * k * so4) + (c.NaSo4 * na * so4) + (hco3 * ((c.CaHco3 * ca) + (c.MgHco3 * mg)))
                + (h2po4 * ((c.CaH2po4 * ca) + (c.MgH2po4 * mg))) + (hpo4 * ((c.KHpo4 * k) + (c.NaHpo4 * na) + third)) + (4 * hco3 * c.Carbonate * hydroxyl);
            strength = 0.5 * (nh4 + k + na + no3 + cl + h2po4 + hco3 + proton + pairs + (4 * (ca + mg + metals + so4 + hpo4 + (c.MgSo42 * mg * so4 * so4))));
        }

        var m = default(Carriers);
        m[0] = proton;
        m[1] = na;
        m[2] = k;
        m[3] = nh4;
        m[4] = mg;
        m[5] = ca;
        m[6] = c.CaHco3 * ca * hco3;
        m[7] = c.MgHco3 * mg * hco3;
        m[8] = c.CaH2po4 * ca * h2po4;
        m[9] = c.MgH2po4 * mg * h2po4;
        m[10] = metals;
        m[12] = cl;
        m[13] = no3;
        m[14] = so4;
        m[15] = hco3;
        m[16] = h2po4;
        m[17] = hpo4;
        m[18] = c.KSo4 * k * so4;
        m[19] = c.Nh4So4 * nh4 * so4;
        m[20] = c.NaSo4 * na * so4;
        m[21] = c.MgSo42 * mg * so4 * so4;
        m[22] = c.KHpo4 * k * hpo4;
        m[23] = c.NaHpo4 * na * hpo4;
        m[24] = c.CaPo4 * ca * hpo4 / proton;
        m[25] = c.MgPo4 * mg * hpo4 / proton;
        m[26] = c.Carbonate * hco3 / proton;
        return CarrierSum.Ec(in m, Math.Sqrt(strength));
    }

    /// <summary>Conditional constants: products of concentrations at an ionic strength, L/mol; the second dissociation of phosphate with activity of H+.</summary>
    internal struct Row
    {
        public double Nh4So4, KSo4, NaSo4, CaSo4, MgSo4, MgSo42, KHpo4, NaHpo4, CaHpo4, MgHpo4, CaH2po4, MgH2po4, CaHco3, MgHco3, Second, Ammonia, CaPo4, MgPo4, CaCo3, MgCo3, Carbonate;
    }

    /// <summary>Concentrations of what carries current, in the order of <see cref="CarrierSum.Ids"/>: cations 0 to 11, anions from 12.</summary>
    [InlineArray(CarrierSum.Width)]
    internal struct Carriers
    {
        private double first;
    }

    private sealed class Tables
    {
        // Steps of √I: linear reading between them is off by less than 0.1 %.
        private const double Finest = 1.0 / 256;

        // √I of 1 mol/kg.
        private const int Most = 257;

        private readonly Row[] rows = new Row[Most + 1];

        private Tables()
        {
            for (var i = 0; i < rows.Length; i++)
            {
                rows[i] = Conditional(i * Finest * i * Finest);
            }
        }

        public static Tables Shared { get; } = new();

        public void At(double root, out Row row)
        {
            var at = Math.Min(root * (1 / Finest), Most - 1);
            var i = (int)at;
            var part = at - i;
            ref readonly var a = ref rows[i];
            ref readonly var b = ref rows[i + 1];
            row.Nh4So4 = a.Nh4So4 + (part * (b.Nh4So4 - a.Nh4So4));
            row.KSo4 = a.KSo4 + (part * (b.KSo4 - a.KSo4));
            row.NaSo4 = a.NaSo4 + (part * (b.NaSo4 - a.NaSo4));
            row.CaSo4 = a.CaSo4 + (part * (b.CaSo4 - a.CaSo4));
            row.MgSo4 = a.MgSo4 + (part * (b.MgSo4 - a.MgSo4));
            row.MgSo42 = a.MgSo42 + (part * (b.MgSo42 - a.MgSo42));
            row.KHpo4 = a.KHpo4 + (part * (b.KHpo4 - a.KHpo4));
            row.NaHpo4 = a.NaHpo4 + (part * (b.NaHpo4 - a.NaHpo4));
            row.CaHpo4 = a.CaHpo4 + (part * (b.CaHpo4 - a.CaHpo4));
            row.MgHpo4 = a.MgHpo4 + (part * (b.MgHpo4 - a.MgHpo4));
            row.CaH2po4 = a.CaH2po4 + (part * (b.CaH2po4 - a.CaH2po4));
            row.MgH2po4 = a.MgH2po4 + (part * (b.MgH2po4 - a.MgH2po4));
            row.CaHco3 = a.CaHco3 + (part * (b.CaHco3 - a.CaHco3));
            row.MgHco3 = a.MgHco3 + (part * (b.MgHco3 - a.MgHco3));
            row.CaPo4 = a.CaPo4 + (part * (b.CaPo4 - a.CaPo4));
            row.MgPo4 = a.MgPo4 + (part * (b.MgPo4 - a.MgPo4));
            row.CaCo3 = a.CaCo3 + (part * (b.CaCo3 - a.CaCo3));
            row.MgCo3 = a.MgCo3 + (part * (b.MgCo3 - a.MgCo3));
            row.Carbonate = a.Carbonate + (part * (b.Carbonate - a.Carbonate));
            row.Ammonia = a.Ammonia + (part * (b.Ammonia - a.Ammonia));
            row.Second = a.Second + (part * (b.Second - a.Second));
        }

        private static Row Conditional(double strength)
        {
            var chemistry = Chemistry.Default;
            var water = WaterProperties.At(25);
            return new()
            {
                Nh4So4 = Pair("NH4SO4-", "NH4+", "SO4-2"),
                KSo4 = Pair("KSO4-", "K+", "SO4-2"),
                NaSo4 = Pair("NaSO4-", "Na+", "SO4-2"),
                CaSo4 = Pair("CaSO4", "Ca+2", "SO4-2"),
                MgSo4 = Pair("MgSO4", "Mg+2", "SO4-2"),
                MgSo42 = Pair("Mg(SO4)2-2", "Mg+2", "SO4-2", "SO4-2"),
                KHpo4 = Pair("KHPO4-", "K+", "HPO4-2"),
                NaHpo4 = Pair("NaHPO4-", "Na+", "HPO4-2"),
                CaHpo4 = Pair("CaHPO4", "Ca+2", "HPO4-2"),
                MgHpo4 = Pair("MgHPO4", "Mg+2", "HPO4-2"),
                CaH2po4 = Pair("CaH2PO4+", "Ca+2", "H2PO4-"),
                MgH2po4 = Pair("MgH2PO4+", "Mg+2", "H2PO4-"),
                CaHco3 = Pair("CaHCO3+", "Ca+2", "HCO3-"),
                MgHco3 = Pair("MgHCO3+", "Mg+2", "HCO3-"),
                Ammonia = Math.Exp(Log("NH3") - Gamma("NH3") + Gamma("NH4+")),
                CaPo4 = Pair("CaPO4-", "Ca+2", "HPO4-2"),
                MgPo4 = Pair("MgPO4-", "Mg+2", "HPO4-2"),
                CaCo3 = Pair("CaCO3", "Ca+2", "HCO3-"),
                MgCo3 = Pair("MgCO3", "Mg+2", "HCO3-"),
                Carbonate = Pair("CO3-2", "HCO3-"),
                Second = Math.Exp(Log("HPO4-2") - Log("H2PO4-") + Gamma("H2PO4-") - Gamma("HPO4-2")),
            };

            // ln of the constant of the pair from its parts, all at activity 1, then from activities to concentrations.
            double Pair(string pair, params ReadOnlySpan<string> parts)
            {
                var ln = Log(pair) - Gamma(pair);
                foreach (var part in parts)
                {
                    ln += Gamma(part) - Log(part);
                }

                return Math.Exp(ln);
            }

            double Log(string id) => Find(id).LogFormation(25) * Math.Log(10);
            double Gamma(string id) => ActivityCoefficient.Ln(Find(id), water, strength);
            AqueousSpecies Find(string id) => chemistry.Species.First(s => s.Id == id);
        }
    }
}
