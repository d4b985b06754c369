using Ashery.Problems;

namespace Ashery.Solutions.Targets;

/// <summary>What cannot be asked.</summary>
internal static class TargetCheck
{
    public static List<Problem> Of(TargetRequest request)
    {
        var problems = new List<Problem>();
        var target = request.Target;
        if (!target.Wishes.Any(w => w.IsAim))
        {
            problems.Add(new("target", "No nutrient is given a figure to aim at; limits alone name no recipe.", "Name at least one as in N=150."));
        }

        if (request.Offers.Count == 0)
        {
            problems.Add(new("from", "There is nothing to make it from.", "Name materials that dissolve, as in calcium-nitrate,mkp,epsom-salt."));
        }

        Inside(request.AtMost, 1, 20, "at-most", "materials", "6");
        Inside(request.Best, 1, 20, "best", "recipes", "3");
        Inside(request.Celsius, Speciation.Coldest, Speciation.Warmest, "celsius", "°C", "20");
        Inside(request.Litres, 0.01, 1e6, "litres", "L", "10");
        Inside(request.StepGrams ?? 1, 0.001, 1000, "step", "g", "0.1");
        Inside(target.Ec ?? 1, 0.02, 50, "ec", "mS/cm", "1.6");
        Inside(target.PH ?? 6, 3, 10, "ph", "pH", "5.8");
        if (target.PH is not null && request.Agent is null)
        {
            problems.Add(new("acid", "A pH is wished and nothing is named that brings it.", "Name an acid with its strength, as in nitric at 60 %."));
        }
        else if (target.PH is null && request.Agent is not null)
        {
            problems.Add(new("ph", "An acid is named and no pH for it to bring.", "Give the pH, as in 5.8."));
        }
        else if (request.Agent is { } agent && Math.Abs(agent.Acidity) < 1e-5)
        {
            problems.Add(new("acid", $"{agent.Material.Name} is neither an acid nor a base; it hardly moves the pH.", "Name an acid, or potassium bicarbonate to raise it."));
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var offer in request.Offers)
        {
            if (!seen.Add(offer.Material.Id))
            {
                problems.Add(new("from", $"{offer.Material.Name} is named twice.", "Name it once."));
            }
        }

        return problems;

        void Inside(double value, double least, double most, string field, string unit, string example)
        {
            if (!(value >= least && value <= most))
            {
                problems.Add(new(field, FormattableString.Invariant($"{value:0.####} {unit} is not between {least:0.###} and {most:#,0.###}."), $"Write one such as {example}."));
            }
        }
    }
}
