using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>What an event does to the pools.</summary>
internal static class Events
{
    public static void Apply(in PlannedEvent e, ref PotPools s, ref PotLedger l, ref PotParameters p, ref Ions brought, ref double liquid, ref double flush)
    {
        if (e.Repotted is { } repotted)
        {
            Repot(in e, repotted, ref s, ref l);
            p = repotted;
        }

        Feed(in e, ref s, ref l);
        Prune(e.Pruned, ref s);
        IonMath.Add(ref brought, in e.Liquid);
        liquid += e.LiquidLitres;
        flush += e.FlushLitres;
    }

    private static void Feed(in PlannedEvent e, ref PotPools s, ref PotLedger l)
    {
        ref readonly var feed = ref e.Dry;
        var (soluble, coated, fast, slow) = (feed.Soluble, feed.Coated, feed.BoundFast, feed.BoundSlow);
        double before = Feeding.FeedContents.Sum(in s.Coated), more = Feeding.FeedContents.Sum(in coated);
        if (more > 0)
        {
            s.CoatedRate = ((before * s.CoatedRate) + (more * feed.CoatedRate)) / (before + more);
        }

        IonMath.Add(ref s.Mobile, in soluble);
        IonMath.Add(ref s.Coated, in coated);
        IonMath.Add(ref s.BoundFast, in fast);
        IonMath.Add(ref s.BoundSlow, in slow);
        IonMath.Add(ref l.Fed, in soluble);
        IonMath.Add(ref l.Fed, in coated);
        IonMath.Add(ref l.Fed, in fast);
        IonMath.Add(ref l.Fed, in slow);
        s.MealN += feed.MealN;
        s.MealC += feed.MealC;
        s.CakeN += feed.CakeN;
        s.CakeC += feed.CakeC;
        s.CompostN += feed.CompostN;
        s.CompostC += feed.CompostC;
        s.SlowN += feed.SlowN;
        s.HumusN += feed.HumusN;
        l.FedOrganicN += feed.OrganicN;
        s.LimeCalcium += feed.LimeCalcium;
        s.LimeMagnesium += feed.LimeMagnesium;
        l.Fed[Ion.Calcium] += feed.LimeCalcium;
        l.Fed[Ion.Magnesium] += feed.LimeMagnesium;
    }

    private static void Prune(double share, ref PotPools s)
    {
        if (share > 0)
        {
            s.Biomass *= 1 - share;
            s.Canopy *= 1 - share;
            s.InPlant = s.InPlant.Times(1 - share);
        }
    }

    // Part of the old medium goes with all it holds; fresh medium comes with water and salts of its own, for the volume that is missing.
    private static void Repot(in PlannedEvent e, PotParameters to, ref PotPools s, ref PotLedger l)
    {
        var gone = 1 - e.OldKept;
        Throw(ref s.Mobile, gone, ref l);
        Throw(ref s.Coated, gone, ref l);
        Throw(ref s.BoundFast, gone, ref l);
        Throw(ref s.BoundSlow, gone, ref l);
        l.RemovedOrganicN += s.OrganicN * gone;
        l.Removed[Ion.Calcium] += s.LimeCalcium * gone;
        l.Removed[Ion.Magnesium] += s.LimeMagnesium * gone;
        l.WaterRemoved += s.Water * gone;
        var (keep, fresh) = (e.OldKept, Math.Clamp(1 - (e.OldKept * e.OldLitres / to.Litres), 0, 1));
        s.MealN *= keep;
        s.MealC *= keep;
        s.CakeN *= keep;
        s.CakeC *= keep;
        s.CompostN *= keep;
        s.CompostC *= keep;
        s.SlowN *= keep;
        s.HumusN *= keep;
        s.LimeCalcium = (s.LimeCalcium * keep) + (fresh * e.Fresh.LimeCalcium);
        s.LimeMagnesium *= keep;
        s.Water = (s.Water * keep) + (fresh * e.Fresh.Water);
        l.WaterAdded += fresh * e.Fresh.Water;
        var mobile = e.Fresh.Mobile;
        IonMath.AddScaled(ref s.Mobile, in mobile, fresh);
        IonMath.AddScaled(ref l.Fed, in mobile, fresh);
        l.Fed[Ion.Calcium] += fresh * e.Fresh.LimeCalcium;
        s.Canopy = Math.Min(s.Canopy, to.CanopyMost);
        RootZone.Salts.Exchange.Equilibrate(ref s, to);
    }

    private static void Throw(ref Ions pool, double share, ref PotLedger l) => IonMath.MoveShare(ref pool, ref l.Removed, share);
}
