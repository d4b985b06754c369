using Ashery.Blending.Model;

namespace Ashery.Blending;

/// <summary>The figures of a blend from its masses, straight from the definitions.</summary>
public static class BlendMeasure
{
    /// <summary>
    /// Measures a blend given by mass fractions (in the order of <paramref name="members"/>, any positive scale).
    /// Ratio error is (1/d) sum_j |s_j / tau_j - 1| with s_j the blend's nutrient shares and tau_j the target's.
    /// </summary>
    public static Blend Of(BlendRequest request, IReadOnlyList<int> members, IReadOnlyList<double> masses)
    {
        var target = BlendGuard.Normalised(request.Target);
        var content = new double[target.Length];
        double total = 0;
        double nutrient = 0;
        double? cost = 0;
        for (var k = 0; k < members.Count; k++)
        {
            var column = request.Columns[members[k]];
            total += masses[k];
            cost += column.Price * masses[k];
            for (var j = 0; j < content.Length; j++)
            {
                content[j] += column.Content[j] * masses[k];
                nutrient += column.Content[j] * masses[k];
            }
        }

        double sum = 0;
        double largest = 0;
        for (var j = 0; j < content.Length; j++)
        {
            var deviation = Math.Abs((content[j] / nutrient / target[j]) - 1);
            sum += deviation;
            largest = Math.Max(largest, deviation);
        }

        var fractions = new double[members.Count];
        for (var k = 0; k < fractions.Length; k++)
        {
            fractions[k] = masses[k] / total;
        }

        return new Blend(members, fractions, sum / content.Length, largest, nutrient / total, cost / nutrient);
    }

    /// <summary>Mass fraction of each of the target's nutrients in a blend.</summary>
    public static double[] Contents(BlendRequest request, Blend blend)
    {
        var contents = new double[request.Target.Count];
        for (var k = 0; k < blend.Members.Count; k++)
        {
            for (var j = 0; j < contents.Length; j++)
            {
                contents[j] += request.Columns[blend.Members[k]].Content[j] * blend.MassFractions[k];
            }
        }

        return contents;
    }
}
