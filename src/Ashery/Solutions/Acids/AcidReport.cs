using Ashery.Problems;

namespace Ashery.Solutions.Acids;

/// <summary>The water at one moment of the treatment.</summary>
public sealed record AcidStage
{
    public required Solution Solution { get; init; }

    public double PH => Solution.PH;

    /// <summary>mS/cm at 25 °C.</summary>
    public required double EcAt25 { get; init; }

    /// <summary>mg/L as CaCO3, every base counted.</summary>
    public required double Alkalinity { get; init; }

    /// <summary>mg/L as CaCO3 that is hydrogen carbonate and carbonate.</summary>
    public required double Bicarbonate { get; init; }

    /// <summary>How near each solid is to coming out.</summary>
    public required IReadOnlyList<SaturationIndex> Saturation { get; init; }

    public double? Index(string mineral)
    {
        foreach (var index in Saturation)
        {
            if (index.Mineral.Id == mineral)
            {
                return index.Index;
            }
        }

        return null;
    }
}

/// <summary>How much of the bottle, and where it goes.</summary>
/// <param name="MolesPerLitre">mol of pure acid a litre of water.</param>
/// <param name="PureGramsPerLitre">g of pure acid a litre of water.</param>
/// <param name="GramsPerLitre">g from the bottle a litre of water.</param>
/// <param name="MillilitresPerLitre">mL from the bottle a litre of water; null for crystals.</param>
/// <param name="Litres">L of the can.</param>
public sealed record AcidAmount(double MolesPerLitre, double PureGramsPerLitre, double GramsPerLitre, double? MillilitresPerLitre, double Litres)
{
    public double GramsPerCan => GramsPerLitre * Litres;

    public double? MillilitresPerCan => MillilitresPerLitre * Litres;

    public double GramsPer100Litres => GramsPerLitre * 100;

    public double? MillilitresPer100Litres => MillilitresPerLitre * 100;
}

/// <summary>The stock an injector draws from.</summary>
/// <param name="Ratio">Parts of water to one of stock.</param>
/// <param name="GramsPerLitreOfStock">g from the bottle in a litre of stock.</param>
/// <param name="MillilitresPerLitreOfStock">mL from the bottle; null for crystals.</param>
/// <param name="StockStrength">g of pure acid in a mL of stock.</param>
public sealed record AcidStock(double Ratio, double GramsPerLitreOfStock, double? MillilitresPerLitreOfStock, double StockStrength);

/// <summary>What the acid brings as food, mg/L of water.</summary>
public sealed record AcidNutrients(double N, double P, double P2O5, double S, double SO4);

/// <summary>A point of the curve of pH against acid.</summary>
/// <param name="GramsPerLitre">g from the bottle.</param>
/// <param name="Closed">pH just mixed.</param>
/// <param name="Open">pH after standing in the air.</param>
public readonly record struct AcidCurvePoint(double GramsPerLitre, double Closed, double Open);

/// <summary>A dose of acid and what it does to the water.</summary>
public sealed record AcidReport
{
    public required AcidRequest Request { get; init; }

    public required AcidAmount Amount { get; init; }

    public AcidStock? Stock { get; init; }

    public required AcidNutrients Nutrients { get; init; }

    public required AcidStage Before { get; init; }

    /// <summary>Just mixed, no carbon dioxide lost.</summary>
    public required AcidStage Mixed { get; init; }

    /// <summary>After standing in the air.</summary>
    public required AcidStage Standing { get; init; }

    /// <summary>pH at the moment asked for, with a tenth less and a tenth more acid: how exactly it has to be measured.</summary>
    public required (double Less, double More) PhForTenth { get; init; }

    public required IReadOnlyList<AcidCurvePoint> Curve { get; init; }

    /// <summary>What to know, the weightiest first.</summary>
    public required IReadOnlyList<Problem> Notes { get; init; }

    /// <summary>Ids of the cautions.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}
