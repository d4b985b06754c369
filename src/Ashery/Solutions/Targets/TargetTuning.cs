using Ashery.Blending.Amounts;

namespace Ashery.Solutions.Targets;

/// <summary>A recipe on the way: amounts, strength and dose with their solution.</summary>
internal sealed record TargetState(AmountAnswer Answer, double Strength, double Dose, Solution Solution)
{
    private double? ec;

    public AmountBlend Blend => Answer.Blends[0];

    public double Ec => ec ??= Conductivity.At25(Solution);
}

/// <summary>
/// Brings a recipe to its EC by its strength and to its pH by a dose of the agent: two nested brackets around the proved search, each step
/// with the full solution, because neither is linear. EC rises with strength and pH moves one way with the dose.
/// </summary>
internal sealed class TargetTuning(TargetModel model, IReadOnlyList<int>? members = null)
{
    /// <summary>How near is met.</summary>
    public const double NearEc = 0.01, NearPh = 0.01;

    private const double EndEc = 2e-4, EndPh = 2e-4, Strongest = 100, MostDose = 60;

    private TargetRequest Request => model.Request;

    /// <summary>Full solutions computed.</summary>
    public int Solutions { get; private set; }

    /// <summary>The state nearest to the EC and pH wished; null when the limits leave no amounts.</summary>
    public TargetState? Run()
    {
        if (Request.Target.Ec is not { } wanted)
        {
            return AtPh(1);
        }

        if (AtPh(0.01) is not { } weak || weak.Ec >= wanted)
        {
            return AtPh(0.01);
        }

        var low = 0.01;
        var atLow = wanted - weak.Ec;
        var nearest = weak;
        for (var high = 1.0; high <= Strongest; high *= 2)
        {
            if (AtPh(high) is not { } strong)
            {
                return nearest;
            }

            nearest = Nearer(nearest, strong, s => Math.Abs(s.Ec - wanted));
            if (strong.Ec >= wanted)
            {
                return Between(new FallingBracket(low, atLow, high, wanted - strong.Ec), AtPh, s => wanted - s.Ec, EndEc, nearest);
            }

            (low, atLow) = (high, wanted - strong.Ec);
        }

        return nearest;
    }

    public static bool IsTuned(SolutionTarget target, double ec, double pH) =>
        (target.Ec is not { } e || Math.Abs(ec - e) <= NearEc) && (target.PH is not { } p || Math.Abs(pH - p) <= NearPh);

    private TargetState? AtPh(double strength)
    {
        var without = At(strength, 0);
        if (Request.Target.PH is not { } wanted || Request.Agent is not { } agent || without is null)
        {
            return without;
        }

        var down = agent.Acidity > 0 ? 1 : -1;
        double Off(TargetState s) => down * (s.Solution.PH - wanted);
        if (Off(without) <= 0)
        {
            return without;
        }

        var low = 0.0;
        var atLow = Off(without);
        var nearest = without;
        for (var high = 0.02; high <= MostDose; high *= 3)
        {
            if (At(strength, high) is not { } dosed)
            {
                return nearest;
            }

            nearest = Nearer(nearest, dosed, s => Math.Abs(Off(s)));
            if (Off(dosed) <= 0)
            {
                return Between(new FallingBracket(low, atLow, high, Off(dosed)), dose => At(strength, dose), Off, EndPh, nearest);
            }

            (low, atLow) = (high, Off(dosed));
        }

        return nearest;
    }

    private static TargetState Between(FallingBracket bracket, Func<double, TargetState?> at, Func<TargetState, double> off, double end, TargetState nearest)
    {
        for (var round = 0; round < 60 && bracket.High - bracket.Low > 1e-10 * bracket.High; round++)
        {
            var point = bracket.Next(round);
            if (at(point) is not { } state)
            {
                return nearest;
            }

            nearest = Nearer(nearest, state, s => Math.Abs(off(s)));
            if (Math.Abs(off(state)) <= end)
            {
                return state;
            }

            bracket.Put(point, off(state));
        }

        return nearest;
    }

    private static TargetState Nearer(TargetState a, TargetState b, Func<TargetState, double> off) => off(b) < off(a) ? b : a;

    private TargetState? At(double strength, double dose)
    {
        var answer = AmountSearch.Find(model.Search(strength, dose, members));
        if (answer.Blends.Count == 0)
        {
            return null;
        }

        Solutions++;
        var blend = answer.Blends[0];
        var own = blend.Members.Select(i => members is null ? i : members[i]).ToArray();
        return new(answer, strength, dose, Speciation.Solve(model.Input(own, blend.Masses, dose)));
    }
}
