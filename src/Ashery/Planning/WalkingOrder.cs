using Ashery.Gardens;
using Ashery.Pots;

namespace Ashery.Planning;

/// <summary>A stop on the round.</summary>
/// <param name="Number">1, 2, 3 ...</param>
/// <param name="PotId">Which pot.</param>
/// <param name="PotName">Its name.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Dose">What it gets.</param>
public sealed record WalkStop(int Number, string PotId, string PotName, string? Place, Dose Dose);

/// <summary>
/// One round of the garden for one feed: weakest first, so that what is left in can or scoop never goes too strong to a small or
/// young plant; among equals by place, then by name.
/// </summary>
public static class WalkingOrder
{
    /// <summary>Every dose once, numbered.</summary>
    public static IReadOnlyList<WalkStop> Of(IEnumerable<Dose> doses, Garden garden)
    {
        var pots = garden.Pots.ToDictionary(static p => p.Id, StringComparer.Ordinal);
        return [.. doses
            .Select(d => (Dose: d, Pot: pots.GetValueOrDefault(d.PotId)))
            .OrderBy(static s => Strength(s.Dose))
            .ThenBy(static s => s.Dose.Grams)
            .ThenBy(static s => s.Pot?.Place ?? "", StringComparer.Ordinal)
            .ThenBy(static s => s.Pot?.Name ?? "", StringComparer.Ordinal)
            .ThenBy(static s => s.Dose.PotId, StringComparer.Ordinal)
            .Select(static (s, i) => new WalkStop(i + 1, s.Dose.PotId, s.Pot?.Name ?? s.Dose.PotId, s.Pot?.Place, s.Dose))];
    }

    /// <summary>What must not be mixed up: g in 10 L for a can, g a litre for a spray, g a pot when dry.</summary>
    internal static double Strength(Dose dose) => dose.Method switch
    {
        DoseMethod.Can when dose.Can is { } can => can.GramsPer10Litres,
        DoseMethod.Spray when dose.Spray is { } spray => spray.GramsPerLitre,
        _ => dose.Grams,
    };
}
