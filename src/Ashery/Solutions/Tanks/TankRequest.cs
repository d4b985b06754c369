using Ashery.Solutions.Can;

namespace Ashery.Solutions.Tanks;

/// <summary>A feed that is to come out of an injector.</summary>
public sealed record TankRequest
{
    /// <summary>Water the stocks are made with.</summary>
    public SolutionInput Water { get; init; } = SolutionInput.Pure();

    /// <summary>What the grower calls the water.</summary>
    public string WaterName { get; init; } = "pure water";

    /// <summary>Each material once.</summary>
    public required IReadOnlyList<TankMaterial> Feed { get; init; }

    /// <summary>Parts of feed from one part of stock: 100 for an injector of 1:100. The stock is that many times as strong as the feed.</summary>
    public double Ratio { get; init; } = 100;

    /// <summary>Most tanks there are.</summary>
    public int Tanks { get; init; } = 2;

    /// <summary>Coldest the tanks get, °C.</summary>
    public double Coldest { get; init; } = 5;

    /// <summary>Warmest the tanks are judged at, °C: a few solids dissolve less in the warm.</summary>
    public double Warmest => Math.Max(Coldest, 25);

    /// <summary>May a material go into two tanks where that allows a stronger stock?</summary>
    public bool MayDivide { get; init; } = true;
}

/// <summary>A material of the feed.</summary>
/// <param name="Material">What it gives.</param>
/// <param name="GramsPerLitre">g in a litre of the feed that reaches the pots.</param>
public sealed record TankMaterial(MaterialInWater Material, double GramsPerLitre);
