using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Checks limits that may come from a page or a file rather than through <see cref="LimitReader"/>.</summary>
internal static class LimitCheck
{
    public static void Check(MixRequest request, List<Problem> problems)
    {
        var limits = request.Limits;
        Fraction("urea", limits.UreaShareOfNitrogen);
        Fraction("ammoniacal", limits.AmmoniacalShareOfNitrogen);
        Fraction("chloride", limits.Chloride);
        Fraction("strength", limits.Strength);
        Number("salt-index", limits.SaltIndex, 0);
        Number("acidity", limits.Acidity, -10);
        Number("cost", limits.CostPerKg, 0);
        foreach (var content in limits.Contents)
        {
            Fraction(Nutrients.LabelBasis.Symbol(content.Nutrient), content.AtLeast);
            Fraction(Nutrients.LabelBasis.Symbol(content.Nutrient), content.AtMost);
        }

        foreach (var material in limits.Materials)
        {
            Fraction($"material {material.MaterialId}", material.AtLeast);
            Fraction($"material {material.MaterialId}", material.AtMost);
            if (material.AtLeast > 0 && !IsOffered(request, material.MaterialId))
            {
                problems.Add(new Problem(
                    $"limit material {material.MaterialId}", "It is wanted in the blend and is not among the materials.", "Add it to the materials, or drop the limit."));
            }
        }

        void Fraction(string name, double? value) => Add(name, value, 0, 1.000001, "between 0 and 100 %");

        void Number(string name, double? value, double least) => Add(name, value, least, 1e9, "a number in range");

        void Add(string name, double? value, double least, double most, string words)
        {
            if (value is { } v && !(v >= least && v <= most))
            {
                problems.Add(new Problem($"limit {name}", $"It is not {words}.", "Change it, or leave the limit out."));
            }
        }
    }

    /// <summary>Limits that name a material nobody offered: harmless, and worth saying.</summary>
    public static IEnumerable<Problem> Idle(MixRequest request)
    {
        foreach (var id in request.Limits.Without.Concat(request.Limits.Materials.Where(static m => !(m.AtLeast > 0)).Select(static m => m.MaterialId)))
        {
            if (!IsOffered(request, id))
            {
                yield return new Problem($"limit {id}", $"{id} is not among the materials.", "The limit changes nothing.", Severity.Note);
            }
        }
    }

    private static bool IsOffered(MixRequest request, string id) => request.Offers.Any(o => o.Material.Id == id);
}
