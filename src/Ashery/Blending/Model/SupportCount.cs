namespace Ashery.Blending.Model;

/// <summary>How many sets of columns there are.</summary>
internal static class SupportCount
{
    /// <summary>Number of sets with one to <paramref name="most"/> of <paramref name="columns"/>; a double, because it may be huge.</summary>
    public static double UpTo(int columns, int most)
    {
        double sum = 0;
        double term = 1;
        for (var k = 1; k <= Math.Min(most, columns); k++)
        {
            term *= (columns - k + 1.0) / k;
            sum += term;
        }

        return sum;
    }
}
