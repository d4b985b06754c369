using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>The state of a pot on its first morning.</summary>
internal static class StartPools
{
    // Starter salts in the pore water for each mS/cm, mol/L: about 10 meq/L of anions, as nitrate, sulfate, phosphate and chloride of
    // a usual starter charge (assumption); cations follow from the exchange.
    private const double Nitrate = 5e-3, Sulfate = 1.5e-3, Phosphate = 1e-3, Chloride = 1e-3, CalciumCarbonate = 100.087;

    // Traces of a fresh mix, mol/L of medium: a few mg (assumption), mostly held.
    private const double Boron = 2e-5, Metals = 2e-4, Copper = 2e-5;

    public static PotPools Of(PotScenario scenario, PotParameters p)
    {
        var (start, medium) = (scenario.Start, scenario.Medium);
        var pH = start.PH ?? medium.StartPh.Value;
        var s = new PotPools
        {
            Water = Math.Clamp(start.WaterShare, 0.3, 1) * p.Capacity,
            PH = pH,
            Proton = Math.Pow(10, -pH),
            Exchange = Math.Sqrt(p.Litres),
            LimeCalcium = (start.LimeGramsPerLitre ?? medium.Lime.Value) * p.Litres / CalciumCarbonate,
            Canopy = Math.Min(scenario.Plant.CanopyStart, p.CanopyMost),
            DaysDry = 1,
        };
        s.Biomass = s.Canopy * p.CanopyMass;
        Salts(ref s, p, start.SolutionStrength, medium);
        for (var i = 0; i < Ions.Width; i++)
        {
            s.InPlant[i] = p.Wanted[i] * s.Biomass;
        }

        s.InPlant[Ion.Nitrate] = p.NitrogenWanted * s.Biomass;
        Settle(ref s, p);
        return s;
    }

    /// <summary>Pore water and EC of pools that were put together.</summary>
    public static void Settle(ref PotPools s, PotParameters p)
    {
        RootZone.Salts.Exchange.Equilibrate(ref s, p);
        s.PoreEc = RootZone.Salts.PoreConductivity.At25(in s.Solution, s.Proton, ref s.Pairs);
        s.ExtractEc = RootZone.Salts.Extracts.FromPore(s.PoreEc, s.Water, p);
    }

    private static void Salts(ref PotPools s, PotParameters p, double strength, Medium medium)
    {
        var salt = Math.Max(0, strength) * s.Water;
        s.Mobile[Ion.Nitrate] = Nitrate * salt;
        s.Mobile[Ion.Sulfate] = Sulfate * salt;
        s.Mobile[Ion.Phosphate] = Phosphate * salt * (1 + (p.SorptionLitres[Ion.Phosphate] / s.Water));
        s.Mobile[Ion.Chloride] = Chloride * salt;
        s.Mobile[Ion.Boron] = Boron * p.Litres;
        s.Mobile[Ion.Iron] = Metals * p.Litres;
        s.Mobile[Ion.Manganese] = Metals * p.Litres;
        s.Mobile[Ion.Zinc] = Copper * p.Litres;
        s.Mobile[Ion.Copper] = Copper * p.Litres;

        // Cations balance the anions and fill the solid at its pH, in the parts of the medium.
        var anions = -IonMath.Dot(in s.Mobile, in p.Charges);
        var charge = (p.BufferSlope * Math.Max(0, s.PH - p.BufferZero)) + anions + (s.Water * p.Bicarbonate / s.Proton);
        var parts = medium.StartCations;
        s.Mobile[Ion.Calcium] = charge * parts[0] / 2;
        s.Mobile[Ion.Magnesium] = charge * parts[1] / 2;
        s.Mobile[Ion.Potassium] = charge * parts[2];
        s.Mobile[Ion.Sodium] = charge * parts[3];
        s.Mobile[Ion.Ammonium] = charge * parts[4];
    }
}
