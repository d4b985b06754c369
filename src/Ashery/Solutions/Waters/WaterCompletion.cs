namespace Ashery.Solutions.Waters;

/// <summary>
/// Puts in what a report leaves out: first what the balance tells, then what the conductivity tells, then what most fresh waters
/// show, each with how far it may be off. Order and figures in docs/science/waters.md.
/// </summary>
internal sealed partial class WaterCompletion(WaterDraft draft, double? pH, double pHCelsius, WaterEc? ec)
{
    private const string ByBalance = "closes the ion balance", ByEc = "closes the balance and meets the measured conductivity", ByPrior = "what most fresh waters show";

    /// <summary>Of calcium and magnesium whose sum is known: what one gains the other loses.</summary>
    internal const string BySplit = "the usual share of a total hardness";

    private double Hardness => draft.Equivalents("calcium") + draft.Equivalents("magnesium");

    // What the sums of a good report are uncertain by.
    private double Slack
    {
        get
        {
            var (cations, anions) = BalanceMaker.Sides(draft);
            return IonBalance.Allowance(cations.Sum(static i => i.Charge), anions.Sum(static i => i.Charge)) / 1000;
        }
    }

    public void Run()
    {
        if (!KnowsAny())
        {
            return;
        }

        Nil("potassium");
        Nil("nitrate");
        HalfHardness();
        var sodium = !draft.Knows("sodium");
        if (!draft.Knows("calcium") && !draft.Knows("alkalinity"))
        {
            HardnessAndAlkalinity();
        }

        AlkalinityFromHardness(sodium);
        HardnessFromAlkalinity(sodium);
        Close(sodium);
        draft.Set("sodium", draft.Amount("sodium"));
    }

    /// <summary>Calcium and magnesium of a total hardness (mol/L) by the usual share.</summary>
    public static void SplitHardness(WaterDraft draft, double hardness)
    {
        var share = WaterPrior.Of("calciumShare");
        draft.Estimate("calcium", new(hardness * share.Typical, hardness * share.Low, hardness * share.High), BySplit);
        draft.Estimate("magnesium", new(hardness * (1 - share.Typical), hardness * (1 - share.High), hardness * (1 - share.Low)), BySplit);
    }

    private bool KnowsAny()
    {
        foreach (var major in WaterDraft.Majors)
        {
            if (draft.Knows(major) && major is not ("potassium" or "nitrate"))
            {
                return true;
            }
        }

        return false;
    }

    private void Nil(string quantity)
    {
        if (!draft.Knows(quantity))
        {
            var prior = WaterPrior.Of(quantity);
            var mass = WaterDraft.QuantityOf(quantity).MassOf(WaterDraft.QuantityOf(quantity).Names[0].Basis) * 1000;
            draft.Estimate(quantity, new(prior.Typical / mass, prior.Low / mass, prior.High / mass), "not measured, taken as nil");
        }
    }

    // One of calcium and magnesium without a total hardness.
    private void HalfHardness()
    {
        var share = WaterPrior.Of("calciumShare");
        if (draft.Knows("calcium") != draft.Knows("magnesium") && draft.Gap < 0
            && draft.Knows("sodium") && draft.Knows("alkalinity") && draft.Knows("chloride") && draft.Knows("sulfate"))
        {
            draft.Estimate(draft.Knows("calcium") ? "magnesium" : "calcium", new(-draft.Gap / 2, Math.Max(0, (-draft.Gap - Slack) / 2), (-draft.Gap + Slack) / 2), ByBalance);
        }
        else if (draft.Knows("calcium") && !draft.Knows("magnesium"))
        {
            var calcium = draft.Amount("calcium");
            draft.Estimate("magnesium", new(calcium * (1 - share.Typical) / share.Typical, calcium * (1 - share.High) / share.High, calcium * (1 - share.Low) / share.Low), "the usual share beside calcium");
        }
        else if (draft.Knows("magnesium") && !draft.Knows("calcium"))
        {
            var magnesium = draft.Amount("magnesium");
            draft.Estimate("calcium", new(magnesium * share.Typical / (1 - share.Typical), magnesium * share.Low / (1 - share.Low), magnesium * share.High / (1 - share.High)), "the usual share beside magnesium");
        }
    }

    // Neither is known: hydrogen carbonate of calcium and magnesium makes up what the conductivity still lacks.
    private void HardnessAndAlkalinity()
    {
        var share = WaterPrior.Of("calciumShare");
        var most = WaterPrior.Of("river.alkalinity").High / 50043.5 * 5;
        var charge = ec is { } measured ? ToMeet(measured, Put) : 0;
        var how = ec is null ? "not measured, and nothing tells" : "hydrogen carbonate of calcium and magnesium makes up the measured conductivity; a guess";
        var (low, high) = ec is null ? (0, most) : (charge / 2, charge * 1.5);
        draft.Estimate("calcium", new(charge / 2 * share.Typical, low / 2 * share.Low, high / 2 * share.High), how);
        draft.Estimate("magnesium", new(charge / 2 * (1 - share.Typical), low / 2 * (1 - share.High), high / 2 * (1 - share.Low)), how);
        draft.Estimate("alkalinity", new(charge, low, high), how);

        void Put(WaterDraft trial, double x)
        {
            trial.Put("calcium", x / 2 * share.Typical);
            trial.Put("magnesium", x / 2 * (1 - share.Typical));
            trial.Put("alkalinity", x);
        }
    }

    private void AlkalinityFromHardness(bool sodium)
    {
        if (draft.Knows("alkalinity") || !draft.Knows("calcium") || (draft.Knows("chloride") && draft.Knows("sulfate")))
        {
            return;
        }

        var prior = WaterPrior.Of("alkalinityShare");
        var most = sodium ? double.MaxValue : Math.Max(0, draft.Gap);
        draft.Estimate("alkalinity", new(Math.Min(most, prior.Typical * Hardness), Math.Min(most, prior.Low * Hardness), Math.Min(most, prior.High * Hardness)), $"{ByPrior} beside this hardness");
    }

    private void HardnessFromAlkalinity(bool sodium)
    {
        if (draft.Knows("calcium"))
        {
            return;
        }

        var prior = WaterPrior.Of("alkalinityShare");
        var least = Math.Max(0, -draft.Gap);
        var anionsKnown = draft.Knows("alkalinity") && draft.Knows("chloride") && draft.Knows("sulfate");
        double typical, low, high;
        string how;
        if (!sodium && anionsKnown)
        {
            (typical, low, high, how) = (least, Math.Max(0, least - Slack), least + Slack, ByBalance);
        }
        else
        {
            // An acid water has less than none, and no hardness to go with it.
            var alkalinity = Math.Max(0, draft.Alkalinity);
            typical = alkalinity / prior.Typical;
            (low, high, how) = (alkalinity / prior.High, alkalinity / prior.Low, $"{ByPrior} beside this alkalinity");
            typical = sodium ? (anionsKnown ? Math.Min(typical, least) : typical) : Math.Max(least, typical);
        }

        // Equivalents to moles, then shares.
        var share = WaterPrior.Of("calciumShare");
        draft.Estimate("calcium", new(typical / 2 * share.Typical, low / 2 * share.Low, high / 2 * share.High), how);
        draft.Estimate("magnesium", new(typical / 2 * (1 - share.Typical), low / 2 * (1 - share.High), high / 2 * (1 - share.Low)), how);
    }
}
