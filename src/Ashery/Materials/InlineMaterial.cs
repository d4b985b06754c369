using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>
/// A material named on the command line, with its own label if it has one: <c>urea</c> or <c>urea=46-0-0</c>. The label replaces N, P2O5 and
/// K2O, and keeps the proportions of the nitrogen forms and the other contents.
/// </summary>
public static class InlineMaterial
{
    private static readonly Nutrient[] Primary = [Nutrient.N, Nutrient.P, Nutrient.K];

    /// <summary>The material; notes say what was kept from the catalogue and what a purer grade brings along.</summary>
    public static Result<Material> Parse(string text, MaterialCatalogue catalogue)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        var id = (equals < 0 ? text : text[..equals]).Trim();
        if (id.Length == 0)
        {
            return Result.Fail<Material>("material", "has no name.", "Name a material of the catalogue, such as urea or urea=46-0-0.");
        }

        if (catalogue.Find(id) is not { } material)
        {
            return Result.Fail<Material>(Unknown(id, catalogue));
        }

        if (equals < 0)
        {
            return Result.Of(material);
        }

        var grade = GradeReader.Read(text[(equals + 1)..], id);
        return grade.Ok ? WithGrade(material, grade.Value, catalogue) : Result.Fail<Material>(grade.Problems);
    }

    /// <summary>The problem of an id that is not in the catalogue, with the nearest names.</summary>
    public static Problem Unknown(string id, MaterialCatalogue catalogue)
    {
        var near = catalogue.Suggest(id);
        return new Problem(
            "material",
            $"'{NumberReader.Shown(id)}' is not in the catalogue.",
            near.Count == 0 ? "See all names with: ashery materials." : $"Did you mean {string.Join(" or ", near)}?");
    }

    /// <summary>A catalogue material with another grade on its bag.</summary>
    public static Result<Material> WithGrade(Material material, LabelAnalysis grade, MaterialCatalogue catalogue)
    {
        if (Distance(grade, material.Label) < 1e-9)
        {
            return Result.Of(material);
        }

        var technical = material.TechnicalGrade is { } t ? catalogue.Find(t) : null;
        var limit = material.Pure is not null ? material : technical;
        var problems = PureLimit.Check(material.Id, grade, Primary, limit, material.Name);
        if (problems.Count > 0)
        {
            return Result.Fail<Material>(problems);
        }

        var isTechnical = technical is not null && Distance(grade, technical.Label) < Distance(grade, material.Label);
        var basis = isTechnical ? technical! with { Id = material.Id, Name = material.Name, TechnicalGrade = material.TechnicalGrade } : material;
        var relabelled = Relabel.Apply(basis, grade, Primary, forms: null, field: material.Id, out var notes);
        notes.Add(isTechnical ? TechnicalNote(material, technical!) : Relabel.Kept(material));
        return Result.Of(relabelled, notes);
    }

    private static Problem TechnicalNote(Material material, Material technical) => new(
        material.Id,
        FormattableString.Invariant($"the label is that of the technical grade: {technical.Id}'s sulfur ({technical.Label.Percent(Nutrient.S):0.#} %), bulk density ({technical.BulkDensity?.Typical:0.##} g/mL), solubility, salt index and lime equivalent are taken, not those of the trade grade."),
        "Weigh ten scoops of your own bag if you measure by scoop.",
        Severity.Note);

    private static double Distance(LabelAnalysis a, LabelAnalysis b)
    {
        var sum = 0.0;
        foreach (var n in Primary)
        {
            sum += Math.Abs(a[n] - b[n]);
        }

        return sum;
    }
}
