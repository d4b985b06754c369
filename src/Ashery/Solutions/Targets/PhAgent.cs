using Ashery.Materials;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>What brings a feed to its pH: an acid from a bottle, or a material that acts as an acid or a base.</summary>
/// <param name="Material">What a gram of it gives.</param>
/// <param name="Bottle">The bottle, for millilitres and cautions; null for a material.</param>
public sealed record PhAgent(MaterialInWater Material, AcidBottle? Bottle = null)
{
    /// <summary>mol of alkalinity a gram takes away; negative for a base.</summary>
    public double Acidity
    {
        get
        {
            var sum = 0.0;
            foreach (var (component, moles) in Material.Gives)
            {
                var c = Chemistry.Default.Components[component];
                sum -= moles * (c.AlkalinityProtons + c.Charge);
            }

            return sum;
        }
    }

    /// <summary>mL of so many grams; null for what is weighed.</summary>
    public double? Millilitres(double grams) => Bottle?.Density is { } density ? grams / density : null;

    public static PhAgent Of(AcidBottle bottle)
    {
        var pure = bottle.Acid.Pure;
        return new(
            new MaterialInWater
            {
                Id = bottle.Acid.Id + "-acid",
                Name = FormattableString.Invariant($"{bottle.Acid.Name} {bottle.Strength * 100:0.#} %"),
                Salt = pure,
                Purity = bottle.Strength,
                Gives = [.. pure.Gives.Select(g => (g.Component, g.Number * bottle.Strength / pure.MolarMass))],
                Water = 1 - bottle.Strength,
                Material = MaterialCatalogue.Default.Find(bottle.Acid.MaterialId),
            },
            bottle);
    }
}
