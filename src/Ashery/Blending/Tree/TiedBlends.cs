using Ashery.Blending.Model;
using Ashery.Blending.Sweep;

namespace Ashery.Blending.Tree;

/// <summary>
/// Settles a great tie: when all that is left has the error and cost of the last blend kept at best, sets are gone through by number of
/// columns and names, the order that then decides, until the next could only come later.
/// </summary>
internal static class TiedBlends
{
    /// <summary>True when the list is proved; false when the work allowed did not suffice.</summary>
    public static bool Finish(BlendModel model, BestBlends best, long work)
    {
        if (model.HasFillers || model.Aim == BlendAim.AtLeast)
        {
            return false;
        }

        var most = Math.Min(model.Request.AtMost, model.Columns);
        for (var size = 1; size <= most; size++)
        {
            using var sweep = new BlendSweep(model, best, size, size);
            if (!sweep.Run(20 * work) || sweep.Doubtful)
            {
                return false;
            }
        }

        return true;
    }
}
