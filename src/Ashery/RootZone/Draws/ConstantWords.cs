namespace Ashery.RootZone.Draws;

/// <summary>Constants of the model in a grower's words.</summary>
internal static class ConstantWords
{
    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["slow-organic"] = "slow rotting of old organic matter",
        ["organic-q10"] = "how warmth hastens rotting",
        ["slow-mineral"] = "how fast rock and bone dissolve",
        ["coated-q10"] = "how warmth hastens coated feed",
        ["microbe-efficiency"] = "carbon that microbes keep",
        ["microbe-cn"] = "carbon to nitrogen of microbes",
        ["urea-hydrolysis"] = "how fast urea turns into ammonium",
        ["urea-q10"] = "how warmth hastens that of urea",
        ["nitrification"] = "how fast ammonium turns into nitrate",
        ["ammonia-exchange"] = "ammonia lost to the air",
        ["denitrification"] = "nitrate lost to the air",
        ["denitrification-start"] = "how wet it is before nitrate is lost to the air",
        ["fill-height-sensitivity"] = "how a tall pot drains",
        ["wet-pores-best"] = "how wet microbes like it",
        ["gapon-magnesium"] = "how the medium holds magnesium",
        ["gapon-potassium"] = "how the medium holds potassium",
        ["gapon-ammonium"] = "how the medium holds ammonium",
        ["gapon-sodium"] = "how the medium holds sodium",
        ["carbon-dioxide"] = "carbon dioxide in the medium",
        ["lime-dissolution"] = "how fast lime dissolves",
        ["lime-end"] = "pH at which lime stops to dissolve",
        ["surface-coefficient"] = "drying of the bare surface",
        ["surface-shaded"] = "drying of the shaded surface",
        ["canopy-storage"] = "rain held by leaves",
        ["radiation-share"] = "how shade slows drying",
        ["root-warming"] = "how the sun warms the pot",
        ["root-lag"] = "how the pot lags behind the air",
        ["canopy-coefficient"] = "water use of the canopy",
        ["light-use"] = "growth by light",
        ["light-taken"] = "light the canopy takes",
        ["canopy-mass"] = "dry matter of the canopy",
        ["nitrogen-light"] = "nitrogen the plant wants",
        ["nitrogen-medium"] = "nitrogen the plant wants",
        ["nitrogen-heavy"] = "nitrogen the plant wants",
        ["nitrogen-least"] = "nitrogen without which it stops",
        ["want-phosphorus"] = "phosphorus the plant wants",
        ["want-potassium"] = "potassium the plant wants",
        ["want-calcium"] = "calcium the plant wants",
        ["want-magnesium"] = "magnesium the plant wants",
        ["want-sulfur"] = "sulfur the plant wants",
        ["flower-demand"] = "what flowers want",
        ["half-nitrogen"] = "uptake from thin nitrogen",
        ["half-others"] = "uptake from thin nutrients",
        ["catch-up"] = "how fast a starved plant eats",
        ["salt-with-water"] = "sodium and chloride taken up",
        ["pour-through-over-extract"] = "pour-through against the saturated extract",
    };

    public static string Of(string id) => Words.TryGetValue(id, out var words) ? words : id;
}
