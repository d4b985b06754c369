namespace Ashery.Solutions.Waters;

/// <summary>
/// Carries the uncertainty of what was put in to a figure of the whole water: each estimate is moved to its ends with its partner
/// following, so that the water stays neutral, and the moves are added in quadrature.
/// </summary>
internal sealed class WaterSpread(WaterDraft draft)
{
    public WaterRange Of(Func<WaterDraft, double> figure)
    {
        var typical = figure(draft);
        double down = 0, up = 0;
        foreach (var estimate in draft.Estimates)
        {
            foreach (var end in (ReadOnlySpan<double>)[estimate.Moles.Low, estimate.Moles.High])
            {
                var change = figure(Moved(estimate, end)) - typical;
                if (change < 0)
                {
                    down += change * change;
                }
                else
                {
                    up += change * change;
                }
            }
        }

        return new(typical, typical - Math.Sqrt(down), typical + Math.Sqrt(up));
    }

    private WaterDraft Moved(WaterEstimate estimate, double moles)
    {
        var moved = draft.Copy();
        var change = (moles - estimate.Moles.Typical) * WaterDraft.Charge(estimate.Quantity);
        moved.Put(estimate.Quantity, moles);
        var (partner, sign) = Partner(estimate);
        moved.Put(partner, Math.Max(0, draft.Amount(partner) + (sign * change / WaterDraft.Charge(partner))));

        WaterReports.Neutralise(moved);
        return moved;
    }

    // What was split goes from one part to the other; else something of the other side that was put in too moves along.
    private (string Quantity, int Sign) Partner(WaterEstimate estimate)
    {
        var twin = estimate.Quantity switch
        {
            "calcium" => "magnesium",
            "magnesium" => "calcium",
            "chloride" => "sulfate",
            "sulfate" => "chloride",
            _ => null,
        };
        if (twin is not null && (estimate.How == WaterCompletion.BySplit || estimate.How.EndsWith(WaterCompletion.ByShare, StringComparison.Ordinal))
            && draft.Estimates.Exists(e => e.Quantity == twin && e.How == estimate.How))
        {
            return (twin, -1);
        }

        // What was taken as nil takes from what closes the balance on its own side.
        if (estimate.Moles.Typical == 0)
        {
            foreach (var closer in (ReadOnlySpan<string>)(IsAnion(estimate.Quantity) ? ["chloride", "sulfate", "alkalinity"] : ["sodium"]))
            {
                if (closer != estimate.Quantity && draft.Estimates.Exists(e => e.Quantity == closer) && draft.Equivalents(closer) >= estimate.Moles.High * WaterDraft.Charge(estimate.Quantity))
                {
                    return (closer, -1);
                }
            }
        }

        foreach (var other in (ReadOnlySpan<string>)(IsAnion(estimate.Quantity) ? ["sodium", "calcium"] : ["chloride", "sulfate", "alkalinity"]))
        {
            if (draft.Estimates.Exists(e => e.Quantity == other && e.How != WaterCompletion.BySplit))
            {
                return (other, 1);
            }
        }

        // It closes the balance of measured ions: then the error is in them, and the largest of the other side stands for it.
        string? largest = null;
        foreach (var other in (ReadOnlySpan<string>)(IsAnion(estimate.Quantity) ? ["sodium", "calcium", "magnesium"] : ["alkalinity", "chloride", "sulfate"]))
        {
            largest = largest is null || (draft.Equivalents(other) > draft.Equivalents(largest) && !draft.Estimates.Exists(e => e.Quantity == other)) ? other : largest;
        }

        return (largest!, 1);
    }

    private static bool IsAnion(string quantity) => quantity is "chloride" or "sulfate" or "nitrate" or "alkalinity";
}
