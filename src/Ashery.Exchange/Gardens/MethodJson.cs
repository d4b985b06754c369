using Ashery.Pots;

namespace Ashery.Exchange.Gardens;

/// <summary>How a dose is given.</summary>
public sealed record MethodJson
{
    /// <summary><c>topDress</c>, <c>can</c> or <c>spray</c>.</summary>
    public required string By { get; init; }

    /// <summary>Level scoops for one pot, in halves; null when weighed.</summary>
    public double? Scoops { get; init; }

    /// <summary>By the can, or what the same dose would be by the can; null when the feed does not dissolve.</summary>
    public CanJson? Can { get; init; }

    public SprayJson? Spray { get; init; }

    /// <summary>Set when the dose is too small to weigh.</summary>
    public PredilutionJson? Predilution { get; init; }

    internal static MethodJson Of(Dose dose) => new()
    {
        By = GardenWriter.Word(dose.Method),
        Scoops = dose.Scoops,
        Can = dose.Can is { } can ? new(can.GramsPer10Litres, can.LitresPerPot, can.Waterings) : null,
        Spray = dose.Spray is { } spray ? new(spray.GramsPerLitre, spray.MillilitresPerPot) : null,
        Predilution = dose.Predilution is { } p ? new(p.Grams, p.WaterMillilitres, p.MillilitresPerPot) : null,
    };
}

/// <summary>By the can.</summary>
/// <param name="GramsPer10Litres">g of feed in 10 L of water.</param>
/// <param name="LitresPerPot">L for one pot at one watering.</param>
/// <param name="Waterings">Over how many waterings.</param>
public sealed record CanJson(double GramsPer10Litres, double LitresPerPot, int Waterings);

/// <summary>By spray.</summary>
/// <param name="GramsPerLitre">g of feed in a litre of water.</param>
/// <param name="MillilitresPerPot">mL for one pot.</param>
public sealed record SprayJson(double GramsPerLitre, double MillilitresPerPot);

/// <summary>From a bottle.</summary>
/// <param name="Grams">g to dissolve.</param>
/// <param name="WaterMillilitres">mL of water.</param>
/// <param name="MillilitresPerPot">mL of the bottle that hold the dose of one pot.</param>
public sealed record PredilutionJson(double Grams, double WaterMillilitres, double MillilitresPerPot);
