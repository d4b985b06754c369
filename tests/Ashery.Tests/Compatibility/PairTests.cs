using Ashery.Compatibility;
using Ashery.Materials;

namespace Ashery.Tests.Compatibility;

public class PairTests
{
    [Theory]
    [InlineData("ammonium-nitrate", "urea", Verdict.Stop, Verdict.Stop, Verdict.Fine)]
    [InlineData("calcium-nitrate-tetrahydrate", "epsom-salt", Verdict.Limited, Verdict.Stop, Verdict.Stop)]
    [InlineData("ammonium-sulfate", "wood-ash", Verdict.Stop, Verdict.Stop, Verdict.Stop)]
    [InlineData("potassium-nitrate", "neem-cake", Verdict.Stop, Verdict.Stop, Verdict.Stop)]
    [InlineData("ammonium-sulfate", "map-granular", Verdict.Fine, Verdict.Fine, Verdict.Limited)]
    [InlineData("ammonium-sulfate", "potassium-sulfate", Verdict.Fine, Verdict.Fine, Verdict.Limited)]
    [InlineData("map-granular", "potassium-sulfate", Verdict.Fine, Verdict.Fine, Verdict.Limited)]
    [InlineData("urea", "calcitic-lime", Verdict.Fine, Verdict.Limited, Verdict.Stop)]
    [InlineData("ammonium-sulfate", "calcitic-lime", Verdict.Stop, Verdict.Stop, Verdict.Stop)]
    public void Answers_the_three_questions_apart(string a, string b, Verdict today, Verdict stored, Verdict inSolution)
    {
        var pair = Judge(a, b);
        Assert.Equal((today, stored, inSolution), (pair.DryToday.Verdict, pair.DryStored.Verdict, pair.InSolution.Verdict));
    }

    // Each statement was read in the source named: the International Plant Nutrition Institute's list SEAP-3024 (2013), the
    // Oregon State University Extension sheet on wood ash (2011), Raison and McGarity (1978, abstract), Fan and others (1996,
    // abstract), Commercial Gardening vol. 1 on mixing manures, and the humidity table reprinted in "Critical relative humidity".
    [Theory]
    [InlineData("urea", "calcium-ammonium-nitrate", Verdict.Stop, Verdict.Stop, "International Plant Nutrition Institute")]
    [InlineData("urea", "tsp", Verdict.Limited, Verdict.Stop, "International Plant Nutrition Institute")]
    [InlineData("urea", "map-technical", Verdict.Fine, Verdict.Limited, "Fan M.X.")]
    [InlineData("urea", "potassium-sulfate", Verdict.Fine, Verdict.Limited, "International Plant Nutrition Institute")]
    [InlineData("urea", "wood-ash", Verdict.Limited, Verdict.Stop, "Oregon State University")]
    [InlineData("ammonium-nitrate", "wood-ash", Verdict.Stop, Verdict.Stop, "Oregon State University")]
    [InlineData("ammonium-sulfate", "wood-ash", Verdict.Stop, Verdict.Stop, "Raison R.J.")]
    [InlineData("map-granular", "rock-phosphate", Verdict.Limited, Verdict.Limited, "International Plant Nutrition Institute")]
    [InlineData("map-granular", "calcitic-lime", Verdict.Stop, Verdict.Stop, "International Plant Nutrition Institute")]
    [InlineData("ssp", "calcitic-lime", Verdict.Limited, Verdict.Stop, "International Plant Nutrition Institute")]
    [InlineData("calcium-ammonium-nitrate", "potassium-chloride", Verdict.Limited, Verdict.Stop, "International Plant Nutrition Institute")]
    [InlineData("ammonium-sulfate", "ssp", Verdict.Fine, Verdict.Fine, "Commercial gardening")]
    [InlineData("ammonium-sulfate", "potassium-sulfate", Verdict.Fine, Verdict.Fine, "Commercial gardening")]
    [InlineData("sodium-nitrate", "ssp", Verdict.Limited, Verdict.Stop, "Commercial gardening")]
    [InlineData("composted-horse-manure", "calcitic-lime", Verdict.Stop, Verdict.Stop, "Commercial gardening")]
    [InlineData("potassium-sulfate", "dap-granular", Verdict.Fine, Verdict.Fine, "International Plant Nutrition Institute")]
    [InlineData("ammonium-sulfate", "urea", Verdict.Fine, Verdict.Limited, "Critical relative humidity")]
    public void Published_dry_verdicts_name_what_was_read(string a, string b, Verdict today, Verdict stored, string source)
    {
        var pair = Judge(a, b);
        Assert.Equal((today, stored), (pair.DryToday.Verdict, pair.DryStored.Verdict));
        Assert.Equal(VerdictBasis.Published, pair.DryStored.Basis);
        Assert.Contains(source, pair.DryStored.Source, StringComparison.Ordinal);
    }

    // Rottenberg, "Interaction among fertilizers (compatibility)", read: these pairs bring a salt down.
    [Theory]
    [InlineData("calcium-nitrate-tetrahydrate", "ammonium-sulfate", Verdict.Stop)]
    [InlineData("calcium-nitrate-tetrahydrate", "map-technical", Verdict.Stop)]
    [InlineData("iron-sulfate-heptahydrate", "map-technical", Verdict.Stop)]
    [InlineData("magnesium-nitrate-hexahydrate", "dap-technical", Verdict.Stop)]
    [InlineData("magnesium-nitrate-hexahydrate", "map-technical", Verdict.Limited)]
    public void Published_solution_verdicts_name_what_was_read(string a, string b, Verdict verdict)
    {
        var answer = Judge(a, b).InSolution;
        Assert.Equal(verdict, answer.Verdict);
        Assert.Contains("Rottenberg", answer.Source, StringComparison.Ordinal);
        Assert.Equal(VerdictBasis.Published, answer.Basis);
    }

    [Theory]
    [InlineData("neem-cake", "epsom-salt")]
    [InlineData("blood-meal", "map-granular")]
    [InlineData("zinc-oxide", "potassium-nitrate")]
    public void Says_not_known_where_nothing_published_says_so(string a, string b)
    {
        var stored = Judge(a, b).DryStored;
        Assert.Equal(Verdict.Unknown, stored.Verdict);
        Assert.Equal(VerdictBasis.None, stored.Basis);
        Assert.StartsWith("No publication was found", stored.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_material_with_itself_is_fine() =>
        Assert.All(MaterialCatalogue.Default.All, m =>
        {
            var pair = CompatibilityChart.Default.Judge(m, m);
            Assert.Equal((Verdict.Fine, Verdict.Fine, Verdict.Fine), (pair.DryToday.Verdict, pair.DryStored.Verdict, pair.InSolution.Verdict));
        });

    private static PairVerdict Judge(string a, string b) =>
        CompatibilityChart.Default.Judge(MaterialCatalogue.Default.Find(a)!, MaterialCatalogue.Default.Find(b)!);
}
