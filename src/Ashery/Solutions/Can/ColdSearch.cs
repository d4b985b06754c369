namespace Ashery.Solutions.Can;

/// <summary>How cold a solution may get, degree by degree, until a salt crystallises or a quick solid settles.</summary>
public static class ColdSearch
{
    /// <summary>From the temperature of the input down to 0 °C; the amounts stay, the air too.</summary>
    public static ColdLimit Find(SolutionInput input)
    {
        var from = input.Celsius;
        if (First(input, from) is { } already)
        {
            return new(null, already, from);
        }

        var good = from;
        for (var t = Math.Ceiling(from) - 1; t >= Speciation.Coldest; t--)
        {
            if (First(input, t) is { } first)
            {
                return new(Math.Ceiling(good), first, from);
            }

            good = t;
        }

        return new(good, null, from);
    }

    /// <summary>What comes out at a temperature, the one furthest past its limit; null when nothing does.</summary>
    public static string? First(SolutionInput input, double celsius)
    {
        var solution = Speciation.Solve(input.At(celsius));
        var (name, most) = ((string?)null, 0.0);
        foreach (var index in SaturationIndex.All(solution))
        {
            if (!index.Mineral.Slow && index.Index > most)
            {
                (name, most) = (index.Mineral.Id, index.Index);
            }
        }

        foreach (var salt in SaltSaturation.All(solution))
        {
            if (salt.Index > most)
            {
                (name, most) = (salt.Name, salt.Index);
            }
        }

        return name;
    }
}
