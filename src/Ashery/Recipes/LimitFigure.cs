namespace Ashery.Recipes;

/// <summary>A limit that takes one number.</summary>
/// <param name="Index">Its place among them.</param>
/// <param name="Name">Its word in the grammar.</param>
/// <param name="IsAtMost">True for <c>&lt;=</c>, false for <c>&gt;=</c>.</param>
/// <param name="IsFraction">True when an amount with a unit is read.</param>
/// <param name="Least">Least plain number.</param>
/// <param name="Most">Largest plain number.</param>
/// <param name="Example">For messages.</param>
internal sealed record LimitFigure(int Index, string Name, bool IsAtMost, bool IsFraction, double Least, double Most, string Example)
{
    public const int Count = 7;

    public static readonly LimitFigure Urea = new(0, "urea", true, true, 0, 1, "urea<=30%");
    public static readonly LimitFigure Ammoniacal = new(1, "ammoniacal", true, true, 0, 1, "ammoniacal<=50%");
    public static readonly LimitFigure Chloride = new(2, "chloride", true, true, 0, 1, "chloride<=2%");
    public static readonly LimitFigure SaltIndex = new(3, "salt-index", true, false, 0, 1000, "salt-index<=80");

    // The most that any single substance needs: liquid ammonia, about 1.8 kg CaCO3 as nitrogen and no more than 3 with acids.
    public static readonly LimitFigure Acidity = new(4, "acidity", true, false, -5, 5, "acidity<=0.2");
    public static readonly LimitFigure Cost = new(5, "cost", true, false, 0, 1e9, "cost<=1.5");
    public static readonly LimitFigure Strength = new(6, "strength", false, true, 0, 1, "strength>=20%");

    public static LimitFigure? Find(string lower) => lower switch
    {
        "urea" => Urea,
        "ammoniacal" or "ammonium" => Ammoniacal,
        "chloride" or "cl" => Chloride,
        "salt-index" => SaltIndex,
        "acidity" => Acidity,
        "cost" => Cost,
        "strength" => Strength,
        _ => null,
    };
}
