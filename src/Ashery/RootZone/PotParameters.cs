using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>Everything that does not change from day to day, worked out once before a run. Litres, moles and days.</summary>
public sealed record PotParameters
{
    // Water.
    public double Litres { get; init; }

    /// <summary>Water held after drainage, L; that at wilting; below which the plant begins to run short; all pores.</summary>
    public double Capacity { get; init; }

    public double Wilting { get; init; }

    public double Strained { get; init; }

    public double Pores { get; init; }

    public double MouthArea { get; init; }

    public double CanopyCoefficient { get; init; }

    public double SurfaceCoefficient { get; init; }

    public double SurfaceShaded { get; init; }

    public double CanopyStorage { get; init; }

    public double Mixing { get; init; }

    public IrrigationKind Irrigation { get; init; }

    public double TriggerLitres { get; init; }

    public double EveryDays { get; init; }

    public double FixedLitres { get; init; }

    public double LeachingFraction { get; init; }

    public Ions WaterIons;

    public Ions RainIons;

    public Ions WateringFeed;

    // Nitrogen and minerals; rates half a step, since they go before and after the plant's part.
    public double UreaRate { get; init; }

    public double NitrificationRate { get; init; }

    public double NitrificationPhNone { get; init; }

    public double NitrificationPhSpan { get; init; }

    public double AmmoniaRate { get; init; }

    public double DenitrificationRate { get; init; }

    /// <summary>Nitrate in the pore water of half the straight law's loss, mol/L.</summary>
    public double DenitrificationHalf { get; init; }

    public double DenitrificationStart { get; init; }

    /// <summary>Part of the medium without air when at capacity.</summary>
    public double Perched { get; init; }

    public double WetBest { get; init; }

    public double WetFall { get; init; }

    public double MicrobeShare { get; init; }

    public double MealRate { get; init; }

    public double CakeRate { get; init; }

    public double CompostRate { get; init; }

    public double SlowRate { get; init; }

    public double HumusRate { get; init; }

    public double SlowMineralRate { get; init; }

    // Salts and pH; rates of lime half a step.
    public Ions Charges;

    /// <summary>Litres of water that hold as much as the solid does, by form.</summary>
    public Ions SorptionLitres;

    public double GaponMagnesium { get; init; }

    public double GaponPotassium { get; init; }

    public double GaponAmmonium { get; init; }

    public double GaponSodium { get; init; }

    /// <summary>Charge of the solid, eq: <c>BufferSlope (pH - BufferZero)</c>.</summary>
    public double BufferSlope { get; init; }

    public double BufferZero { get; init; }

    /// <summary>HCO3- = this / 10^-pH, mol/L.</summary>
    public double Bicarbonate { get; init; }

    /// <summary>Second dissociation of phosphate, mol/L.</summary>
    public double PhosphateK { get; init; }

    public double LimeRate { get; init; }

    public double LimeEnd { get; init; }

    public double ScalePh { get; init; }

    public double ScaleRate { get; init; }

    // Plant; rates a step.
    public double LightUse { get; init; }

    public double CanopyMass { get; init; }

    public double CanopyMost { get; init; }

    public double BaseCelsius { get; init; }

    public double BestFrom { get; init; }

    public double BestTo { get; init; }

    /// <summary>mol N a g of dry matter.</summary>
    public double NitrogenWanted { get; init; }

    public double NitrogenLeast { get; init; }

    /// <summary>mol of every other nutrient a g of dry matter.</summary>
    public Ions Wanted;

    /// <summary>Pore water of half uptake, mol/L.</summary>
    public Ions HalfUptake;

    public double HalfNitrogen { get; init; }

    public double FlowerDemand { get; init; }

    public double CatchUp { get; init; }

    /// <summary>Most the plant holds over what it wants.</summary>
    public double Luxury { get; init; }

    public double SaltWithWater { get; init; }

    public double SaltThreshold { get; init; }

    public double SaltSlope { get; init; }

    /// <summary>Extract EC over pore EC at container capacity.</summary>
    public double ExtractOverPore { get; init; }

    public int Steps { get; init; }

    /// <summary>Days a step.</summary>
    public double Step => 1.0 / Steps;
}
