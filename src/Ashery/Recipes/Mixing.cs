using Ashery.Blending;
using Ashery.Compatibility;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>From a wish, offers and limits to recipes: the one entry of this room.</summary>
public static class Mixing
{
    /// <summary>
    /// The best blends, what they trade, and what stands in the way. Problems alone when the request itself is wrong;
    /// an answer with <see cref="MixAnswer.OutOfReach"/> when it is right and cannot be met.
    /// </summary>
    public static Result<MixAnswer> Find(MixRequest request) => Find(request, CompatibilityChart.Default);

    /// <summary>The same with a chart of the caller's.</summary>
    public static Result<MixAnswer> Find(MixRequest request, CompatibilityChart chart)
    {
        var wrong = RequestCheck.Check(request);
        if (wrong.Count > 0)
        {
            return Result.Fail<MixAnswer>(wrong);
        }

        var notes = new List<Problem>(LimitCheck.Idle(request));
        var asked = BatchDefaults.Apply(request, notes);
        if (BatchDefaults.Impossible(asked) is { } impossible)
        {
            return Result.Fail<MixAnswer>(impossible);
        }

        return Result.Of(Answer(asked, chart, notes));
    }

    private static MixAnswer Answer(MixRequest request, CompatibilityChart chart, List<Problem> notes)
    {
        var model = MixModel.Build(request, chart);
        var kitchen = new Kitchen(model, chart);
        var free = model.Offers.Count > 0 ? BlendSearch.Find(model.Search) : new BlendAnswer([], Proved: true, Certificate: null);
        var found = kitchen.Measured(free);
        var exact = kitchen.StrongestAtRatio();
        var (outOfReach, nearMiss) = Reach.Judge(kitchen, free, found, exact);
        if (nearMiss is not null)
        {
            notes.Add(new Problem("ratio", nearMiss.Why, Reach.WayOut(nearMiss), Severity.Note));
        }

        var trade = found.Recipes.Count > 0 ? TradeSet.Of(kitchen, found) : new Trade([], Exact: true, Left: 0);
        var instead = found.Recipes.Count > 0 ? Alternatives.Of(kitchen, found.Recipes[0], notes) : new Dictionary<string, Recipe>();
        if (!found.Proved)
        {
            notes.Add(new Problem(
                "proved",
                $"The search stopped before it was through; the best error could be up to {Say.Percent(found.Gap)} lower.",
                "Ask for a smaller batch, a coarser step or fewer materials to have it proved.",
                Severity.Note));
        }

        var certificate = request.Measuring is Measuring.Freely ? free.Certificate : null;
        return new MixAnswer
        {
            Wish = request.Wish,
            Request = request,
            Blends = found.Recipes,
            Proved = found.Proved,
            WholeStepGap = found.Gap,
            FreeError = request.Measuring is not Measuring.Freely && free.Blends.Count > 0 ? free.Blends[0].RatioError : null,
            Certificate = certificate,
            CertificateRows = certificate is null ? [] : [.. model.Search.Rows.Select(static r => r.Name)],
            CertificateBound = certificate is null ? null : CertificateCheck.LowerBound(model.Search, certificate),
            AtExactRatio = exact,
            OutOfReach = outOfReach,
            NearMiss = nearMiss,
            Trade = trade.Recipes,
            TradeExact = trade.Exact,
            TradeLeft = trade.Left,
            Instead = instead,
            LeftOut = [.. model.LeftOut.Select(static l => new LeftOutMaterial(l.Offer.Material.Id, l.Reason))],
            Problems = notes,
        };
    }
}
