using Ashery.Climate.Evapotranspiration;
using Ashery.Climate.Observed;

namespace Ashery.Exchange.Weather;

/// <summary>Hours of one day added up. A quantity with more than two hours missing is missing for the day.</summary>
internal sealed class EpwDay
{
    private const int MostMissing = 2;

    private Sum dry;
    private Sum vapour;
    private Sum sun;
    private Sum wind;
    private Sum rain;
    private double max;
    private double min;
    private uint seen;

    public DateOnly Date { get; private set; }

    public long Line { get; private set; }

    public void Start(DateOnly date, long line)
    {
        (Date, Line, max, min, seen) = (date, line, double.NegativeInfinity, double.PositiveInfinity, 0);
        (dry, vapour, sun, wind, rain) = (default, default, default, default, default);
    }

    /// <summary>False when the hour was there already.</summary>
    public bool Claim(int hour)
    {
        var bit = 1u << hour;
        var isNew = (seen & bit) == 0;
        seen |= bit;
        return isNew;
    }

    public void Add(double celsius, double dewPoint, double energy, double speed, double depth)
    {
        if (!double.IsNaN(celsius))
        {
            (max, min) = (Math.Max(max, celsius), Math.Min(min, celsius));
        }

        dry.Add(celsius);
        vapour.Add(VapourPressure.FromDewPoint(dewPoint));
        sun.Add(energy);
        wind.Add(speed);
        rain.Add(depth);
    }

    /// <summary>The day, and an empty start; null when there is none.</summary>
    public ObservedDay? Close()
    {
        if (seen == 0)
        {
            return null;
        }

        seen = 0;

        // Wh/m² of an hour are 0.0036 MJ/m². Wind of these files is measured at 10 m.
        return new ObservedDay(Date)
        {
            Max = dry.Enough ? max : double.NaN,
            Min = dry.Enough ? min : double.NaN,
            Vapour = vapour.Mean,
            Radiation = sun.Mean * 24 * 0.0036,
            Wind = Wind.AtTwoMetres(wind.Mean, 10),
            Rain = rain.Mean * 24,
        };
    }

    private struct Sum
    {
        private double total;
        private int count;

        public readonly bool Enough => count >= 24 - MostMissing;

        public readonly double Mean => Enough ? total / count : double.NaN;

        public void Add(double value)
        {
            if (!double.IsNaN(value))
            {
                total += value;
                count++;
            }
        }
    }
}
