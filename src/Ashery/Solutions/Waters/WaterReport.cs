namespace Ashery.Solutions.Waters;

/// <summary>A laboratory report as typed, before anything is made of it.</summary>
public sealed record WaterReport
{
    /// <summary>Own key within the garden.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Everything that was measured but pH, conductivity and temperature, in the order of the report.</summary>
    public IReadOnlyList<WaterLine> Lines { get; init; } = [];

    public double? PH { get; init; }

    public WaterConductivity? Ec { get; init; }

    /// <summary>Temperature at which pH was read, °C; 25 when null.</summary>
    public double? Celsius { get; init; }

    /// <summary>Free words: where and when it was taken.</summary>
    public string? Note { get; init; }
}

/// <summary>One line of a report.</summary>
/// <param name="Name">As the laboratory calls it: <c>Ca</c>, <c>nitrate</c>, <c>NO3-N</c>, <c>alkalinity</c>, <c>total hardness</c>.</param>
/// <param name="Value">The figure; where the report says "less than", the limit.</param>
/// <param name="Unit">As printed; null for the usual one (mg/L of the ion, mg/L CaCO3 for alkalinity and hardness).</param>
/// <param name="Below">The report says only that it is less than <paramref name="Value"/>.</param>
public sealed record WaterLine(string Name, double Value, string? Unit = null, bool Below = false);

/// <summary>A conductivity as printed.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Unit"><c>mS/cm</c>, <c>µS/cm</c>, <c>dS/m</c> or <c>mS/m</c>.</param>
/// <param name="Celsius">Temperature the figure is for: 25 unless the report says 20.</param>
public sealed record WaterConductivity(double Value, string Unit = "mS/cm", double Celsius = 25);
