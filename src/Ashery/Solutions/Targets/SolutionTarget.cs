namespace Ashery.Solutions.Targets;

/// <summary>What a feed solution is to be.</summary>
/// <param name="Wishes">Nutrients with their figures, each item once.</param>
/// <param name="Ec">mS/cm at 25 °C; the wished amounts then give the proportions and the EC the strength. Null for none.</param>
/// <param name="PH">Null for none.</param>
public sealed record SolutionTarget(IReadOnlyList<TargetWish> Wishes, double? Ec = null, double? PH = null);

/// <summary>One figure or range, mg/L.</summary>
/// <param name="Item">Of what.</param>
/// <param name="Low">At least; 0 for no lower limit.</param>
/// <param name="High">At most; infinite for no upper limit. Equal to <paramref name="Low"/> where a figure is wanted as near as may be.</param>
/// <param name="OfNitrogen">True when both are parts (0 to 1) of all nitrogen, for a form of it.</param>
/// <param name="Words">As it was written.</param>
public sealed record TargetWish(TargetItem Item, double Low, double High, bool OfNitrogen, string Words)
{
    /// <summary>Wanted as near as may be: a term of the error. All others are limits, which are kept.</summary>
    public bool IsAim => Low == High && Low > 0 && !OfNitrogen;

    public static TargetWish Aim(string symbol, double milligrams) =>
        new(TargetItem.Of(symbol), milligrams, milligrams, false, FormattableString.Invariant($"{symbol}={milligrams}"));

    public static TargetWish AtMost(string symbol, double milligrams) =>
        new(TargetItem.Of(symbol), 0, milligrams, false, FormattableString.Invariant($"{symbol}<={milligrams}"));

    public static TargetWish AtLeast(string symbol, double milligrams) =>
        new(TargetItem.Of(symbol), milligrams, double.PositiveInfinity, false, FormattableString.Invariant($"{symbol}>={milligrams}"));
}
