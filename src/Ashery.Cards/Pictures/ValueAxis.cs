namespace Ashery.Cards.Pictures;

/// <summary>Values to y, with whole steps of 1, 2 or 5 of a power of ten.</summary>
internal sealed record ValueAxis(double Low, double High, double Step, double Top, double Bottom)
{
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((High - Low) / Step) + 1).Select(i => Low + (i * Step));

    /// <summary>Over all values, from zero where zero is near.</summary>
    public static ValueAxis Over(double least, double most, double top, double bottom)
    {
        var low = least >= 0 && least < most * 0.6 ? 0 : least;
        var rough = Math.Max(most - low, Math.Max(1e-6, Math.Abs(most) * 0.02)) / 3;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = (rough / power) switch { <= 1 => power, <= 2 => 2 * power, <= 5 => 5 * power, _ => 10 * power };
        var (from, to) = (Math.Floor((low / step) + 1e-9) * step, Math.Ceiling((most / step) - 1e-9) * step);
        return new(from, to > from ? to : from + step, step, top, bottom);
    }

    public double Y(double value) => Bottom - (Math.Clamp((value - Low) / (High - Low), 0, 1) * (Bottom - Top));
}
