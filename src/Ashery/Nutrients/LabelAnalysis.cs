namespace Ashery.Nutrients;

/// <summary>
/// A guaranteed analysis on the label's basis: mass fractions (0 to 1) of N, P2O5, K2O, and of every other nutrient as the element.
/// </summary>
public sealed class LabelAnalysis : Analysis
{
    public LabelAnalysis(IReadOnlyDictionary<Nutrient, double> fractions)
        : base(fractions)
    {
    }

    private LabelAnalysis(double[] fractions)
        : base(fractions)
    {
    }

    /// <summary>N-P2O5-K2O from percent, as <c>10-5-10</c> is spoken.</summary>
    public static LabelAnalysis Grade(double n, double p2O5, double k2O)
    {
        var f = new double[Count];
        f[(int)Nutrient.N] = n / 100;
        f[(int)Nutrient.P] = p2O5 / 100;
        f[(int)Nutrient.K] = k2O / 100;
        return new LabelAnalysis(f);
    }

    /// <summary>The same contents as elements.</summary>
    public ElementAnalysis ToElements() => new(Scaled(static n => LabelBasis.ElementPerLabel(n)));

    internal static LabelAnalysis FromArray(double[] fractions) => new(fractions);
}

/// <summary>Contents as elements: mass fractions (0 to 1) of N, P, K and the rest.</summary>
public sealed class ElementAnalysis : Analysis
{
    public ElementAnalysis(IReadOnlyDictionary<Nutrient, double> fractions)
        : base(fractions)
    {
    }

    internal ElementAnalysis(double[] fractions)
        : base(fractions)
    {
    }

    /// <summary>The same contents as a label prints them.</summary>
    public LabelAnalysis ToLabel() => LabelAnalysis.FromArray(Scaled(static n => 1 / LabelBasis.ElementPerLabel(n)));
}

/// <summary>Contents by nutrient; the basis is the derived type's, so that the two can never be added by mistake.</summary>
public abstract class Analysis
{
    internal const int Count = (int)Nutrient.Na + 1;

    private readonly double[] fractions;

    private protected Analysis(IReadOnlyDictionary<Nutrient, double> fractions)
    {
        this.fractions = new double[Count];
        foreach (var (nutrient, fraction) in fractions)
        {
            this.fractions[(int)nutrient] = fraction;
        }
    }

    private protected Analysis(double[] fractions) => this.fractions = fractions;

    /// <summary>Mass fraction, 0 to 1.</summary>
    public double this[Nutrient nutrient] => fractions[(int)nutrient];

    /// <summary>Percent by weight.</summary>
    public double Percent(Nutrient nutrient) => fractions[(int)nutrient] * 100;

    /// <summary>The nutrients present, in column order.</summary>
    public IEnumerable<Nutrient> Present => Enum.GetValues<Nutrient>().Where(n => fractions[(int)n] > 0);

    private protected double[] Scaled(Func<Nutrient, double> factor)
    {
        var scaled = new double[Count];
        for (var i = 0; i < Count; i++)
        {
            scaled[i] = fractions[i] * factor((Nutrient)i);
        }

        return scaled;
    }
}
