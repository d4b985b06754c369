using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Waters;

namespace Ashery.Recipes;

/// <summary>A recipe dissolved.</summary>
public static class RecipeCan
{
    /// <summary>Grams of feed in a litre a recipe is shown at, where nothing else is asked: a common strength for pots.</summary>
    public const double UsualGrams = 1;

    /// <summary>The parts of a recipe in a can of this strength; the labels of its materials count. Refused where a part is not for the can.</summary>
    public static Result<CanReport> Make(Recipe recipe, SourceWater water, double gramsPerLitre = UsualGrams, double celsius = 20)
    {
        var additions = new List<CanAddition>();
        var problems = new List<Problem>();
        foreach (var part in recipe.Parts)
        {
            var material = MaterialInWater.OfBag(part.Material);
            if (material.Ok)
            {
                additions.Add(new(material.Value, part.Share * gramsPerLitre));
            }

            problems.AddRange(material.Ok ? [] : material.Problems);
        }

        return problems.Count > 0 ? Result.Fail<CanReport>(problems) : CanMaker.Make(CanRequest.In(water, additions, celsius, Air.Closed));
    }
}
