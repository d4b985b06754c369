namespace Ashery.Planning.Fit;

/// <summary>Sums over days and draws of one pot.</summary>
internal struct FitSums
{
    /// <summary>Graded days.</summary>
    public double Hungry, Strong, Salt;

    /// <summary>Days of growth.</summary>
    public double Lost;

    /// <summary>Counted days.</summary>
    public double HungryDays, StrongDays, SaltDays;

    /// <summary>mol N.</summary>
    public double LeachedMoles, GivenMoles, ReleasedMoles, TakenMoles;

    public int Draws;

    public readonly double Score(FitWeights w, double litres)
    {
        var perDraw = 1.0 / Math.Max(1, Draws);
        var grams = RootZone.State.Ion.GramsPerMole(RootZone.State.Ion.Nitrate) / litres;
        return perDraw * (Lost + Hungry + Strong + (w.Salt * Salt) + (grams * ((w.Leached * LeachedMoles) + (w.Given * GivenMoles))));
    }

    public readonly FitMeasure Measure(FitWeights w, double litres)
    {
        var perDraw = 1.0 / Math.Max(1, Draws);
        var grams = RootZone.State.Ion.GramsPerMole(RootZone.State.Ion.Nitrate) / litres;
        return new(perDraw * Lost, perDraw * HungryDays, perDraw * StrongDays, perDraw * SaltDays, perDraw * grams * LeachedMoles, perDraw * grams * GivenMoles, perDraw * grams * ReleasedMoles, 0, Score(w, litres));
    }

    public void Add(in FitSums other)
    {
        Lost += other.Lost;
        Hungry += other.Hungry;
        Strong += other.Strong;
        Salt += other.Salt;
        HungryDays += other.HungryDays;
        StrongDays += other.StrongDays;
        SaltDays += other.SaltDays;
        LeachedMoles += other.LeachedMoles;
        GivenMoles += other.GivenMoles;
        ReleasedMoles += other.ReleasedMoles;
        TakenMoles += other.TakenMoles;
    }
}
