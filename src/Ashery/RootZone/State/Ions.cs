using System.Runtime.CompilerServices;

namespace Ashery.RootZone.State;

/// <summary>Amounts (mol) or concentrations (mol/L) of the dissolved forms by <see cref="Ion"/>; the last place stays empty.</summary>
[InlineArray(Width)]
public struct Ions
{
    internal const int Width = 16;

    private double first;

    /// <summary>Total of nitrate, ammonium and urea, mol N.</summary>
    public readonly double Nitrogen => this[Ion.Nitrate] + this[Ion.Ammonium] + this[Ion.Urea];

    /// <summary>One form alone.</summary>
    public static Ions Of(int ion, double amount)
    {
        var ions = default(Ions);
        ions[ion] = amount;
        return ions;
    }

    /// <summary>The same with more of one form.</summary>
    public readonly Ions With(int ion, double amount)
    {
        var ions = this;
        ions[ion] += amount;
        return ions;
    }

    public readonly Ions Times(double factor)
    {
        var ions = default(Ions);
        IonMath.AddScaled(ref ions, in this, factor);
        return ions;
    }

    public readonly Ions Plus(in Ions other)
    {
        var ions = this;
        IonMath.Add(ref ions, in other);
        return ions;
    }
}
