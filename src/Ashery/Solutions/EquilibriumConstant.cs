using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Solutions;

/// <summary>
/// log10 K of a reaction by temperature: the published expression A1 + A2 T + A3/T + A4 log10 T + A5/T² + A6 T² (T in kelvin)
/// where there is one, else van 't Hoff from 25 °C, else the value at 25 °C.
/// </summary>
public sealed class EquilibriumConstant
{
    private const double Reference = 298.15;

    private readonly double[] expression;
    private readonly double? enthalpy;

    private EquilibriumConstant(double at25, double[] expression, double? enthalpy, string sourceId, Provenance provenance)
    {
        At25 = at25;
        this.expression = expression;
        this.enthalpy = enthalpy;
        SourceId = sourceId;
        Provenance = provenance;
    }

    /// <summary>The published log10 K at 25 °C.</summary>
    public double At25 { get; }

    public string SourceId { get; }

    public Provenance Provenance { get; }

    /// <summary>False when the value at 25 °C stands for all temperatures.</summary>
    public bool KnowsTemperature => expression.Length > 0 || enthalpy is not null;

    /// <summary>log10 K at a temperature in °C.</summary>
    public double At(double celsius)
    {
        var t = celsius + 273.15;
        if (expression.Length > 0)
        {
            return Term(0) + (Term(1) * t) + (Term(2) / t) + (Term(3) * Math.Log10(t)) + (Term(4) / (t * t)) + (Term(5) * t * t);
        }

        // d ln K/dT = ΔH/(R T²), ΔH constant; kJ to J.
        return enthalpy is { } h
            ? At25 - (h * 1000 / (WaterProperties.GasConstant * Math.Log(10)) * ((1 / t) - (1 / Reference)))
            : At25;
    }

    internal static EquilibriumConstant Read(JsonElement row) => new(
        row.Number("logK25"),
        row.TryGetProperty("logK", out var list) ? Numbers(list) : [],
        row.TryGetProperty("deltaH", out var h) ? h.GetDouble() : null,
        row.Text("source"),
        row.Provenance());

    internal static double[] Numbers(JsonElement list)
    {
        var numbers = new double[list.GetArrayLength()];
        var i = 0;
        foreach (var number in list.EnumerateArray())
        {
            numbers[i++] = number.GetDouble();
        }

        return numbers;
    }

    private double Term(int i) => i < expression.Length ? expression[i] : 0;
}
