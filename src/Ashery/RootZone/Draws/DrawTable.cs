namespace Ashery.RootZone.Draws;

/// <summary>
/// Figures of every draw and day of one pot in single precision: draws x days x figures x 4 bytes, 6.6 MB for 500 draws of a year. Quantiles from it
/// are exact order statistics. It is as long as the forecast it describes; over pots memory stays flat, one table a thread.
/// </summary>
public sealed class DrawTable(int draws, int days)
{
    private static readonly int Figures = Enum.GetValues<PotFigure>().Length;

    // By figure, then day, then draw: a day's draws lie side by side for sorting.
    private readonly float[] values = new float[(long)draws * days * Figures];

    public int Draws => draws;

    public int Days => days;

    /// <summary>All draws of a figure on a day.</summary>
    public ReadOnlySpan<float> Of(PotFigure figure, int day) => values.AsSpan((((int)figure * days) + day) * draws, draws);

    /// <summary>One draw.</summary>
    public double this[PotFigure figure, int day, int draw] => values[((((int)figure * days) + day) * draws) + draw];

    internal void Set(PotFigure figure, int day, int draw, double value) => values[((((int)figure * days) + day) * draws) + draw] = (float)value;
}
