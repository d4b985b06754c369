using Ashery.Feeds;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.RootZone.State;
using Ashery.Solutions;

namespace Ashery.RootZone.Feeding;

/// <summary>What a gram of a material or feed gives to a pot, from its label, its formula and the way such materials come free.</summary>
public static class FeedBuilder
{
    // C:N by mass where a row tells none (assumption): meals, cakes, composts.
    private const double MealRatio = 4, CakeRatio = 8, CompostRatio = 15;

    // Label phosphate above which a meal is bone: its phosphorus is mineral and slow.
    private const double BonePhosphate = 0.15;

    private const double LabelRounding = 0.1;

    private static readonly (Nutrient Nutrient, int Ion)[] Elements =
    [
        (Nutrient.P, Ion.Phosphate), (Nutrient.K, Ion.Potassium), (Nutrient.Ca, Ion.Calcium), (Nutrient.Mg, Ion.Magnesium), (Nutrient.S, Ion.Sulfate),
        (Nutrient.Cl, Ion.Chloride), (Nutrient.Na, Ion.Sodium), (Nutrient.B, Ion.Boron), (Nutrient.Fe, Ion.Iron), (Nutrient.Mn, Ion.Manganese),
        (Nutrient.Zn, Ion.Zinc), (Nutrient.Cu, Ion.Copper),
    ];

    /// <summary>A material of the shelf or the catalogue.</summary>
    public static FeedContents Of(Material material)
    {
        var ions = FromLabel(material.Label, material.Nitrogen);
        return material.IsOrganic ? Organic(material, ions)
            : material.Kind == MaterialKind.SlowRelease || material.Nitrogen.SlowSynthetic > 0 ? Slow(material, ions)
            : material.CompatibilityGroup switch
            {
                "LIME" => new()
                {
                    LimeCalcium = ions[Ion.Calcium],
                    LimeMagnesium = ions[Ion.Magnesium],
                    Soluble = Without(ions, Ion.Calcium, Ion.Magnesium),
                },
                "ROCKP" or "SUL" or "INERT" => new() { BoundSlow = ions },
                "HYDL" or "KHC" or "LIQ" => new() { Soluble = ions },
                _ => new() { Soluble = WithCounterIons(material, ions) },
            };
    }

    /// <summary>A feed of several parts; a part that is not found counts by the label of the whole.</summary>
    public static FeedContents Of(Feed feed, Func<string, Material?> find)
    {
        var sum = default(FeedContents);
        foreach (var (id, share) in feed.Parts)
        {
            if (find(id) is not { } material)
            {
                return new() { Soluble = Neutral(FromLabel(feed.Label, feed.Nitrogen)) };
            }

            sum += Of(material) * share;
        }

        return sum;
    }

    /// <summary>A coated compound: its label, the forms inside, and the days its label names.</summary>
    public static FeedContents Coated(LabelAnalysis label, NitrogenForms nitrogen, double days) =>
        new() { Coated = Neutral(FromLabel(label, nitrogen)), CoatedRate = SlowFeed.Rate(days) };

    /// <summary>mol/L of a dissolved feed, g/L.</summary>
    public static Ions Liquid(FeedContents feed, double gramsPerLitre) => feed.Soluble.Times(gramsPerLitre);

    /// <summary>mol/L of a dissolved feed by its nitrogen, mg N/L.</summary>
    public static Ions LiquidByNitrogen(FeedContents feed, double milligramsNitrogen) =>
        feed.Soluble.Nitrogen > 0 ? feed.Soluble.Times(milligramsNitrogen / 1000 / Ion.GramsPerMole(Ion.Nitrate) / feed.Soluble.Nitrogen) : default;

    private static FeedContents Organic(Material material, Ions ions)
    {
        var kind = OrganicClass.Of(material);
        var n = material.Nitrogen.Organic / Ion.GramsPerMole(Ion.Nitrate);
        var ratio = material.CarbonToNitrogen ?? kind.Id switch { "meal" => MealRatio, "cake" => CakeRatio, _ => CompostRatio };
        var fast = n * kind.FastShare.Value;

        // Potassium, sodium and chloride of plant and animal matter are washed out at once; all else waits for the rot.
        var soluble = default(Ions);
        var bound = ions;
        foreach (var ion in (ReadOnlySpan<int>)[Ion.Potassium, Ion.Sodium, Ion.Chloride, Ion.Nitrate, Ion.Ammonium, Ion.Urea])
        {
            soluble[ion] = ions[ion];
            bound[ion] = 0;
        }

        var slowly = kind.Id == "compost" || material.Label[Nutrient.P] > BonePhosphate;
        return new()
        {
            Soluble = soluble,
            BoundFast = slowly ? default : bound,
            BoundSlow = slowly ? bound : default,
            MealN = kind.Id == "meal" ? fast : 0,
            MealC = kind.Id == "meal" ? fast * ratio : 0,
            CakeN = kind.Id == "cake" ? fast : 0,
            CakeC = kind.Id == "cake" ? fast * ratio : 0,
            CompostN = kind.Id == "compost" ? fast : 0,
            CompostC = kind.Id == "compost" ? fast * ratio : 0,
            SlowN = kind.Id == "compost" ? 0 : n - fast,
            HumusN = kind.Id == "compost" ? n - fast : 0,
        };
    }

