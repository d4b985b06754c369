using Ashery.Crops;

namespace Ashery.Pots;

/// <summary>What to do when a pot got too much.</summary>
/// <param name="LitresAPass">L of plain water each time.</param>
/// <param name="Passes">How often.</param>
/// <param name="HoursBetween">Hours from one pass to the next.</param>
/// <param name="Steps">In order, in words.</param>
/// <param name="RuleId">Where volume and passes come from.</param>
public sealed record FirstAid(double LitresAPass, int Passes, double HoursBetween, IReadOnlyList<string> Steps, string RuleId)
{
    /// <summary>Flush with one to two pot volumes in two passes (flushing with clear water seen; volume and interval from memory).</summary>
    public static FirstAid For(Pot pot, RuleBook rules)
    {
        var rule = rules["flush-when"];
        var passes = Math.Max(1, (int)Math.Round(rule["passes"]));
        var litres = pot.Volume.Litres * rule["potVolumes"] / passes;
        return new(
            litres,
            passes,
            rule["hoursBetween"],
            [
                "Take off what still lies dry on the medium, with a spoon.",
                FormattableString.Invariant($"Pour {litres:0.#} L of plain water slowly over the whole surface and let it drain away; not into a saucer."),
                FormattableString.Invariant($"Do it {passes} times in all, {rule["hoursBetween"]:0.#} hours apart."),
                "Stand the pot in shade out of wind until the leaves are firm again. Spray nothing on them.",
                "Feed again only when new growth is sound, at half the dose.",
                "After too much of a trace element flushing helps little: repot into fresh medium when new leaves are misshapen or burnt.",
            ],
            rule.Id);
    }
}
