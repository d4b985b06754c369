using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>
/// Two materials in one concentrated solution: rules of their ions, what does not dissolve clear, and how strong the stock may be.
/// Of all that applies the worst counts.
/// </summary>
internal sealed class SolutionRules
{
    private readonly PairRules rules;
    private readonly Lazy<Judgement>[] answers;
    private readonly List<ResidueRow> residues;
    private readonly StockStrength strength = new();

    public SolutionRules()
    {
        var rows = DataRows.Read("data/compatibility/solution.json", SolutionRow.Read);
        answers = new Lazy<Judgement>[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            answers[i] = new(() => Answer(row));
        }

        rules = new PairRules(rows);
        residues = DataRows.Read("data/compatibility/residue.json", ResidueRow.Read);
    }

    public Judgement Judge(Material a, Material b)
    {
        var found = new List<Judgement>();
        foreach (var row in rules.All(a, b))
        {
            found.Add(answers[row].Value);
        }

        Residue(a, found);
        Residue(b, found);
        if (found.Exists(static j => j.Verdict == Verdict.Stop))
        {
            return Worst(found);
        }

        if ((a.Dissolves && a.Ions.Count == 0) || (b.Dissolves && b.Ions.Count == 0))
        {
            found.Add(new(Verdict.Unknown, $"What {(a.Ions.Count == 0 ? a.Name : b.Name)} sends into solution is not known.", Citations.NothingFound));
            return Worst(found);
        }

        if (strength.Of(a, b) is { } bound && (bound.SaltSolubility < StockStrength.LimitsAConcentrate || found.Exists(static j => j.Verdict == Verdict.Limited)))
        {
            found.Add(new(
                Verdict.Limited,
                bound.SaltSolubility < StockStrength.LimitsAConcentrate ? $"They stay clear up to a strength set by {bound.Salt}." : "Both are very soluble.",
                Citations.Of(["crc-sol"]),
                bound.Words,
                Basis: VerdictBasis.Computed));
        }

        return found.Count > 0
            ? Worst(found)
            : new(Verdict.Fine, "None of their ions makes a salt that comes down.", Citations.Of(["haifa-interaction", "chemistry"]), Basis: VerdictBasis.Chemistry);
    }

    private static Judgement Answer(SolutionRow row)
    {
        var reason = row.Reason;
        if (row.Note is not null)
        {
            reason += " " + row.Note;
        }

        if (row.Feed is not null)
        {
            reason += " " + row.Feed;
        }

        return new(row.Verdict, reason, Citations.Of(row.Sources), row.Verdict == Verdict.Limited ? row.Limit : null, row.HardStop, row.Basis, row.Feed is not null);
    }

    private void Residue(Material m, List<Judgement> found)
    {
        if (m.Dissolves)
        {
            return;
        }

        var traits = MaterialTraits.Of(m);
        foreach (var row in residues)
        {
            if (Selector.Any(row.A, m, traits))
            {
                found.Add(new(row.Verdict, $"{m.Name}: {row.Reason}.", Citations.Of(["chemistry"]), row.Limit, Basis: VerdictBasis.Chemistry));
                return;
            }
        }
    }

    // A stop outranks the unknown, and that outranks a limit: what is not known must not look like a mere limit.
    private static int Rank(Verdict verdict) => verdict switch
    {
        Verdict.Stop => 3,
        Verdict.Unknown => 2,
        Verdict.Limited => 1,
        _ => 0,
    };

    /// <summary>The worst verdict with all the reasons for it, hard stops first.</summary>
    private static Judgement Worst(List<Judgement> found)
    {
        var rank = found.Max(static j => Rank(j.Verdict));
        var worst = found.Where(j => Rank(j.Verdict) == rank).OrderByDescending(static j => j.IsHardStop).ThenBy(static j => j.Reason, StringComparer.Ordinal).ToList();
        return worst[0] with
        {
            Reason = Joined(worst, static j => j.Reason, " "),
            Source = Joined(worst, static j => j.Source, " "),
            Limit = rank == 1 ? Joined(worst, static j => j.Limit, "; ") : null,
            Basis = worst.Max(static j => j.Basis),
            OnlyInStock = worst.TrueForAll(static j => j.OnlyInStock),
        };
    }

    private static string Joined(List<Judgement> worst, Func<Judgement, string?> part, string between) =>
        string.Join(between, worst.Select(part).Where(static text => text is not null).Distinct(StringComparer.Ordinal));
}
