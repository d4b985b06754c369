namespace Ashery.Recipes;

/// <summary>The same request with one limit dropped, for each limit in turn.</summary>
internal static class LimitVariants
{
    public static IEnumerable<(string Name, MixRequest Request)> Without(MixRequest request)
    {
        var limits = request.Limits;
        foreach (var clause in LimitWriter.Clauses(limits with { Use = BlendUse.DryStored }))
        {
            if (Others(limits, clause) is { } rest)
            {
                yield return (clause, request with { Limits = rest });
            }
        }

        if (request.Batch is not null && request.Offers.Any(static o => o.Stock is not null))
        {
            yield return ("the stock", request with { Offers = [.. request.Offers.Select(static o => o with { Stock = null })] });
        }

        if (limits.Use is BlendUse.DryStored)
        {
            yield return ("storing it (use=dry-today)", request with { Limits = limits with { Use = BlendUse.DryToday } });
        }

        if (request.AtMost < RequestCheck.MostMaterials && request.AtMost < request.Offers.Count)
        {
            yield return ("the count of materials", request with { AtMost = Math.Min(RequestCheck.MostMaterials, request.AtMost + 2) });
        }
    }

    // Every clause but one, through the grammar itself.
    private static MixLimits? Others(MixLimits limits, string clause)
    {
        var rest = LimitReader.Parse([.. LimitWriter.Clauses(limits).Where(c => c != clause)]);
        return rest.Ok ? rest.Value with { PerNitrogen = limits.PerNitrogen } : null;
    }
}
