namespace Ashery.Climate.Evapotranspiration;

/// <summary>How dryness slows a plant's use of water (FAO-56 chapter 8). Depths in mm; in a pot litres do as well.</summary>
public static class SoilWater
{
    /// <summary>Total available water, mm (82).</summary>
    /// <param name="fieldCapacity">Water content after draining, volume fraction; in a pot the container capacity.</param>
    /// <param name="wiltingPoint">Content at which the crop wilts for good, volume fraction.</param>
    /// <param name="depth">Depth of the roots, m; in a pot the height of the medium.</param>
    public static double TotalAvailable(double fieldCapacity, double wiltingPoint, double depth) => 1000 * (fieldCapacity - wiltingPoint) * depth;

    /// <summary>Readily available water (83): the share p that is taken up without stress.</summary>
    public static double ReadilyAvailable(double share, double totalAvailable) => share * totalAvailable;

    /// <summary>Stress coefficient Ks, 0 to 1 (84).</summary>
    /// <param name="depletion">Water missing to field capacity.</param>
    /// <param name="totalAvailable">Total available water.</param>
    /// <param name="share">Share p that is readily available.</param>
    public static double Stress(double depletion, double totalAvailable, double share)
    {
        var readily = ReadilyAvailable(share, totalAvailable);
        return depletion <= readily ? 1 : Math.Max(0, (totalAvailable - depletion) / (totalAvailable - readily));
    }

    /// <summary>Depletion at the end of a day without rain or watering (85), at most the total available water.</summary>
    public static double DryDay(double depletion, double totalAvailable, double use) => Math.Min(totalAvailable, depletion + use);
}
