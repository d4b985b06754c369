using Ashery.Materials;
using Ashery.Sources;

namespace Ashery.Compatibility;

/// <summary>
/// Dry verdicts: the first row of <c>data/compatibility/dry.json</c> that fits the pair; else the published humidity of the mixture;
/// else two salts with a common ion, which have nothing to exchange; else not known.
/// </summary>
internal sealed class DryRules
{
    private static readonly Judgement Unknown = new(
        Verdict.Unknown, "Nothing published was found on this pair, and its chemistry gives no clear answer.", Citations.NothingFound);

    private readonly PairRules rules;
    private readonly Lazy<Answers>[] answers;
    private readonly MixtureHumidity humidity;

    public DryRules(MixtureHumidity humidity)
    {
        this.humidity = humidity;
        var rows = DataRows.Read("data/compatibility/dry.json", DryRow.Read);
        answers = new Lazy<Answers>[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            answers[i] = new(() => Answer(row));
        }

        rules = new PairRules(rows);
    }

    public (Judgement Today, Judgement Stored) Judge(Material a, Material b)
    {
        if (rules.First(a, b) is >= 0 and var row)
        {
            var answer = answers[row].Value;
            return (answer.Today, answer.Stored);
        }

        return ByHumidity(a, b) ?? ByCommonIon(a, b) ?? (Unknown, Unknown);
    }

    private static Answers Answer(DryRow row)
    {
        var reason = row.Note is null ? row.Reason : $"{row.Reason} {row.Note}";
        var source = Citations.Of(row.Sources);
        Judgement As(Verdict verdict) => verdict == Verdict.Unknown
            ? new(verdict, reason, $"{Citations.NothingFound} {source}")
            : new(verdict, reason, source, verdict == Verdict.Limited ? row.Limit : null, row.HardStop && verdict == Verdict.Stop, row.Basis);
        return new(As(row.Today), As(row.Stored));
    }

    private (Judgement Today, Judgement Stored)? ByHumidity(Material a, Material b)
    {
        if (humidity.Of(a, b) is not { } figure)
        {
            return null;
        }

        var basis = figure.Provenance == Provenance.Seen ? VerdictBasis.Published : VerdictBasis.Recalled;
        var source = Citations.Of([figure.SourceId]);
        var reason = FormattableString.Invariant($"The salts do not react; the mixture takes up water from air above {figure.Value} % relative humidity (30 °C).");
        return (
            new(Verdict.Fine, reason, source, Basis: basis),
            figure.Value >= MixtureHumidity.DryRoom
                ? new(Verdict.Fine, reason, source, Basis: basis)
                : new(Verdict.Limited, reason, source, FormattableString.Invariant($"airtight, below {figure.Value} % relative humidity"), Basis: basis));
    }

    private static (Judgement Today, Judgement Stored)? ByCommonIon(Material a, Material b)
    {
        if (a.CriticalRelativeHumidity is not { } ofA || b.CriticalRelativeHumidity is not { } ofB || a.IsOrganic || b.IsOrganic)
        {
            return null;
        }

        var common = a.Ions.FirstOrDefault(b.Ions.Contains);
        if (common is null or "acid" or "hydroxide" or "carbonate")
        {
            return null;
        }

        var lower = Math.Min(ofA.Value, ofB.Value);
        var source = Citations.Of(["chemistry"]);
        var reason = FormattableString.Invariant($"Both hold {common}, so the dry salts have nothing to exchange. Alone the more hygroscopic of the two takes up water from air above {lower} % relative humidity, the mixture perhaps sooner.");
        return (
            new(Verdict.Fine, reason, source, Basis: VerdictBasis.Chemistry),
            lower >= MixtureHumidity.DryRoom
                ? new(Verdict.Fine, reason, source, Basis: VerdictBasis.Chemistry)
                : new(Verdict.Limited, reason, source, FormattableString.Invariant($"airtight, below {lower} % relative humidity"), Basis: VerdictBasis.Chemistry));
    }

    private sealed record Answers(Judgement Today, Judgement Stored);
}
