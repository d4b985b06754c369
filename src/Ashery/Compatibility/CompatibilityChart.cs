using Ashery.Materials;

namespace Ashery.Compatibility;

/// <summary>Judges pairs of materials by published verdicts, by the chemistry of their ions, and says "not known" where nothing says so.</summary>
public sealed class CompatibilityChart
{
    private static readonly Lazy<CompatibilityChart> Shipped = new(static () => new());

    private static readonly Judgement Same = new(Verdict.Fine, "The same material.", "No question arises.", Basis: VerdictBasis.Chemistry);

    private readonly DryRules dry;
    private readonly Lazy<SolutionRules> solution = new(static () => new());

    private CompatibilityChart()
    {
        Humidity = MixtureHumidity.Read();
        dry = new DryRules(Humidity);
    }

    /// <summary>The chart of <c>data/compatibility</c>, read at first use.</summary>
    public static CompatibilityChart Default => Shipped.Value;

    internal MixtureHumidity Humidity { get; }

    /// <summary>Dry today, dry and stored, in concentrated solution. The order of the two does not matter.</summary>
    public PairVerdict Judge(Material a, Material b)
    {
        if (a.Id == b.Id)
        {
            return new(a.Id, b.Id, Same, Same, Same);
        }

        var (first, second) = InOrder(a, b);
        var (today, stored) = dry.Judge(first, second);
        return new(a.Id, b.Id, today, stored, solution.Value.Judge(first, second));
    }

    /// <summary>Only the two dry questions: what a search over a whole shelf asks.</summary>
    public (Judgement Today, Judgement Stored) JudgeDry(Material a, Material b)
    {
        if (a.Id == b.Id)
        {
            return (Same, Same);
        }

        var (first, second) = InOrder(a, b);
        return dry.Judge(first, second);
    }

    /// <summary>Every pair of a list, each once, in the order of the list.</summary>
    public IReadOnlyList<PairVerdict> JudgeAll(IReadOnlyList<Material> materials)
    {
        var pairs = new List<PairVerdict>(materials.Count * Math.Max(0, materials.Count - 1) / 2);
        for (var i = 0; i < materials.Count; i++)
        {
            for (var j = i + 1; j < materials.Count; j++)
            {
                pairs.Add(Judge(materials[i], materials[j]));
            }
        }

        return pairs;
    }

    // Judged in the order of their ids and named in the caller's, so that the words do not depend on who comes first.
    private static (Material First, Material Second) InOrder(Material a, Material b) =>
        string.CompareOrdinal(a.Id, b.Id) <= 0 ? (a, b) : (b, a);
}
