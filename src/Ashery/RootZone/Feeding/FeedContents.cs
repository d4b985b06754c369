using Ashery.RootZone.State;

namespace Ashery.RootZone.Feeding;

/// <summary>What a gram of a feed gives to a pot, mol, by how it comes free. Several feeds add up.</summary>
public readonly record struct FeedContents
{
    /// <summary>Dissolves with the next water.</summary>
    public Ions Soluble { get; init; }

    /// <summary>Inside coats or slow granules.</summary>
    public Ions Coated { get; init; }

    /// <summary>Share of the coated part a day at 21 °C.</summary>
    public double CoatedRate { get; init; }

    /// <summary>Comes free as organic matter rots within weeks.</summary>
    public Ions BoundFast { get; init; }

    /// <summary>Comes free over months and years.</summary>
    public Ions BoundSlow { get; init; }

    /// <summary>Organic nitrogen that rots fast, and its carbon as nitrogen times C:N by mass, by class.</summary>
    public double MealN { get; init; }

    public double MealC { get; init; }

    public double CakeN { get; init; }

    public double CakeC { get; init; }

    public double CompostN { get; init; }

    public double CompostC { get; init; }

    /// <summary>The slow rest of the organic nitrogen.</summary>
    public double SlowN { get; init; }

    /// <summary>The same of composts, slower still.</summary>
    public double HumusN { get; init; }

    /// <summary>Carbonates that dissolve by the pH.</summary>
    public double LimeCalcium { get; init; }

    public double LimeMagnesium { get; init; }

    /// <summary>All nitrogen, mol.</summary>
    public double Nitrogen => Soluble.Nitrogen + Coated.Nitrogen + OrganicN;

    public double OrganicN => MealN + CakeN + CompostN + SlowN + HumusN;

    /// <summary>g N in a gram.</summary>
    public double NitrogenGrams => Nitrogen * Ion.GramsPerMole(Ion.Nitrate);

    public static FeedContents operator *(FeedContents a, double k) => new()
    {
        Soluble = a.Soluble.Times(k),
        Coated = a.Coated.Times(k),
        CoatedRate = a.CoatedRate,
        BoundFast = a.BoundFast.Times(k),
        BoundSlow = a.BoundSlow.Times(k),
        MealN = a.MealN * k,
        MealC = a.MealC * k,
        CakeN = a.CakeN * k,
        CakeC = a.CakeC * k,
        CompostN = a.CompostN * k,
        CompostC = a.CompostC * k,
        SlowN = a.SlowN * k,
        HumusN = a.HumusN * k,
        LimeCalcium = a.LimeCalcium * k,
        LimeMagnesium = a.LimeMagnesium * k,
    };

    public static FeedContents operator +(FeedContents a, FeedContents b)
    {
        double coatedA = Sum(a.Coated), coatedB = Sum(b.Coated);
        return new()
        {
            Soluble = a.Soluble.Plus(b.Soluble),
            Coated = a.Coated.Plus(b.Coated),

            // One rate for all coats of a pot: their mean by what is in them.
            CoatedRate = coatedA + coatedB > 0 ? ((coatedA * a.CoatedRate) + (coatedB * b.CoatedRate)) / (coatedA + coatedB) : 0,
            BoundFast = a.BoundFast.Plus(b.BoundFast),
            BoundSlow = a.BoundSlow.Plus(b.BoundSlow),
            MealN = a.MealN + b.MealN,
            MealC = a.MealC + b.MealC,
            CakeN = a.CakeN + b.CakeN,
            CakeC = a.CakeC + b.CakeC,
            CompostN = a.CompostN + b.CompostN,
            CompostC = a.CompostC + b.CompostC,
            SlowN = a.SlowN + b.SlowN,
            HumusN = a.HumusN + b.HumusN,
            LimeCalcium = a.LimeCalcium + b.LimeCalcium,
            LimeMagnesium = a.LimeMagnesium + b.LimeMagnesium,
        };
    }

    internal static double Sum(in Ions ions)
    {
        var sum = 0.0;
        for (var i = 0; i < Ion.Count; i++)
        {
            sum += ions[i];
        }

        return sum;
    }
}
