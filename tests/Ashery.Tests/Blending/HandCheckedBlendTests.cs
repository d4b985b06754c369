using Ashery.Blending;

namespace Ashery.Tests.Blending;

/// <summary>
/// Values worked out by hand: three linear equations in three unknowns for an exact blend, counting for whole grams.
/// </summary>
public class HandCheckedBlendTests
{
    private static readonly Column AmmoniumSulfate = new("ammonium sulfate", [0.21, 0, 0]);
    private static readonly Column Map = new("MAP", [0.12, 0.61, 0]);
    private static readonly Column PotassiumSulfate = new("potassium sulfate", [0, 0, 0.50]);
    private static readonly Column Urea = new("urea", [0.46, 0, 0]);
    private static readonly Column Dap = new("DAP", [0.18, 0.46, 0]);
    private static readonly Column PotassiumChloride = new("potassium chloride", [0, 0, 0.60]);

    private static readonly BlendRequest ThreeSalts = new()
    {
        Columns = [AmmoniumSulfate, Map, PotassiumSulfate], Target = [17, 5, 24],
    };

    private static readonly BlendRequest SixSalts = ThreeSalts with
    {
        Columns = [AmmoniumSulfate, Map, PotassiumSulfate, Urea, Dap, PotassiumChloride],
    };

    [Fact]
    public void Three_salts_have_one_exact_blend_at_17_5_24()
    {
        var answer = BlendSearch.Find(ThreeSalts);
        var best = answer.Blends[0];
        Assert.True(answer.Proved);
        Assert.Equal([0, 1, 2], best.Members);
        Assert.Equal(0.57576, best.MassFractions[0], 5);
        Assert.Equal(0.06188, best.MassFractions[1], 5);
        Assert.Equal(0.36236, best.MassFractions[2], 5);
        Assert.Equal(0, best.RatioError, 12);
        Assert.Equal(0.12834 + 0.03775 + 0.18118, best.Strength, 4);
        Assert.Null(best.CostPerNutrient);
        Assert.True(CertificateCheck.Proves(ThreeSalts, answer.Certificate!, best));
    }

    [Fact]
    public void Six_salts_are_strongest_with_MAP_urea_and_potassium_chloride()
    {
        var strongest = BlendSearch.StrongestAtRatio(SixSalts)!;
        var contents = BlendMeasure.Contents(SixSalts, strongest);
        Assert.Equal([1, 3, 5], strongest.Members);
        Assert.Equal(0.09874, strongest.MassFractions[0], 5);
        Assert.Equal(0.41942, strongest.MassFractions[1], 5);
        Assert.Equal(0.48184, strongest.MassFractions[2], 5);
        Assert.Equal(0.20478, contents[0], 5);
        Assert.Equal(0.06023, contents[1], 5);
        Assert.Equal(0.28910, contents[2], 5);
    }

    [Fact]
    public void Without_chloride_the_strongest_is_weaker()
    {
        var row = new LinearRow("no potassium chloride", [0, 0, 0, 0, 0, 1]);
        var strongest = BlendSearch.StrongestAtRatio(SixSalts with { Rows = [row] })!;
        var contents = BlendMeasure.Contents(SixSalts, strongest);
        Assert.Equal(0.18678, contents[0], 5);
        Assert.Equal(0.05494, contents[1], 5);
        Assert.Equal(0.26369, contents[2], 5);
    }

    [Fact]
    public void Grade_17_5_24_is_out_of_reach_of_three_salts()
    {
        var grade = ThreeSalts with { Target = [0.17, 0.05, 0.24] };
        var nearest = BlendSearch.NearestToGrade(grade)!;
        Assert.True(nearest.Shortfall > 0.01);
        Assert.NotNull(nearest.FallsShort);
        Assert.Equal(0, BlendSearch.NearestToGrade(ThreeSalts with { Target = [0.12, 0.035, 0.18] })!.Shortfall, 9);
    }

    [Fact]
    public void Fifteen_grams_of_three_salts_in_whole_grams_are_8_1_6()
    {
        var answer = WholeStepSearch.Find(Steps(ThreeSalts, 15, 15));
        Assert.True(answer.Proved);
        Assert.Equal(0, answer.Gap);
        Assert.Equal([8, 1, 6], answer.Blends[0].Steps);
        Assert.Equal(15, answer.Blends[0].Grams, 9);
        var contents = BlendMeasure.Contents(ThreeSalts, answer.Blends[0].Blend);
        Assert.Equal(0.12, contents[0], 4);
        Assert.Equal(0.0407, contents[1], 4);
        Assert.Equal(0.20, contents[2], 4);
    }

    [Fact]
    public void By_largest_deviation_fifteen_grams_would_be_9_1_5()
    {
        var answer = WholeStepSearch.Find(Steps(ThreeSalts with { Best = 200 }, 15, 15));
        Assert.Equal([9, 1, 5], answer.Blends.MinBy(b => b.Blend.LargestDeviation)!.Steps);
    }

    [Fact]
    public void Fifteen_grams_of_six_salts_are_9_1_1_4()
    {
        var answer = WholeStepSearch.Find(Steps(SixSalts, 15, 15));
        Assert.True(answer.Proved);
        Assert.Equal([0, 1, 2, 5], answer.Blends[0].Blend.Members);
        Assert.Equal([9, 1, 1, 4], answer.Blends[0].Steps);
        Assert.Equal(0.0128, answer.Blends[0].Blend.RatioError, 4);
    }

    [Fact]
    public void Up_to_fifteen_grams_of_six_salts_eight_grams_are_best()
    {
        var answer = WholeStepSearch.Find(Steps(SixSalts, 0, 15));
        Assert.True(answer.Proved);
        Assert.Equal([2, 3, 4, 5], answer.Blends[0].Blend.Members);
        Assert.Equal([2, 3, 1, 2], answer.Blends[0].Steps);
        Assert.Equal(0.0013, answer.Blends[0].Blend.RatioError, 4);
    }

    private static WholeStepRequest Steps(BlendRequest blend, double from, double to) => new()
    {
        Blend = blend, StepGrams = [.. blend.Columns.Select(_ => 1.0)], FromGrams = from, ToGrams = to,
    };
}
