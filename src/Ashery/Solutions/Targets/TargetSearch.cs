using Ashery.Blending.Amounts;
using Ashery.Compatibility;
using Ashery.Problems;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>From a wish for a solution to recipes in this water: the one entry of this room.</summary>
public static class TargetSearch
{
    /// <summary>
    /// The best recipes for the target, with what each becomes. Problems alone when the request itself is wrong; an answer with
    /// <see cref="TargetAnswer.OutOfReach"/> when it is right and cannot be met.
    /// </summary>
    public static Result<TargetAnswer> Find(TargetRequest request)
    {
        var wrong = TargetCheck.Of(request);
        if (wrong.Count > 0)
        {
            return Result.Fail<TargetAnswer>(wrong);
        }

        var notes = new List<Problem>();
        var safe = request with { Offers = [.. request.Offers.Where(o => MayMeetAgent(request, o, notes))] };
        return safe.Offers.Count > 0 ? Answer(safe, notes) : Result.Fail<TargetAnswer>(notes);
    }

    // Some materials must not meet the acid, however little of both.
    private static bool MayMeetAgent(TargetRequest request, TargetOffer offer, List<Problem> notes)
    {
        if (request.Agent is not { } agent || offer.Material.Material is not { } material
            || agent.Material.Material is not { } acid
            || material.Id == acid.Id
            || CompatibilityChart.Default.Judge(acid, material).InSolution is not { IsHardStop: true, OnlyInStock: false } judged)
        {
            return true;
        }

        notes.Add(new("acid", $"{material.Name} is left out beside {agent.Material.Name}: {judged.Reason}", "Take another acid to use it.", Severity.Warning));
        return false;
    }

    private static Result<TargetAnswer> Answer(TargetRequest request, List<Problem> notes)
    {
        var model = new TargetModel(request);
        var tuning = new TargetTuning(model);
        var state = tuning.Run();
        var recipes = new List<TargetRecipe>();
        var proved = state is { Answer.Proved: true };
        if (state is not null)
        {
            var sets = AmountSearch.Find(model.Search(state.Strength, state.Dose, best: request.Best));
            proved = sets.Proved && (sets.Blends.Count == 0 || sets.Blends[0].Error >= state.Blend.Error - 1e-9);
            var first = Made(model, state, tuning, null, out var whole);
            if (!first.Ok)
            {
                return Result.Fail<TargetAnswer>(first.Problems);
            }

            proved &= whole;
            recipes.Add(first.Value);
            recipes.AddRange(Others(model, sets, state));
        }

        return Result.Of(TargetVerdict.Of(model, state, recipes, proved, notes));
    }

    // Each further set of materials brought to the same EC and pH with amounts of its own.
    private static IEnumerable<TargetRecipe> Others(TargetModel model, AmountAnswer sets, TargetState first)
    {
        var others = new List<TargetRecipe>();
        foreach (var set in sets.Blends)
        {
            if (set.Members.SequenceEqual(first.Blend.Members) || set.Members.Count == 0)
            {
                continue;
            }

            var tuning = new TargetTuning(model, set.Members);
            if (tuning.Run() is { } state && Made(model, state, tuning, set.Members, out _) is { Ok: true } made)
            {
                others.Add(made.Value);
            }
        }

        others.Sort(static (a, b) => a.Error.CompareTo(b.Error));
        return others.Take(model.Request.Best - 1);
    }

    private static Result<TargetRecipe> Made(TargetModel model, TargetState state, TargetTuning tuning, IReadOnlyList<int>? members, out bool whole)
    {
        whole = true;
        var blend = state.Blend;
        if (model.Request.StepGrams is { } step)
        {
            var (best, proved) = TargetSteps.Find(model.Search(state.Strength, state.Dose, members), step / model.Request.Litres);
            whole = proved && best is not null;
            if (best is null)
            {
                return Result.Fail<TargetRecipe>("step", FormattableString.Invariant($"In whole steps of {step:0.###} g for {model.Request.Litres:0.##} L no amounts keep the limits."),
                    "Make more at once, or weigh finer.");
            }

            blend = best;
        }

        var own = blend.Members.Select(i => members is null ? i : members[i]).ToArray();
        return TargetRecipes.Make(model, own, blend, state, tuning);
    }

    /// <summary>The can of given amounts, g/L by offer, with a dose of the agent.</summary>
    internal static CanRequest Can(TargetRequest request, IReadOnlyList<(MaterialInWater Material, double Grams)> parts) => new()
    {
        Water = request.Water,
        WaterName = request.WaterName,
        Additions = [.. parts.Select(p => new CanAddition(p.Material, p.Grams))],
        Celsius = request.Celsius,
        Air = request.Air,
    };
}
