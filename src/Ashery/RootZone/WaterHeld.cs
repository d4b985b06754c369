namespace Ashery.RootZone;

/// <summary>Water a filled pot holds at its three marks, L.</summary>
/// <param name="Capacity">After drainage.</param>
/// <param name="Strained">Below which the plant begins to run short.</param>
/// <param name="Wilting">When it wilts.</param>
/// <param name="Pores">When all pores are full.</param>
public readonly record struct WaterHeld(double Capacity, double Strained, double Wilting, double Pores)
{
    // A medium that holds hardly more than the plant leaves in it cannot be modelled; at least this part of the volume is available.
    private const double LeastAvailable = 0.05;

    /// <summary>
    /// Container capacity falls straight with height: between 3.8 and 15.2 cm a bark lost 20 to 42 % (Owen and Altland 2008). The figure
    /// of a medium is for cores of 7.6 cm.
    /// </summary>
    public static WaterHeld Of(PotShape shape, Medium medium, RootZoneConstants c)
    {
        double least = c["fill-height-least"], most = c["fill-height-most"], slope = c["fill-height-sensitivity"];
        var height = Math.Clamp(shape.HeightCm, least, most);
        var relative = (1 - (slope * (height - least))) / (1 - (slope * (c["fill-height-reference"] - least)));
        var wilting = medium.Unavailable.Value;
        var capacity = Math.Clamp(medium.ContainerCapacity.Value * relative, wilting + LeastAvailable, medium.Porosity.Value);
        var easy = Math.Min(medium.EasilyAvailable.Value, 0.9 * (capacity - wilting));
        return new(capacity * shape.Litres, (capacity - easy) * shape.Litres, wilting * shape.Litres, medium.Porosity.Value * shape.Litres);
    }
}
