using Ashery.Problems;

namespace Ashery.Solutions.Tanks;

/// <summary>Shares a feed over stock tanks so that each stays clear, as concentrated as can be.</summary>
public static class TankSplit
{
    /// <summary>Highest ratio looked at, and the one said where nothing limits.</summary>
    public const double MostRatio = 1000;

    /// <summary>Most materials: the splits are all looked through.</summary>
    public const int MostMaterials = 16;

    /// <summary>Most tanks.</summary>
    public const int MostTanks = 4;

    /// <summary>
    /// Part of the computed ratio that is advised. Stocks are beyond the good range of the activity model (ionic strength 0.5), and a tank
    /// is filled by hand: a tenth is kept back. Our own choice.
    /// </summary>
    public const double Margin = 0.9;

    /// <summary>The best split of a feed, or why there is none.</summary>
    public static Result<TankReport> Find(TankRequest request)
    {
        var wrong = TankRefusal.Of(request);
        if (wrong.Count > 0)
        {
            return Result.Fail<TankReport>(wrong);
        }

        var search = new TankSearch(request);
        if (search.Conflict is { } conflict)
        {
            return Result.Fail<TankReport>(conflict);
        }

        return Result.Of(TankReporting.Of(request, search));
    }
}
