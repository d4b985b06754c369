using Ashery.RootZone.Draws;

namespace Ashery.RootZone.Calibration;

/// <summary>Which unknowns the readings told of.</summary>
internal static class FigureShifts
{
    public static IReadOnlyList<FigureShift> Of(DrawSpace space, double[] before, double[] after, int draws)
    {
        var shifts = new List<FigureShift>();
        for (var k = 0; k < space.Count; k++)
        {
            var (was, mean, deviation) = Column(space, before, k, draws);
            var (now, moved, _) = Column(space, after, k, draws);
            shifts.Add(new(space.Figures[k], was, now, deviation > 0 ? (moved - mean) / deviation : 0));
        }

        return [.. shifts.OrderByDescending(static s => Math.Abs(s.Moved))];
    }

    private static (DayBand Band, double Mean, double Deviation) Column(DrawSpace space, double[] shares, int k, int draws)
    {
        var values = new float[draws];
        double sum = 0, square = 0;
        for (var i = 0; i < draws; i++)
        {
            var v = space.Figures[k].At(shares[(i * space.Count) + k]);
            values[i] = (float)v;
            sum += v;
            square += v * v;
        }

        Array.Sort(values);
        return (Quantiles.Band(values), sum / draws, Math.Sqrt(Math.Max(0, (square / draws) - (sum / draws * (sum / draws)))));
    }
}
