using Ashery.Problems;

namespace Ashery.Solutions.Waters;

/// <summary>A measured conductivity in the library's unit, at the temperature it is for.</summary>
/// <param name="Value">mS/cm.</param>
/// <param name="Celsius">°C.</param>
internal readonly record struct WaterEc(double Value, double Celsius)
{
    private const double Most = 200;

    /// <summary>mS/cm in one of each unit, lower case without blanks.</summary>
    private static readonly (string Name, double Factor)[] Units =
        [("ms/cm", 1), ("ds/m", 1), ("mmho/cm", 1), ("us/cm", 0.001), ("umho/cm", 0.001), ("ms/m", 0.01), ("s/m", 10)];

    public static Result<object> Check(WaterConductivity ec, out WaterEc read)
    {
        read = default;
        if (WaterNumber.Check(ec.Value, "ec") is { } wrong)
        {
            return Result.Fail<object>(wrong);
        }

        var key = ec.Unit.Replace(" ", string.Empty, StringComparison.Ordinal).Replace('µ', 'u').Replace('μ', 'u').ToLowerInvariant();
        var factor = 0.0;
        foreach (var (name, value) in Units)
        {
            factor = name == key ? value : factor;
        }

        if (factor == 0)
        {
            return Result.Fail<object>("ec", $"\"{WaterNumber.Shown(ec.Unit)}\" is not a unit of conductivity.", "Use mS/cm, µS/cm, dS/m or mS/m.");
        }

        if (!(ec.Celsius is >= Speciation.Coldest and <= Speciation.Warmest))
        {
            return Result.Fail<object>("ec", FormattableString.Invariant($"{ec.Celsius:0.#} °C is outside 0 to 40 °C."), "Reports give conductivity at 25 or 20 °C.");
        }

        read = new(ec.Value * factor, ec.Celsius);
        return read.Value <= Most
            ? Result.Of<object>(ec)
            : Result.Fail<object>("ec", FormattableString.Invariant($"{read.Value:0} mS/cm is four times sea water."), "Check the unit; 1000 µS/cm are 1 mS/cm.");
    }

    /// <summary>Conductivity of a water as drafted, mS/cm at a temperature.</summary>
    public static double Of(WaterDraft draft, double? pH, double pHCelsius, double celsius) =>
        Conductivity.Of(Speciation.Solve(new SourceWater("draft", "draft", draft.Totals, pH, pHCelsius).ToInput(celsius)));
}
