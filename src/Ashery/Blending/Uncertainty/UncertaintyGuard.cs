using Ashery.Blending.Model;

namespace Ashery.Blending.Uncertainty;

/// <summary>Faults of the caller in a request for draws.</summary>
internal static class UncertaintyGuard
{
    public static void Check(UncertaintyRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        BlendGuard.Check(request.Blend);
        var columns = request.Blend.Columns.Count;
        if (request.Contents.Count != columns || request.AmountError.Count != columns)
        {
            throw new ArgumentException("There must be ranges for each column.", nameof(request));
        }

        if (!request.AmountError.All(e => e >= 0 && e < 1))
        {
            throw new ArgumentException("An amount's relative error must lie between 0 and 1.", nameof(request));
        }

        foreach (var ranges in request.Contents)
        {
            if (ranges.Count != request.Blend.Target.Count || !ranges.All(r => r.Min >= 0 && r.Min <= r.Typical && r.Typical <= r.Max && double.IsFinite(r.Max)))
            {
                throw new ArgumentException("Every content needs a range from lowest through typical to highest.", nameof(request));
            }
        }

        if (request.Draws is < 1 or > 10_000_000)
        {
            throw new ArgumentException("The number of draws must lie between one and ten million.", nameof(request));
        }
    }
}
