using Ashery.RootZone.State;

namespace Ashery.RootZone.Water;

/// <summary>Rain that enters and water given by rule.</summary>
internal static class Watering
{
    /// <summary>
    /// Rain into the mouth, L: 1 mm on 1 m² is a litre; of each shower the canopy over the mouth keeps up to its storage.
    /// </summary>
    public static double Rain(in PotPools s, PotParameters p, double rainMm)
    {
        var cover = Math.Min(1, s.Canopy / p.MouthArea);
        return p.MouthArea * (rainMm - (cover * Math.Min(rainMm, p.CanopyStorage)));
    }

    /// <summary>
    /// Litres the rule gives this morning, rain already in: what is short of capacity, and so much more that the leaching fraction of
    /// it runs out, V = short/(1 - LF).
    /// </summary>
    public static double Wanted(in PotPools s, PotParameters p)
    {
        var due = p.Irrigation switch
        {
            IrrigationKind.ByWeight => s.Water <= p.TriggerLitres,
            IrrigationKind.ByDay => s.DaysDry >= p.EveryDays,
            _ => false,
        };
        return !due ? 0
            : p.FixedLitres >= 0 ? p.FixedLitres
            : Math.Max(0, p.Capacity - s.Water) / (1 - p.LeachingFraction);
    }
}
