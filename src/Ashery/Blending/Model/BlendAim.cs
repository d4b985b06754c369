namespace Ashery.Blending.Model;

/// <summary>What a search minimises first.</summary>
internal enum BlendAim
{
    /// <summary>Mean relative deviation of the shares, then cost, then mass.</summary>
    Ratio,

    /// <summary>Mean relative deviation of the shares, then mass: the strongest blend at the ratio.</summary>
    StrongestAtRatio,

    /// <summary>Mean relative shortfall of contents wanted at least, then cost, then mass.</summary>
    AtLeast,

    /// <summary>
    /// Mean relative deviation of amounts beside a fixed column, the last of the request, of which there is exactly one unit; then
    /// cost, then mass.
    /// </summary>
    Amounts,
}
