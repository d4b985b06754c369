namespace Ashery.Blending;

/// <summary>The best blends of given columns, proved best.</summary>
public static class BlendSearch
{
    /// <summary>
    /// The best blends: error, cost a kg of nutrient (unknown last), number of columns, names. A set of columns counts
    /// when its best amounts (error, then cost, then mass, then names) are all positive.
    /// </summary>
    public static BlendAnswer Find(BlendRequest request)
    {
        var model = new BlendModel(request);
        if (model.Columns == 0)
        {
            return new BlendAnswer([], Proved: true, Certificate: null);
        }

        var best = new BestBlends(request.Best);
        using var tree = new BlendTree(model, best);
        var proved = tree.Run(long.MaxValue);
        return new BlendAnswer([.. best.Found.Select(f => f.ToBlend(model))], proved, Certificate: null);
    }
}
