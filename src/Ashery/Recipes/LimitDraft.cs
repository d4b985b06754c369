using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Limits while they are read: each once, none against another.</summary>
internal sealed class LimitDraft
{
    private readonly Dictionary<string, double> figures = [];
    private readonly SortedDictionary<Nutrient, (double? AtLeast, double? AtMost)> contents = [];
    private readonly SortedDictionary<string, (double? AtLeast, double? AtMost)> materials = new(StringComparer.Ordinal);
    private BlendUse? use;

    public bool OrganicOnly { get; set; }

    public bool SolubleOnly { get; set; }

    public SortedSet<string> Without { get; } = new(StringComparer.Ordinal);

    public Problem? Set(LimitFigure figure, double value) =>
        figures.TryAdd(figure.Name, value) ? null : Twice(figure.Name);

    public Problem? SetUse(BlendUse value)
    {
        if (use is not null && use != value)
        {
            return Twice("use");
        }

        use = value;
        return null;
    }

    public Problem? SetContent(Nutrient nutrient, bool atMost, double value) =>
        SetPair(contents, nutrient, LabelBasis.Symbol(nutrient), atMost, value);

    public Problem? SetMaterial(string id, bool atMost, double value) =>
        SetPair(materials, id, $"material {id}", atMost, value);

    /// <summary>Limits that cannot hold together whatever the materials.</summary>
    public IEnumerable<Problem> Contradictions()
    {
        foreach (var (nutrient, (atLeast, atMost)) in contents)
        {
            if (atLeast > atMost)
            {
                yield return Against(LabelBasis.Symbol(nutrient), atLeast.Value, atMost.Value);
            }
        }

        foreach (var (id, (atLeast, atMost)) in materials)
        {
            if (atLeast > atMost)
            {
                yield return Against($"material {id}", atLeast.Value, atMost.Value);
            }

            if (atLeast > 0 && Without.Contains(id))
            {
                yield return new Problem($"limit without {id}", $"{id} is wanted and left out at once.", "Drop one of the two limits.");
            }
        }

        var least = materials.Values.Sum(static m => m.AtLeast ?? 0);
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
        Contents = [.. contents.Select(static c => new ContentLimit(c.Key, c.Value.AtLeast, c.Value.AtMost))],
        Materials = [.. materials.Select(static m => new MaterialLimit(m.Key, m.Value.AtLeast, m.Value.AtMost))],
        Use = use ?? BlendUse.DryStored,
    };

    private double? Figure(LimitFigure figure) => figures.TryGetValue(figure.Name, out var value) ? value : null;

    private static Problem? SetPair<TKey>(
        SortedDictionary<TKey, (double? AtLeast, double? AtMost)> pairs, TKey key, string name, bool atMost, double value)
        where TKey : notnull
    {
        var (least, most) = pairs.GetValueOrDefault(key);
        if ((atMost ? most : least) is not null)
        {
            return Twice(name);
        }

        pairs[key] = atMost ? (least, value) : (value, most);
        return null;
    }

    private static Problem Twice(string name) =>
        new($"limit {name}", "It is given twice.", "Give each limit once.");

    private static Problem Against(string name, double atLeast, double atMost) => new(
        $"limit {name}", $"At least {Say.Percent(atLeast)} and at most {Say.Percent(atMost)} cannot both hold.", "Change one of the two.");
}