    private static FeedContents Slow(Material material, Ions ions)
    {
        // What is not nitrogen of a coat (its sulfur, the lime of cyanamide) lies outside of it.
        var inside = ions;
        var outside = default(Ions);
        if (material.Nitrogen.SlowSynthetic > 0)
        {
            inside = Ions.Of(Ion.Urea, material.Nitrogen.SlowSynthetic / Ion.GramsPerMole(Ion.Urea));
            outside = ions;
        }

        return new()
        {
            Coated = inside,
            CoatedRate = SlowFeed.Rate(SlowFeed.Of(material.Id).Days.Value),
            Soluble = Without(outside, Ion.Sulfate),
            BoundSlow = Ions.Of(Ion.Sulfate, outside[Ion.Sulfate]),
        };
    }

    private static Ions FromLabel(LabelAnalysis label, NitrogenForms nitrogen)
    {
        var element = label.ToElements();
        var ions = default(Ions);
        foreach (var (nutrient, ion) in Elements)
        {
            ions[ion] = element[nutrient] / Ion.GramsPerMole(ion);
        }

        ions[Ion.Nitrate] = nitrogen.Nitrate / Ion.GramsPerMole(Ion.Nitrate);
        ions[Ion.Ammonium] = nitrogen.Ammonium / Ion.GramsPerMole(Ion.Ammonium);
        ions[Ion.Urea] = nitrogen.Urea / Ion.GramsPerMole(Ion.Urea);
        return ions;
    }

    /// <summary>Chloride and sulfate that a label leaves out and the formula tells; without a formula cations are balanced by sulfate and anions by sodium.</summary>
    private static Ions WithCounterIons(Material material, Ions ions)
    {
        if (material.Kind == MaterialKind.TraceElement || material.CompatibilityGroup == "ACID" || material.Kind == MaterialKind.Acid)
        {
            return ions;
        }

        if (material.Formula is not { } formula || !Salt.TryFind(formula, out var salt))
        {
            return Neutral(ions);
        }

        var purity = PurityOf(material);
        foreach (var (component, number) in salt.Gives)
        {
            var ion = Chemistry.Default.Components[component].Id switch { "Cl-" => Ion.Chloride, "SO4-2" => Ion.Sulfate, "Na+" => Ion.Sodium, _ => -1 };
            if (ion >= 0 && ions[ion] == 0)
            {
                ions[ion] = purity * number / salt.MolarMass;
            }
        }

        return Rounded(ions);
    }

    private static double PurityOf(Material material)
    {
        var least = 1.0;
        foreach (var nutrient in material.Pure?.Present ?? [])
        {
            least = material.Label[nutrient] > 0 ? Math.Min(least, material.Label[nutrient] / material.Pure![nutrient]) : least;
        }

        return least;
    }

    // What a label leaves out: sulfate beside too many cations, sodium beside too many anions.
    private static Ions Neutral(Ions ions)
    {
        ions = Rounded(ions);
        var charge = IonMath.Dot(in ions, Ion.Charges);
        return charge > 0 ? ions.With(Ion.Sulfate, charge / 2) : ions.With(Ion.Sodium, -charge);
    }

    // Labels are rounded down form by form: up to a tenth too much of an anion is no acid.
    private static Ions Rounded(Ions ions)
    {
        foreach (var (anion, z) in ((int, int)[])[(Ion.Sulfate, 2), (Ion.Chloride, 1)])
        {
            var over = -IonMath.Dot(in ions, Ion.Charges);
            ions[anion] -= Math.Clamp(over / z, 0, LabelRounding * ions[anion]);
        }

        return ions;
    }

    private static Ions Without(Ions ions, params ReadOnlySpan<int> places)
    {
        foreach (var place in places)
        {
            ions[place] = 0;
        }

        return ions;
    }
}
