using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Limits while they are read: each once, none against another.</summary>
internal sealed class LimitDraft
{
    private readonly double?[] figures = new double?[LimitFigure.Count];
    private readonly List<ContentLimit> contents = [];
    private readonly List<MaterialLimit> materials = [];
    private BlendUse? use;

    public bool OrganicOnly { get; set; }

    public bool SolubleOnly { get; set; }

    public SortedSet<string> Without { get; } = new(StringComparer.Ordinal);

    public Problem? Set(LimitFigure figure, double value)
    {
        if (figures[figure.Index] is not null)
        {
            return Twice(figure.Name);
        }

        figures[figure.Index] = value;
        return null;
    }

    public Problem? SetUse(BlendUse value)
    {
        if (use is not null && use != value)
        {
            return Twice("use");
        }

        use = value;
        return null;
    }

    public Problem? SetContent(Nutrient nutrient, bool atMost, double value)
    {
        var at = contents.FindIndex(c => c.Nutrient == nutrient);
        var limit = at < 0 ? new ContentLimit(nutrient, null, null) : contents[at];
        if ((atMost ? limit.AtMost : limit.AtLeast) is not null)
        {
            return Twice(LabelBasis.Symbol(nutrient));
        }

        Put(contents, at, atMost ? limit with { AtMost = value } : limit with { AtLeast = value });
        return null;
    }

    public Problem? SetMaterial(string id, bool atMost, double value)
    {
        var at = materials.FindIndex(m => m.MaterialId == id);
        var limit = at < 0 ? new MaterialLimit(id, null, null) : materials[at];
        if ((atMost ? limit.AtMost : limit.AtLeast) is not null)
        {
            return Twice($"material {id}");
        }

        Put(materials, at, atMost ? limit with { AtMost = value } : limit with { AtLeast = value });
        return null;
    }

    /// <summary>Limits that cannot hold together whatever the materials.</summary>
    public IEnumerable<Problem> Contradictions()
    {
        foreach (var (nutrient, atLeast, atMost) in contents)
        {
            if (atLeast > atMost)
            {
                yield return Against(LabelBasis.Symbol(nutrient), atLeast.Value, atMost.Value);
            }
        }

        double least = 0;
        foreach (var (id, atLeast, atMost) in materials)
        {
            least += atLeast ?? 0;
            if (atLeast > atMost)
            {
                yield return Against($"material {id}", atLeast.Value, atMost.Value);
            }

            if (atLeast > 0 && Without.Contains(id))
            {
                yield return new Problem($"limit without {id}", $"{id} is wanted and left out at once.", "Drop one of the two limits.");
            }
        }

        if (least > 1)
        {
            yield return new Problem(
                "limit material", $"The least amounts add up to {Say.Percent(least)} of the blend.", "Bring them to 100 % or less.");
        }
    }

    public MixLimits ToLimits() => new()
    {
        UreaShareOfNitrogen = Figure(LimitFigure.Urea),
        AmmoniacalShareOfNitrogen = Figure(LimitFigure.Ammoniacal),
        Chloride = Figure(LimitFigure.Chloride),
        SaltIndex = Figure(LimitFigure.SaltIndex),
        Acidity = Figure(LimitFigure.Acidity),
        CostPerKg = Figure(LimitFigure.Cost),
        Strength = Figure(LimitFigure.Strength),
        OrganicOnly = OrganicOnly,
        SolubleOnly = SolubleOnly,
        Without = Without,
        Contents = Sorted(contents, static (a, b) => a.Nutrient - b.Nutrient),
        Materials = Sorted(materials, static (a, b) => string.CompareOrdinal(a.MaterialId, b.MaterialId)),
        Use = use ?? BlendUse.DryStored,
    };

    private double? Figure(LimitFigure figure) => figures[figure.Index];

    private static void Put<T>(List<T> limits, int at, T limit)
        where T : class
    {
        if (at < 0)
        {
            limits.Add(limit);
        }
        else
        {
            limits[at] = limit;
        }
    }

    private static List<T> Sorted<T>(List<T> limits, Comparison<T> order)
        where T : class
    {
        limits.Sort(order);
        return limits;
    }

    private static Problem Twice(string name) =>
        new($"limit {name}", "It is given twice.", "Give each limit once.");

    private static Problem Against(string name, double atLeast, double atMost) => new(
        $"limit {name}", $"At least {Say.Percent(atLeast)} and at most {Say.Percent(atMost)} cannot both hold.", "Change one of the two.");
}
