using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Tests.Solutions.Can;

/// <summary>Every material of the catalogue has an answer: its ions, or why it is not for the can.</summary>
public class CatalogueWalkTests
{
    public static TheoryData<string> Ids => [.. MaterialCatalogue.Default.All.Select(m => m.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_material_has_ions_or_a_reason(string id)
    {
        var material = MaterialCatalogue.Default.Find(id)!;
        var made = MaterialInWater.Of(material);
        Assert.False(material.Dissolves && !made.Ok, "said to dissolve and refused");
        Assert.False(material.IsOrganic && made.Ok, "an organic meal with ions");
        if (!made.Ok)
        {
            Assert.All(made.Problems, p => Assert.True(p.Message.Length > 20 && p.WayOut.Length > 10, p.ToString()));
            return;
        }

        // What it gives and brings may not weigh more than it does (phosphate with up to two protons, boric acid from borates takes up water).
        var grams = made.Value.Gives.Sum(g => g.Moles * Chemistry.Default.Components[g.Component].MolarMass) + made.Value.Water;
        Assert.InRange(grams, 0.05, made.Value.Gives.Any(g => Chemistry.Default.Components[g.Component].Name == "borate") ? 1.8 : 1.06);
        Assert.All(made.Value.Gives, g => Assert.True(g.Moles > 0));
        Assert.Equal(made.Value.Gives.Count, made.Value.Gives.Select(g => g.Component).Distinct().Count());
        Assert.True(material.Dissolves || made.Value.Behaviour != WaterBehaviour.Clear);
    }

    // The label and the ions are two routes to the same content: they agree but for the purity of trade grades, which is said.
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_ions_hold_what_the_label_says(string id)
    {
        var material = MaterialCatalogue.Default.Find(id)!;
        if (MaterialInWater.Of(material) is not { Ok: true, Value: var made })
        {
            return;
        }

        var elements = material.Label.ToElements();
        foreach (var n in material.Label.Present)
        {
            // Iron-free leftovers of a trade grade (a percent of chloride or sodium) are not part of its formula; a limestone residue stays.
            var minor = elements[n] < 0.021;
            var left = id == "calcium-ammonium-nitrate" && n is Nutrient.Ca or Nutrient.Mg;
            left |= n == Nutrient.Na && made.Assumed.Any(a => a.Contains("reckoned as sodium", StringComparison.Ordinal));
            if (!minor && !left)
            {
                Assert.True(Math.Abs((made.Content(n) / elements[n]) - 1) < 0.17, FormattableString.Invariant($"{n}: {made.Content(n):P2} in the ions, {elements[n]:P2} on the label"));
            }
        }
    }
}
