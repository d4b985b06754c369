using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Tanks;

/// <summary>A material, or a share of one, in a tank.</summary>
/// <param name="Material">Which.</param>
/// <param name="Share">Part of the feed's amount that goes into this tank, 1 for all.</param>
/// <param name="GramsPerLitre">g in a litre of stock at the ratio asked.</param>
/// <param name="Limit">g alone in a litre of water at the coldest; null where no table says, infinite where it melts in its own water.</param>
public sealed record TankPart(MaterialInWater Material, double Share, double GramsPerLitre, double? Limit);

/// <summary>How near something is to coming out of a tank.</summary>
/// <param name="Name">Salt or mineral.</param>
/// <param name="Celsius">At which of the two temperatures it is nearest.</param>
/// <param name="Index">log10 of its ion activity product over that of its saturated solution: above 0 it comes out.</param>
public sealed record TankMargin(string Name, double Celsius, double Index);

/// <summary>One concentrate.</summary>
public sealed record Tank
{
    /// <summary><c>A</c>, <c>B</c> and so on.</summary>
    public required string Name { get; init; }

    /// <summary>In the order in which they are dissolved.</summary>
    public required IReadOnlyList<TankPart> Parts { get; init; }

    /// <summary>What is nearest to coming out, at the ratio asked; the nearest first.</summary>
    public required IReadOnlyList<TankMargin> Margins { get; init; }

    /// <summary>Slow solids past their limit: they may take days, or never come.</summary>
    public required IReadOnlyList<TankMargin> Slow { get; init; }

    /// <summary>Highest ratio at which it is clear; at most <see cref="TankSplit.MostRatio"/>, 0 when at none.</summary>
    public required double MostRatio { get; init; }

    /// <summary>What comes out first above that ratio; null when nothing does.</summary>
    public TankMargin? Limiting { get; init; }

    /// <summary>The stock at the coldest, at the ratio asked.</summary>
    public required Solution Solution { get; init; }

    /// <summary>kg of water in a litre of stock.</summary>
    public required double WaterPerLitre { get; init; }

    public double Grams => Parts.Sum(static part => part.GramsPerLitre);
}

/// <summary>How sure the split is the best.</summary>
/// <param name="Splits">Ways of sharing the materials over the tanks, each material whole.</param>
/// <param name="Judged">Splits that were judged as full tanks; the others hold a pair that already limits them more.</param>
/// <param name="Speciations">Solutions that were computed.</param>
/// <param name="Divided">True when a material was then shared over two tanks, by quarters, because whole ones do not do; that step is a search, not a proof.</param>
public sealed record TankCertificate(double Splits, int Judged, int Speciations, bool Divided);

/// <summary>A feed shared over tanks.</summary>
public sealed record TankReport
{
    public required TankRequest Request { get; init; }

    public required IReadOnlyList<Tank> Tanks { get; init; }

    /// <summary>Highest ratio at which every tank is clear by the model, and is so at the ratio asked where that is lower.</summary>
    public required double MostRatio { get; init; }

    /// <summary>Ratio that leaves the safety margin.</summary>
    public double AdvisedRatio => MostRatio * TankSplit.Margin;

    /// <summary>Highest ratio with everything in one tank; 0 when it cannot be.</summary>
    public required double MostRatioInOne { get; init; }

    /// <summary>Highest ratio with a material in two tanks; null where that gains nothing.</summary>
    public double? MostRatioDivided { get; init; }

    /// <summary>Highest ratio at which they are clear once more, beyond a cloudy ratio that was asked; null when they are not.</summary>
    public double? ClearAgainAt { get; init; }

    /// <summary>Every tank is clear at the ratio asked, which is not said by a higher one: in hard water a stock may be clear and its dilution not.</summary>
    public required bool ClearAsAsked { get; init; }

    /// <summary>Clear at the ratio asked, with the margin.</summary>
    public bool IsClear => ClearAsAsked && Request.Ratio <= AdvisedRatio * (1 + 1e-9);

    /// <summary>Clear by the model at the ratio asked, but inside the margin.</summary>
    public bool IsNear => ClearAsAsked && !IsClear && Request.Ratio <= MostRatio * (1 + 1e-9);

    /// <summary>What limits the tank that limits the ratio; null when nothing does.</summary>
    public required TankMargin? Limiting { get; init; }

    public required TankCertificate Certificate { get; init; }

    public required IReadOnlyList<Problem> Notes { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }
}
