namespace Ashery.Climate.Generation;

/// <summary>
/// A daily course whose monthly means are the normals: straight lines between mid-months, whose heights are solved so that the mean
/// over each month comes out as given (joining the normals themselves would cut every peak and fill every dip).
/// </summary>
internal sealed class SmoothYear
{
    private static readonly int[] Lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

    private readonly double[] middle = new double[12];

    /// <param name="normals">Twelve monthly means, January first.</param>
    public SmoothYear(ReadOnlySpan<double> normals)
    {
        normals.CopyTo(middle);

        // Each mean holds about 6/8 of its own height and 1/8 of each neighbour's: repeated substitution closes in by a third or better.
        for (var round = 0; round < 60; round++)
        {
            for (var m = 0; m < 12; m++)
            {
                var (before, own, after) = Weights(Lengths[m]);
                middle[m] = (normals[m] - (before * middle[(m + 11) % 12]) - (after * middle[(m + 1) % 12])) / own;
            }
        }
    }

    /// <summary>Height of a day.</summary>
    public double Of(int month, int day, int monthLength)
    {
        var (before, own, after) = DayWeights(day, monthLength);
        return (before * middle[(month + 10) % 12]) + (own * middle[month - 1]) + (after * middle[month % 12]);
    }

    private static (double Before, double Own, double After) Weights(int length)
    {
        var (before, own, after) = (0.0, 0.0, 0.0);
        for (var day = 1; day <= length; day++)
        {
            var (b, o, a) = DayWeights(day, length);
            (before, own, after) = (before + b, own + o, after + a);
        }

        return (before / length, own / length, after / length);
    }

    private static (double Before, double Own, double After) DayWeights(int day, int length)
    {
        var x = (day - 0.5) / length;
        return x < 0.5 ? (0.5 - x, 0.5 + x, 0) : (0, 1.5 - x, x - 0.5);
    }
}
