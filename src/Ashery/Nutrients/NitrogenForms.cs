namespace Ashery.Nutrients;

/// <summary>The nitrogen of a product by form, as mass fractions of the product (0 to 1).</summary>
/// <param name="Ammonium">Ammonium nitrogen.</param>
/// <param name="Nitrate">Nitrate nitrogen.</param>
/// <param name="Urea">Urea nitrogen (amide).</param>
/// <param name="Organic">Nitrogen bound in organic matter; released by mineralisation.</param>
/// <param name="SlowSynthetic">Slow synthetic forms: coated, condensed with aldehydes, cyanamide.</param>
public readonly record struct NitrogenForms(double Ammonium, double Nitrate, double Urea, double Organic, double SlowSynthetic)
{
    public double Total => Ammonium + Nitrate + Urea + Organic + SlowSynthetic;

    /// <summary>The same proportions at another total, as an inline label asks for.</summary>
    public NitrogenForms WithTotal(double total)
    {
        var now = Total;
        return now > 0 ? this * (total / now) : this;
    }

    public static NitrogenForms operator +(NitrogenForms a, NitrogenForms b) => new(
        a.Ammonium + b.Ammonium, a.Nitrate + b.Nitrate, a.Urea + b.Urea, a.Organic + b.Organic, a.SlowSynthetic + b.SlowSynthetic);

    public static NitrogenForms operator *(NitrogenForms a, double k) =>
        new(a.Ammonium * k, a.Nitrate * k, a.Urea * k, a.Organic * k, a.SlowSynthetic * k);
}
