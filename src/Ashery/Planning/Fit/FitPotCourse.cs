using Ashery.RootZone;

namespace Ashery.Planning.Fit;

/// <summary>A pot's year under a plan, over all draws.</summary>
/// <param name="PotId">Which pot.</param>
/// <param name="Limits">What its crop bears.</param>
/// <param name="Measure">How it fares.</param>
/// <param name="Days">Every evening with its band.</param>
/// <param name="Events">What is given.</param>
public sealed record FitPotCourse(string PotId, FitLimits Limits, FitMeasure Measure, IReadOnlyList<FitDay> Days, IReadOnlyList<PotEvent> Events)
{
    /// <summary>The largest chance on any day that the EC limit is passed, in the model.</summary>
    public double WorstOdds => Days.Count > 0 ? Days.Max(static d => d.OddsOverEc) : 0;

    /// <summary>First day of the year on which that chance is reached, counted from the first.</summary>
    public int WorstDay
    {
        get
        {
            var worst = WorstOdds;
            for (var i = 0; i < Days.Count; i++)
            {
                if (Days[i].OddsOverEc >= worst)
                {
                    return i;
                }
            }

            return 0;
        }
    }
}

/// <summary>One evening over all draws.</summary>
/// <param name="Ec">Saturated extract, mS/cm.</param>
/// <param name="Nitrogen">Nitrate and ammonium in the pore water, mg N/L.</param>
/// <param name="Status">Nitrogen in the plant over what it wants.</param>
/// <param name="RainMm">Mean rain, mm.</param>
/// <param name="OddsOverEc">Share of draws above the EC limit.</param>
public readonly record struct FitDay(FitBand Ec, FitBand Nitrogen, FitBand Status, double RainMm, double OddsOverEc);

/// <summary>Median and the band of nine in ten.</summary>
public readonly record struct FitBand(double Low, double Median, double High);
