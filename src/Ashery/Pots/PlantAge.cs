using Ashery.Crops;

namespace Ashery.Pots;

/// <summary>The stage of a plant on a day, and the fraction of the full dose that goes with it.</summary>
public static class PlantAge
{
    /// <summary>
    /// The younger of what the grower says and what the time since planting says: a cutting told as such grows older with the
    /// plan, a plant called young stays so. Dormant and root-bound are states, not ages, and stay as told.
    /// </summary>
    public static PlantStage StageOn(Pot pot, DateOnly day, RuleBook rules)
    {
        if (pot.Stage is PlantStage.Dormant or PlantStage.RootBound || pot.Planted is not { } planted)
        {
            return pot.Stage;
        }

        var days = day.DayNumber - planted.DayNumber;
        var rule = rules["age-days"];
        var byAge = days < rule["liner"] ? PlantStage.Seedling
            : days < rule["young"] ? PlantStage.Liner
            : days < rule["mature"] ? PlantStage.Young
            : PlantStage.Mature;
        return byAge < pot.Stage ? byAge : pot.Stage;
    }

    /// <summary>The rule that gives the fraction of the full dose at a stage.</summary>
    public static GrowingRule RuleOf(PlantStage stage, RuleBook rules) => rules[stage switch
    {
        PlantStage.Seedling => "age-seedling",
        PlantStage.Liner => "age-liner",
        PlantStage.Young => "age-young",
        PlantStage.RootBound => "age-root-bound",
        PlantStage.Dormant => "age-dormant",
        _ => "age-mature",
    }];

    /// <summary>The fraction as a factor with its words; 1 when the grower switched the rule off.</summary>
    public static DoseFactor FactorOn(Pot pot, DateOnly day, RuleBook rules)
    {
        var rule = RuleOf(StageOn(pot, day, rules), rules);
        return new(rule.Id, rule.IsOn ? rule["factor"] : 1, rule.Statement);
    }
}
