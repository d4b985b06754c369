namespace Ashery.Pots;

/// <summary>Pre-dilutions: a weighable amount in water, of which a measured part holds the dose.</summary>
public static class Dilution
{
    // mL of water for each gram: 50 g/L at the strongest, which every feed that counts as dissolving bears.
    private static readonly double[] MillilitresAGram = [20, 50, 100, 200, 500, 1000, 2000];

    // Half millilitres are read off a syringe: a twentieth of this.
    private const double SmallestMeasure = 10;

    /// <summary>One bottle for a round.</summary>
    /// <param name="dose">g for this pot.</param>
    /// <param name="smallest">The smallest dose of the round, g; it still fills 10 mL.</param>
    /// <param name="least">Least that can be weighed well, or what the round takes when that is more, g.</param>
    public static Predilution For(double dose, double smallest, double least)
    {
        var water = MillilitresAGram[^1];
        foreach (var millilitres in MillilitresAGram)
        {
            if (smallest * millilitres >= SmallestMeasure)
            {
                water = millilitres;
                break;
            }
        }

        // Down to half millilitres, so that no cap is passed.
        return new(least, least * water, Math.Max(0.5, Math.Floor((dose * water * 2) + 1e-9) / 2));
    }

    /// <summary>The same bottle for every pot of the round that needs one.</summary>
    /// <param name="doses">The doses of one feed on one day.</param>
    /// <param name="potCount">How many equal pots a line stands for.</param>
    /// <param name="least">Least that can be weighed well, g.</param>
    /// <param name="step">Step of the scale, g.</param>
    public static IReadOnlyList<Dose> OneBottle(IReadOnlyList<Dose> doses, Func<string, int> potCount, double least, double step)
    {
        var (total, smallest) = (0.0, double.PositiveInfinity);
        foreach (var dose in doses)
        {
            if (dose.Predilution is not null && dose.Grams > 0)
            {
                total += dose.Grams * potCount(dose.PotId);
                smallest = Math.Min(smallest, dose.Grams);
            }
        }

        if (total <= 0)
        {
            return doses;
        }

        var weigh = Math.Max(least, Math.Ceiling((total / step) - 1e-9) * step);
        return [.. doses.Select(d => d.Predilution is null ? d : Take(d, For(d.Grams, smallest, weigh)))];
    }

    /// <summary>The dose that the measured millilitres hold.</summary>
    private static Dose Take(Dose dose, Predilution bottle)
    {
        var grams = Math.Round(bottle.Grams * bottle.MillilitresPerPot / bottle.WaterMillilitres, 9);
        return dose with { Predilution = bottle, Grams = grams, LimeGrams = dose.LimeGrams * grams / dose.Grams };
    }
}
