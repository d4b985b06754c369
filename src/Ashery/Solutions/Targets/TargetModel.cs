using Ashery.Blending;
using Ashery.Blending.Amounts;
using Ashery.Compatibility;
using Ashery.Solutions.Can;

namespace Ashery.Solutions.Targets;

/// <summary>
/// A target as amounts beside a fixed column: the water, with what the pH takes in it. Contents in mg a gram, amounts in mg/L, masses in g/L.
/// </summary>
internal sealed class TargetModel
{
    private readonly TargetWish[] aims;
    private readonly List<(int A, int B)> forbidden = [];

    public TargetModel(TargetRequest request)
    {
        Request = request;
        aims = [.. request.Target.Wishes.Where(w => w.IsAim)];
        for (var a = 0; a < request.Offers.Count; a++)
        {
            for (var b = a + 1; b < request.Offers.Count; b++)
            {
                if (Apart(request.Offers[a].Material, request.Offers[b].Material))
                {
                    forbidden.Add((a, b));
                }
            }
        }
    }

    public TargetRequest Request { get; }

    /// <summary>mg/L of an item in the water with so many g/L of the agent.</summary>
    public double Fixed(TargetItem item, double dose) =>
        1000 * (item.Grams(Request.Water.Totals) + (Request.Agent is { } agent ? dose * item.Content(agent.Material) : 0));

    /// <summary>The search at a strength and a dose of the agent, over all offers or some.</summary>
    public AmountRequest Search(double strength, double dose, IReadOnlyList<int>? members = null, int best = 1, bool limits = true)
    {
        var offers = members is null ? Request.Offers : [.. members.Select(i => Request.Offers[i])];
        return new AmountRequest
        {
            Columns = [.. offers.Select(o => new Column(o.Material.Id, [.. aims.Select(w => 1000 * w.Item.Content(o.Material))], o.PricePerKg / 1000))],
            Target = [.. aims.Select(w => strength * w.Low)],
            Fixed = [.. aims.Select(w => Fixed(w.Item, dose))],
            Rows = Rows(offers, dose, limits),
            ForbiddenPairs = members is null ? forbidden : [],
            AtMost = Request.AtMost,
            Best = best,
        };
    }

    /// <summary>Everything in the water, mol per kg of all water.</summary>
    public SolutionInput Input(IReadOnlyList<int> members, IReadOnlyList<double> masses, double dose)
    {
        var contents = new CanContents(Request.Water);
        for (var k = 0; k < members.Count; k++)
        {
            contents.Add(Request.Offers[members[k]].Material, masses[k]);
        }

        if (Request.Agent is { } agent)
        {
            contents.Add(agent.Material, dose);
        }

        return contents.Input(Request.Celsius, Request.Air);
    }

    private List<AmountRow> Rows(IReadOnlyList<TargetOffer> offers, double dose, bool limits)
    {
        var rows = new List<AmountRow>();
        foreach (var wish in limits ? Request.Target.Wishes : [])
        {
            if (wish.OfNitrogen)
            {
                Part(wish, wish.High, 1);
                Part(wish, wish.Low, -1);
            }
            else if (!wish.IsAim)
            {
                // Where water and agent alone pass the limit, the materials may at least bring none of it.
                Limit(wish, 1, double.IsFinite(wish.High) ? Math.Min(0, Fixed(wish.Item, dose) - wish.High) : double.NaN);
                Limit(wish, -1, wish.Low > 0 ? wish.Low - Fixed(wish.Item, dose) : double.NaN);
            }
        }

        for (var i = 0; i < offers.Count; i++)
        {
            var stock = offers[i].StockGrams / Request.Litres;
            if (Math.Min(stock ?? double.PositiveInfinity, offers[i].MostGramsPerLitre ?? double.PositiveInfinity) is var most && double.IsFinite(most))
            {
                var alone = new double[offers.Count];
                alone[i] = 1;
                rows.Add(new($"{offers[i].Material.Name} at most {FormattableString.Invariant($"{most:0.###}")} g/L", alone, -most));
            }
        }

        return rows;

        void Limit(TargetWish wish, int sign, double constant)
        {
            if (!double.IsNaN(constant))
            {
                rows.Add(new(wish.Words, [.. offers.Select(o => sign * 1000 * wish.Item.Content(o.Material))], constant));
            }
        }

        void Part(TargetWish wish, double part, int sign)
        {
            if (part > 0 || sign > 0)
            {
                var all = TargetItem.Of("N");
                rows.Add(new(
                    wish.Words,
                    [.. offers.Select(o => sign * 1000 * (wish.Item.Content(o.Material) - (part * all.Content(o.Material))))],
                    sign * (Fixed(wish.Item, dose) - (part * Fixed(all, dose)))));
            }
        }
    }

    private bool Apart(MaterialInWater a, MaterialInWater b)
    {
        if (a.Material is not { } one || b.Material is not { } other)
        {
            return false;
        }

        var judged = CompatibilityChart.Default.Judge(one, other).InSolution;
        return judged.Verdict == Verdict.Stop && (Request.OneStock || (judged.IsHardStop && !judged.OnlyInStock));
    }
}
