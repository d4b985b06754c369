using System.Globalization;
using Ashery.Crops;

namespace Ashery.Solutions.Waters;

/// <summary>How much a plant bears of what a water brings.</summary>
public enum WaterSensitivity
{
    Sensitive,
    Moderate,
    Tolerant,
}

/// <summary>The sensitivities by which a water is judged, and why they were taken.</summary>
/// <param name="For">Whom it is for.</param>
/// <param name="Salts">Salts, sodium and boron.</param>
/// <param name="Chloride">Chloride.</param>
/// <param name="Alkalinity">Alkalinity.</param>
/// <param name="Why">What decided, in words.</param>
public sealed record WaterNeeds(string For, WaterSensitivity Salts, WaterSensitivity Chloride, WaterSensitivity Alkalinity, string Why)
{
    // Saturated medium extract, mS/cm: upper ends of the crop's range that set the classes; a judgement of this project.
    private const double SensitiveUpTo = 1.5, ModerateUpTo = 3;

    /// <summary>When no crop is named: plants of the middle class.</summary>
    public static WaterNeeds Usual { get; } = Of(WaterSensitivity.Moderate);

    /// <summary>One class for everything.</summary>
    public static WaterNeeds Of(WaterSensitivity sensitivity) => new(
        sensitivity switch
        {
            WaterSensitivity.Sensitive => "sensitive plants, seedlings and small pots",
            WaterSensitivity.Moderate => "most plants in pots",
            _ => "tolerant plants in large pots",
        },
        sensitivity, sensitivity, sensitivity, "one class for all figures");

    /// <summary>From what the crop bears in its medium, whether it wants an acid one and whether chloride is known to hurt it.</summary>
    public static WaterNeeds Of(Crop crop)
    {
        var (salts, why) = crop.SaturatedExtractEc switch
        {
            null => (WaterSensitivity.Moderate, "its salt tolerance is not known, the middle class is taken"),
            { High: <= SensitiveUpTo } range => (WaterSensitivity.Sensitive, Bears(range)),
            { High: <= ModerateUpTo } range => (WaterSensitivity.Moderate, Bears(range)),
            { } range => (WaterSensitivity.Tolerant, Bears(range)),
        };
        var words = why + (crop.AcidLoving ? "; it wants an acid medium" : string.Empty) + (crop.ChlorideSensitive ? "; chloride hurts it" : string.Empty);
        return new(
            crop.Name, salts, crop.ChlorideSensitive ? WaterSensitivity.Sensitive : salts,
            crop.AcidLoving ? WaterSensitivity.Sensitive : salts == WaterSensitivity.Tolerant ? WaterSensitivity.Moderate : salts, words);
    }

    internal WaterSensitivity By(string figure) => figure switch
    {
        "chloride" => Chloride,
        "alkalinity" => Alkalinity,
        _ => Salts,
    };

    private static string Bears(SourcedRange range) =>
        string.Create(CultureInfo.InvariantCulture, $"it bears up to {range.High:0.##} mS/cm in the medium extract");
}
