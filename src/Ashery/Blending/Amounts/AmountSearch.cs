using Ashery.Blending.Model;

namespace Ashery.Blending.Amounts;

/// <summary>
/// The best amounts of given columns beside a fixed one, by the tree of the blend search. In its programme the sum row counts the fixed column alone,
/// so that there is one unit of it; the deviations are then sum_i a_ij m_i/t_j + w_j/t_j - 1, and a limit's constant is the fixed column's coefficient.
/// </summary>
public static class AmountSearch
{
    public static AmountAnswer Find(AmountRequest request)
    {
        var blend = ToBlend(request);
        var model = new BlendModel(blend, BlendAim.Amounts);
        var best = new BestBlends(request.Best);
        using var race = new BlendRace(model, best);
        var proved = race.Run(request.WorkLimit);
        var certificate = race.RootMultipliers is { } multipliers ? Certificates.Of(model, multipliers) : null;
        List<AmountBlend> blends = [.. best.Found.Select(found => Read(request, model, found))];
        return new(
            blends,
            proved,
            certificate,
            certificate is null || blends.Count == 0 ? null : AmountCertificateCheck.LowerBound(request, certificate, blends[0].Error));
    }

    private static BlendRequest ToBlend(AmountRequest request)
    {
        double whole = 0;
        foreach (var wanted in request.Target)
        {
            whole += wanted;
        }

        // A missing price would hide the others: then the fewest grams decide.
        var priced = request.Columns.All(c => c.Price is not null);
        var columns = new Column[request.Columns.Count + 1];
        for (var i = 0; i < request.Columns.Count; i++)
        {
            columns[i] = priced ? request.Columns[i] : request.Columns[i] with { Price = 1 };
        }

        columns[^1] = new Column("\u0001fixed", [.. request.Fixed.Select(w => w / whole)], 0);
        return new BlendRequest
        {
            Columns = columns,
            Target = request.Target,
            Rows = [.. request.Rows.Select(row => new LinearRow(row.Name, [.. row.Coefficients, row.Constant / whole]))],
            ForbiddenPairs = request.ForbiddenPairs,
            AtMost = request.AtMost + 1,
            Best = request.Best,
        };
    }

    private static AmountBlend Read(AmountRequest request, BlendModel model, FoundBlend found)
    {
        var whole = request.Target.Sum();
        var parts = new List<(int Column, double Mass)>();
        for (var k = 0; k < found.Members.Length; k++)
        {
            var column = model.Order[found.Members[k]];
            if (column < request.Columns.Count)
            {
                parts.Add((column, found.X[k] / model.Scale[found.Members[k]] * whole));
            }
        }

        parts.Sort();
        return AmountBlend.Of(request, [.. parts.Select(p => p.Column)], [.. parts.Select(p => p.Mass)]);
    }
}
