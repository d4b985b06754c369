using System.Globalization;
namespace Ashery.Pots;

/// <summary>Picks the cap that binds and says so.</summary>
internal static class DoseLimits
{
    /// <summary>The smallest cap, g; infinite when none holds. A reason is added when it is below what was wanted.</summary>
    public static double Smallest(DoseRequest request, List<string> reasons, double wanted)
    {
        DoseCap? smallest = null;
        foreach (var cap in DoseCaps.Of(request))
        {
            if (smallest is null || cap.Grams < smallest.Grams)
            {
                smallest = cap;
            }
        }

        if (smallest is not null && smallest.Grams < wanted)
        {
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"Held to {smallest.Grams:0.###} g: {smallest.Words}"));
        }

        return smallest?.Grams ?? double.PositiveInfinity;
    }
}
