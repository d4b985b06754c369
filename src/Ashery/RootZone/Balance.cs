using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>Input = stored + taken up + lost, for water and each element.</summary>
public static class Balance
{
    /// <summary>Elements watched: nitrogen in all its forms, then the others.</summary>
    public static IReadOnlyList<string> Elements { get; } = ["N", "P", "K", "Ca", "Mg", "S", "Cl", "Na", "B", "Fe", "Mn", "Zn", "Cu"];

    /// <summary>mol of an element in the pot.</summary>
    public static double Stored(in PotPools s, int element) => element == 0
        ? s.Mobile.Nitrogen + s.Coated.Nitrogen + s.BoundFast.Nitrogen + s.BoundSlow.Nitrogen + s.OrganicN
        : Pools(in s, element + 1) + (element == 3 ? s.LimeCalcium : element == 4 ? s.LimeMagnesium : 0);

    /// <summary>Residual over all that came in or was there, worst of the elements, and which.</summary>
    public static BalanceResiduals Of(in PotPools start, in PotPools now, in PotLedger l)
    {
        var water = Relative(start.Water + l.Rain + l.Irrigation + l.WaterAdded, now.Water + l.Drained + l.Transpired + l.Evaporated + l.WaterRemoved);
        var (worst, name) = (0.0, Elements[0]);
        for (var e = 0; e < Elements.Count; e++)
        {
            var input = Stored(in start, e) + Flow(in l.Fed, e) + Flow(in l.FromWater, e) + (e == 0 ? l.FedOrganicN : 0);
            var output = Stored(in now, e) + Flow(in l.TakenUp, e) + Flow(in l.Leached, e) + Flow(in l.Removed, e)
                + (e == 0 ? l.RemovedOrganicN + l.AmmoniaN + l.DenitrifiedN : 0);
            var residual = Relative(input, output);
            if (residual > worst)
            {
                (worst, name) = (residual, Elements[e]);
            }
        }

        return new(water, worst, name);
    }

    /// <summary>The lowest of all pools: below zero is a fault of the model.</summary>
    public static double Lowest(in PotPools s)
    {
        var least = Math.Min(s.Water, Math.Min(s.Biomass, s.Canopy));
        least = Math.Min(least, Math.Min(Math.Min(s.MealN, s.CakeN), Math.Min(s.CompostN, Math.Min(s.SlowN, s.HumusN))));
        least = Math.Min(least, Math.Min(s.LimeCalcium, s.LimeMagnesium));
        for (var i = 0; i < Ions.Width; i++)
        {
            least = Math.Min(least, Math.Min(Math.Min(s.Mobile[i], s.Coated[i]), Math.Min(s.InPlant[i], s.Solution[i])));
            least = Math.Min(least, Math.Min(s.BoundFast[i], s.BoundSlow[i]));
        }

        return least;
    }

    private static double Flow(in Ions ions, int element) => element == 0 ? ions.Nitrogen : ions[element + 1];

    private static double Pools(in PotPools s, int ion) => s.Mobile[ion] + s.Coated[ion] + s.BoundFast[ion] + s.BoundSlow[ion];

    private static double Relative(double input, double output) => Math.Abs(input - output) / Math.Max(Math.Max(input, output), 1e-12);
}
