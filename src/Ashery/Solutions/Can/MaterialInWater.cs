using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>How a material goes into water.</summary>
public enum WaterBehaviour
{
    /// <summary>Dissolves clear.</summary>
    Clear,

    /// <summary>All of it in the end, over hours or days.</summary>
    Slow,

    /// <summary>A part of it never does.</summary>
    Partly,
}

/// <summary>What a gram of a product, as it is weighed, gives to water.</summary>
public sealed record MaterialInWater
{
    /// <summary>Id of the catalogue or of the bag, or the formula.</summary>
    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>The pure salt behind it; null where the label alone is known.</summary>
    public Salt? Salt { get; init; }

    /// <summary>g of that salt in a gram of product.</summary>
    public double Purity { get; init; } = 1;

    /// <summary>mol of each component (by index of <see cref="Chemistry.Components"/>) that a gram of product gives; each component once.</summary>
    public required IReadOnlyList<(int Component, double Moles)> Gives { get; init; }

    /// <summary>g of water a gram of product brings: that of crystals, of a bottle of acid, of a liquid.</summary>
    public double Water { get; init; }

    /// <summary>g of a gram of product that stays undissolved.</summary>
    public double Undissolved { get; init; }

    public WaterBehaviour Behaviour { get; init; }

    /// <summary>g of product a kg of added water takes up, by °C ascending, from the catalogue; empty where not known.</summary>
    public IReadOnlyList<SolubilityPoint> Solubility { get; init; } = [];

    /// <summary>What was assumed to get from the product to its ions, in a grower's words.</summary>
    public IReadOnlyList<string> Assumed { get; init; } = [];

    /// <summary>The catalogue row or bag; null for a formula.</summary>
    public Material? Material { get; init; }

    /// <summary>Nutrient content by the ions it gives, g a gram of product, element basis.</summary>
    public double Content(Nutrient nutrient) => IonNutrients.GramsOf(nutrient, Gives);

    /// <summary>
    /// A material of the catalogue or a grower's bag. A salt is reckoned as the pure salt of its formula unless the bag has a label of its own;
    /// a product without formula by its label. Refused, with the reason, where it does not dissolve.
    /// </summary>
    public static Result<MaterialInWater> Of(Material material) => MaterialIons.Of(material, material.SourceId == "label");

    /// <summary>A bag at hand: its label counts even where it is the usual one, so that no more of the salt is reckoned than it leaves room for.</summary>
    public static Result<MaterialInWater> OfBag(Material material) => MaterialIons.Of(material, byLabel: true);

    /// <summary>A pure salt or acid by its formula, as <c>K2SO4</c>; a full stop or an asterisk may stand for the raised dot of a hydrate.</summary>
    public static Result<MaterialInWater> OfFormula(string formula) => Salt.TryFind(formula, out var salt)
        ? Result.Of(MaterialIons.Pure(salt.Formula, salt.Formula, salt))
        : Result.Fail<MaterialInWater>("formula", $"{Quantities.NumberReader.Shown(formula)} is not a salt or acid the chemistry knows.",
            "Take a formula such as K2SO4, MgSO4.7H2O or HNO3, or a material of the catalogue.");
}
