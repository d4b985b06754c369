namespace Ashery.Planning.Fit;

/// <summary>Figures of one pot by day and draw, of which bands are made.</summary>
internal sealed class FitTable(int draws, int days)
{
    private readonly float[] ec = new float[draws * days];
    private readonly float[] nitrogen = new float[draws * days];
    private readonly float[] status = new float[draws * days];
    private readonly float[] rain = new float[draws * days];

    public void Set(int day, int draw, double extractEc, double poreNitrogen, double plantStatus, double rainMm)
    {
        if (day >= days)
        {
            return;
        }

        var at = (day * draws) + draw;
        ec[at] = (float)extractEc;
        nitrogen[at] = (float)poreNitrogen;
        status[at] = (float)plantStatus;
        rain[at] = (float)rainMm;
    }

    public FitDay[] Bands(double mostEc)
    {
        var bands = new FitDay[days];
        for (var day = 0; day < days; day++)
        {
            var over = 0;
            foreach (var value in ec.AsSpan(day * draws, draws))
            {
                over += value > mostEc ? 1 : 0;
            }

            var mean = 0.0;
            foreach (var value in rain.AsSpan(day * draws, draws))
            {
                mean += value / draws;
            }

            bands[day] = new(Band(ec, day), Band(nitrogen, day), Band(status, day), mean, over / (double)draws);
        }

        return bands;
    }

    // Straight between order statistics, as the bands of a forecast.
    private FitBand Band(float[] values, int day)
    {
        var own = values.AsSpan(day * draws, draws);
        own.Sort();
        return new(RootZone.Draws.Quantiles.At(own, 0.05), RootZone.Draws.Quantiles.At(own, 0.5), RootZone.Draws.Quantiles.At(own, 0.95));
    }
}
