using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Pots;

/// <summary>
/// Volume of medium from a tape measure. A pot is a truncated cone, V = pi h (D² + D d + d²) / 12 (geometry), filled to
/// below the rim so that water can stand.
/// </summary>
public static class PotVolume
{
    /// <summary>
    /// Bottom over top diameter when the bottom was not measured. Chosen so that, with <see cref="FillFraction"/>, the cone gives the
    /// litres makers print on round pots of 9 to 50 cm (from memory); the tests show by how much they differ.
    /// </summary>
    public const double UsualTaper = 0.75;

    /// <summary>Share of the inside volume that holds medium: filled to 90 to 95 %, leaving a watering rim (common practice).</summary>
    public const double FillFraction = 0.92;

    private const double SmallestCm = 3;
    private const double LargestCm = 200;

    /// <summary>Litres of medium in a pot of this size.</summary>
    public static Result<Volume> From(PotSize size, string field = "pot")
    {
        List<Problem> problems = [];
        CheckLength(size.TopDiameter, field + ".diameter", problems);
        CheckLength(size.Height, field + ".height", problems);
        if (size.BottomDiameter is { } bottom)
        {
            CheckLength(bottom, field + ".bottomDiameter", problems);
        }

        if (problems.Count > 0)
        {
            return Result.Fail<Volume>(problems);
        }

        var top = size.TopDiameter;
        var low = size.BottomDiameter ?? (top * UsualTaper);
        if (low > top * 1.5)
        {
            return Result.Fail<Volume>(
                field + ".bottomDiameter",
                FormattableString.Invariant($"The bottom ({low} cm) is far wider than the rim ({top} cm)."),
                "Check whether the two were swapped.");
        }

        var millilitres = Math.PI * size.Height / 12 * ((top * top) + (top * low) + (low * low));
        return Check(Volume.FromMillilitres(millilitres * FillFraction), field);
    }

    /// <summary>A volume that a pot can have.</summary>
    public static Result<Volume> Check(Volume volume, string field) => volume.Litres switch
    {
        >= 0.02 and <= 2000 => Result.Of(volume),
        _ => Result.Fail<Volume>(
            field + ".volume",
            FormattableString.Invariant($"A pot of {volume.Litres:0.###} L cannot be: pots here hold 0.02 to 2000 L of medium."),
            "Give the volume in litres (a 20 cm pot holds about 4 L), or the diameter and height in centimetres."),
    };

    private static void CheckLength(double cm, string field, List<Problem> problems)
    {
        if (!(cm is >= SmallestCm and <= LargestCm))
        {
            problems.Add(new Problem(
                field,
                FormattableString.Invariant($"{cm:0.###} cm cannot be: a pot measures {SmallestCm} to {LargestCm} cm."),
                "Measure inside the pot, in centimetres."));
        }
    }
}
