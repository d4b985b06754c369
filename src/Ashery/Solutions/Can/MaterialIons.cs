using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Solutions.Can;

/// <summary>From a product to its ions.</summary>
internal static class MaterialIons
{
    // g/mol, standard atomic weights.
    private const double WaterMolarMass = 18.015;

    // Where label and pure salt differ by more than this part, the difference is said.
    private const double WorthSaying = 0.02;

    public static Result<MaterialInWater> Of(Material material, bool byLabel)
    {
        var row = material.Dissolves ? null : BehaviourRow.Of(material);
        if (row is { Refused: true })
        {
            return Result.Fail<MaterialInWater>(material.Id, $"{material.Name} is not for the can: {row.Reason}", row.WayOut);
        }

        if (!material.Dissolves && row is null)
        {
            return Result.Fail<MaterialInWater>(material.Id, $"{material.Name} does not dissolve by what is known of it.", "Leave it out of the can, or say in the garden that the bag dissolves if it does.");
        }

        var salt = material.Formula is { } formula && Salt.TryFind(formula, out var found) ? found : null;
        var made = salt is null ? LabelIons.Of(material, row?.Leaves ?? []) : OfSalt(material, salt, byLabel);
        if (!made.Ok || row is null)
        {
            return made;
        }

        return Result.Of(made.Value with
        {
            Behaviour = row.Verdict == "slow" ? WaterBehaviour.Slow : WaterBehaviour.Partly,
            Assumed = [$"{material.Name}: {row.Reason}", .. made.Value.Assumed],
        }, made.Problems);
    }

    public static MaterialInWater Pure(string id, string name, Salt salt)
    {
        var gives = new (int, double)[salt.Gives.Count];
        for (var i = 0; i < gives.Length; i++)
        {
            gives[i] = (salt.Gives[i].Component, salt.Gives[i].Number / salt.MolarMass);
        }

        return new() { Id = id, Name = name, Salt = salt, Gives = gives, Water = salt.CrystalWater * WaterMolarMass / salt.MolarMass };
    }

    // A bottle is the acid or salt in water; a bag is the pure salt unless its own label says less.
    private static Result<MaterialInWater> OfSalt(Material material, Salt salt, bool byLabel)
    {
        var pure = Pure(material.Id, material.Name, salt) with { Material = material, Solubility = material.Solubility };
        var purity = material.Pure is { } whole ? Purity.Of(material.Label, whole) : 1;
        if (material.IsLiquid)
        {
            return Result.Of(Scaled(pure, purity) with
            {
                Water = (purity * pure.Water) + 1 - purity,
                Assumed = [FormattableString.Invariant($"{material.Name}: {salt.Formula} at {purity * 100:0.#} % by weight, the rest water.")],
            });
        }

        if (!byLabel)
        {
            return Result.Of(pure with { Assumed = Said(material, salt, purity) });
        }

        return Result.Of(Scaled(pure, purity) with
        {
            Undissolved = 1 - purity,
            Assumed = purity > 1 - 1e-6 ? [] : [FormattableString.Invariant($"{material.Name}: by its label {purity * 100:0.#} % {salt.Formula}; the other {(1 - purity) * 100:0.#} % is not counted, neither as ions nor as water.")],
        });
    }

    private static MaterialInWater Scaled(MaterialInWater pure, double purity)
    {
        var gives = new (int, double)[pure.Gives.Count];
        for (var i = 0; i < gives.Length; i++)
        {
            gives[i] = (pure.Gives[i].Component, pure.Gives[i].Moles * purity);
        }

        return pure with { Gives = gives, Water = pure.Water * purity, Purity = purity };
    }

    private static string[] Said(Material material, Salt salt, double purity) => purity >= 1 - WorthSaying ? []
        : [FormattableString.Invariant($"{material.Name} is reckoned as pure {salt.Formula}; a usual bag holds about {purity * 100:0} % of it. Add your bag with its label to have that counted.")];
}
