namespace Ashery.RootZone.State;

/// <summary>Everything a pot holds on one evening: the whole state of the model, a value without references. mol unless said.</summary>
public struct PotPools
{
    /// <summary>Dissolved, exchanged and sorbed together; urea too.</summary>
    public Ions Mobile;

    /// <summary>Inside coated or slow granules.</summary>
    public Ions Coated;

    /// <summary>In organic matter that rots within weeks; no nitrogen.</summary>
    public Ions BoundFast;

    /// <summary>In rock, bone, sulfur and old organic matter; no nitrogen.</summary>
    public Ions BoundSlow;

    /// <summary>Taken up by the plant and still in it.</summary>
    public Ions InPlant;

    /// <summary>Pore water, mol/L, at the last equilibrium.</summary>
    public Ions Solution;

    /// <summary>Dissolved part of each form at the last equilibrium, 0 to 1.</summary>
    public Ions Free;

    /// <summary>Nitrogen and carbon that rot fast: animal meals and guano, plant meals and cakes, composts.</summary>
    public double MealN, MealC, CakeN, CakeC, CompostN, CompostC;

    /// <summary>Organic nitrogen that rots over years, and what microbes hold.</summary>
    public double SlowN;

    /// <summary>Organic nitrogen of composts that rots over decades.</summary>
    public double HumusN;

    /// <summary>Carbonate of calcium and of magnesium not yet dissolved.</summary>
    public double LimeCalcium, LimeMagnesium;

    /// <summary>Share of the coated feed set free a day at 21 °C.</summary>
    public double CoatedRate;

    /// <summary>Water in the medium, L.</summary>
    public double Water;

    public double PH;

    /// <summary>10^-pH of the last equilibrium.</summary>
    public double Proton;

    /// <summary>Exchange intensity of the last equilibrium over the root of the water (L^½); where the next search begins.</summary>
    public double Exchange;

    /// <summary>Where the next search of the evening's ion pairs begins.</summary>
    internal Salts.PoreGuess Pairs;

    /// <summary>Dry matter of the plant, g.</summary>
    public double Biomass;

    /// <summary>Ground covered by the canopy, m².</summary>
    public double Canopy;

    /// <summary>EC of the pore water this evening, mS/cm at 25 °C.</summary>
    public double PoreEc;

    /// <summary>EC the saturated extract would have shown, mS/cm: what the plant feels on the next day.</summary>
    public double ExtractEc;

    /// <summary>Days since water was last given.</summary>
    public double DaysDry;

    /// <summary>Organic nitrogen not yet released.</summary>
    public readonly double OrganicN => MealN + CakeN + CompostN + SlowN + HumusN;
}
