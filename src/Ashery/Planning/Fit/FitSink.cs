using Ashery.RootZone;
using Ashery.RootZone.Forcing;
using Ashery.RootZone.Plant;
using Ashery.RootZone.Salts;
using Ashery.RootZone.State;

namespace Ashery.Planning.Fit;

/// <summary>Judges each evening of a run by the bounds of the crop, and its growth by that of the same plant with all it wants to eat.</summary>
internal struct FitSink(FitWeights weights, FitLimits limits, bool[] grows, FitGrowth fed, int offset, double biomass) : IDaySink
{
    private const double Milligrams = 1000;

    private static readonly double NitrogenGrams = Ion.GramsPerMole(Ion.Nitrate);

    public FitSums Sums;

    private double last = biomass;

    public void Evening(int day, PotParameters parameters, in DayForcing forcing, in PotPools pools, in PotLedger ledger, in DayFlows flows)
    {
        // Days told are those of the year; the weeks after it are only weighed.
        var counted = offset + day < grows.Length - FitGrowing.Tail;
        if (grows[offset + day])
        {
            var status = Growth.NitrogenStatus(in pools, parameters);
            Sums.Hungry += Graded((weights.LowStatus + weights.StatusRamp - status) / (2 * weights.StatusRamp));
            Sums.HungryDays += counted && status < weights.LowStatus ? 1 : 0;
        }

        Sums.Lost += (fed.Daily[offset + day] - (pools.Biomass - last)) / fed.Mean;
        last = pools.Biomass;
        var nitrogen = Nitrogen(in pools) / limits.MostNitrogen;
        Sums.Strong += Graded((nitrogen - 1 + weights.StrongRamp) / (2 * weights.StrongRamp));
        Sums.StrongDays += counted && nitrogen > 1 ? 1 : 0;
        var salt = Extracts.FromPore(pools.PoreEc, pools.Water, parameters) / limits.MostEc;
        Sums.Salt += Graded((salt - weights.SaltFrom) / (1 - weights.SaltFrom));
        Sums.SaltDays += counted && salt > 1 ? 1 : 0;
    }

    /// <summary>Goes past an evening that does not count.</summary>
    public void Skip(double now) => last = now;

    /// <summary>Nitrate and ammonium in the pore water, mg N/L.</summary>
    public static double Nitrogen(in PotPools pools) => (pools.Solution[Ion.Nitrate] + pools.Solution[Ion.Ammonium]) * NitrogenGrams * Milligrams;

    private readonly double Graded(double value) => Math.Clamp(value, 0, weights.MostADay);
}
