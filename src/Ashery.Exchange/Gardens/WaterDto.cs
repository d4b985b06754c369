using System.ComponentModel;
using System.Text.Json.Serialization;

namespace Ashery.Exchange.Gardens;

[Description("A water report as the laboratory printed it.")]
public sealed record WaterDto
{
    public string? Id { get; init; }

    public string? Name { get; init; }

    [Description("Where and when it was taken.")]
    public string? Note { get; init; }

    [Description("What was measured, in the order of the report.")]
    public IReadOnlyList<WaterLineDto>? Lines { get; init; }

    [JsonPropertyName("pH")]
    public double? PH { get; init; }

    [Description("Temperature at which the pH was read, degrees Celsius; 25 when left out.")]
    public double? Celsius { get; init; }

    [Description("Conductivity in ecUnit.")]
    public double? Ec { get; init; }

    [Description("mS/cm when left out.")]
    public string? EcUnit { get; init; }

    [Description("Temperature the conductivity is for, degrees Celsius; 25 when left out.")]
    public double? EcCelsius { get; init; }
}

[Description("A line of a water report.")]
public sealed record WaterLineDto
{
    [Description("Ca, Mg, Na, K, NH4, NO3, NO3-N, SO4, Cl, PO4, P, B, Fe, Mn, Zn, Cu, alkalinity, HCO3, hardness, TDS, or the name in full.")]
    public string? Name { get; init; }

    [Description("The figure; where the report says less than, the limit.")]
    public double? Value { get; init; }

    [Description("mg/L of the ion (of CaCO3 for alkalinity and hardness) when left out; else mmol/L, meq/L, mg/L as N and so on.")]
    public string? Unit { get; init; }

    [Description("True where the report says only that it is less.")]
    public bool? Below { get; init; }
}
