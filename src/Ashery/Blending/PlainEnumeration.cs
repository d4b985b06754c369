namespace Ashery.Blending;

/// <summary>
/// Every support of at most c columns in turn, a small linear programme for each: the plainest exact search.
/// It is what the quick searches are judged by. Time grows as m^c.
/// </summary>
internal static class PlainEnumeration
{
    public static BlendAnswer Find(BlendRequest request)
    {
        var model = new BlendModel(request);
        var found = new List<FoundBlend>();
        Extend(model, [], 0, found);
        var blends = FoundBlend.Sorted(found).Take(request.Best).Select(f => f.ToBlend(model)).ToList();
        return new BlendAnswer(blends, Proved: true, Certificate: null);
    }

    private static void Extend(BlendModel model, List<int> support, int next, List<FoundBlend> found)
    {
        if (support.Count > 0 && PlainProgramme.Solve(model, support) is { } x && Array.TrueForAll(x, v => v > FoundBlend.Positive))
        {
            found.Add(FoundBlend.Of(model, [.. support], x));
        }

        if (support.Count == model.Request.AtMost)
        {
            return;
        }

        for (var i = next; i < model.Columns; i++)
        {
            if (!support.Exists(s => model.Forbidden[s, i]))
            {
                support.Add(i);
                Extend(model, support, i + 1, found);
                support.RemoveAt(support.Count - 1);
            }
        }
    }
}
