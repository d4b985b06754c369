namespace Ashery.Solutions;

/// <summary>
/// Two points around the root of a falling function, drawn together by the Illinois form of false position: the weight of an end that
/// stays is halved (Dowell and Jarratt 1971, BIT 11:168-174; from memory). When to stop is the caller's.
/// </summary>
internal struct FallingBracket(double low, double atLow, double high, double atHigh)
{
    private double atLow = atLow;
    private double atHigh = atHigh;
    private int side;

    public double Low { get; private set; } = low;

    public double High { get; private set; } = high;

    public readonly double Middle => (Low + High) / 2;

    /// <summary>Where the line between the two points crosses zero.</summary>
    public readonly double Crossing => ((Low * atHigh) - (High * atLow)) / (atHigh - atLow);

    /// <summary>The point at which to look next; every third time the middle, for functions that are steep at one end.</summary>
    public readonly double Next(int round) => round % 3 == 2 ? Middle : Crossing;

    /// <summary>Takes in the value at a point between the two.</summary>
    public void Put(double point, double at)
    {
        if (at > 0)
        {
            (Low, atLow) = (point, at);
            atHigh = side == 1 ? atHigh / 2 : atHigh;
            side = 1;
        }
        else
        {
            (High, atHigh) = (point, at);
            atLow = side == -1 ? atLow / 2 : atLow;
            side = -1;
        }
    }
}
