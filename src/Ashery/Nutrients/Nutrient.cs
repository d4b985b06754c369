namespace Ashery.Nutrients;

/// <summary>
/// A nutrient, or an element that comes along with one. The order is the order of columns everywhere:
/// primary, secondary, trace, then the two that are watched rather than wanted.
/// </summary>
public enum Nutrient
{
    N,
    P,
    K,
    Ca,
    Mg,
    S,
    Fe,
    Mn,
    Zn,
    Cu,
    B,
    Mo,
    Cl,
    Na,
}
