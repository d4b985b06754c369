using Ashery.Blending;

namespace Ashery.Tests.Blending;

/// <summary>
/// Values worked out by hand (three linear equations in three unknowns for the one exact blend; nutrient shares of the
/// contents in percent by weight).
/// </summary>
public class HandCheckedBlendTests
{
    internal static readonly Column AmmoniumSulfate = new("ammonium sulfate", [0.21, 0, 0]);
    internal static readonly Column Map = new("MAP", [0.12, 0.61, 0]);
    internal static readonly Column PotassiumSulfate = new("potassium sulfate", [0, 0, 0.50]);
    internal static readonly Column Urea = new("urea", [0.46, 0, 0]);
    internal static readonly Column Dap = new("DAP", [0.18, 0.46, 0]);
    internal static readonly Column PotassiumChloride = new("potassium chloride", [0, 0, 0.60]);

    [Fact]
    public void Three_salts_have_one_exact_blend_at_17_5_24()
    {
        var answer = BlendSearch.Find(new BlendRequest { Columns = [AmmoniumSulfate, Map, PotassiumSulfate], Target = [17, 5, 24] });
        var best = answer.Blends[0];
        Assert.True(answer.Proved);
        Assert.Equal([0, 1, 2], best.Members);
        Assert.Equal(0.57576, best.MassFractions[0], 5);
        Assert.Equal(0.06188, best.MassFractions[1], 5);
        Assert.Equal(0.36236, best.MassFractions[2], 5);
        Assert.Equal(0, best.RatioError, 12);
        Assert.Equal(0.12834 + 0.03775 + 0.18118, best.Strength, 4);
        Assert.Null(best.CostPerNutrient);
    }
}
