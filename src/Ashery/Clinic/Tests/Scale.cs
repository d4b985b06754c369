using System.Text.Json;
using Ashery.Clinic.Words;
using Ashery.Sources;

namespace Ashery.Clinic.Tests;

/// <summary>From a figure to the choices of a question: edges between choices, and the error of measuring that softens them.</summary>
/// <param name="Question">Key of the question.</param>
/// <param name="Choices">Choices from low to high.</param>
/// <param name="Edges">Figures between them.</param>
/// <param name="Ends">What bounds the outer two.</param>
/// <param name="Spread">Standard deviation of measuring.</param>
/// <param name="Relative">True when <paramref name="Spread"/> is a part of the figure.</param>
/// <param name="SourceId">Whose edges.</param>
/// <param name="Provenance">How they came into the data.</param>
internal sealed record Scale(
    string Question, string[] Choices, double[] Edges, (double Low, double High) Ends, double Spread, bool Relative, string SourceId, Provenance Provenance)
{
    public static Scale Read(JsonElement row)
    {
        var ends = row.Numbers("ends");
        return new(
            row.Text("question"), row.Texts("choices"), row.Numbers("edges"), (ends[0], ends[1]), row.Number("spread"), row.Flag("relative"), row.Text("source"), row.Provenance());
    }

    /// <summary>
    /// How well each choice fits. A figure with its error: the part of a normal distribution about it that lies within the choice. "Above 6.2", "5 to 6": the part of
    /// the choice that lies within what was said.
    /// </summary>
    public double[] Fit(NumberWords figure)
    {
        var weights = new double[Choices.Length];
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = figure.IsOne ? Share(figure.Low, i) : Overlap(figure, i);
        }

        // A figure beyond the ends is of the outermost choice.
        if (Array.TrueForAll(weights, static w => w < 1e-6))
        {
            weights[figure.Low > Edges[0] ? ^1 : 0] = 1;
        }

        return weights;
    }

    /// <summary>The choice a figure falls into, errors left aside.</summary>
    public int Place(double figure)
    {
        var i = 0;
        while (i < Edges.Length && figure >= Edges[i])
        {
            i++;
        }

        return i;
    }

    private double Share(double figure, int choice)
    {
        var sd = Math.Max(1e-9, Relative ? Spread * Math.Abs(figure) : Spread);
        var low = choice == 0 ? 0 : Below((Edges[choice - 1] - figure) / sd);
        var high = choice == Edges.Length ? 1 : Below((Edges[choice] - figure) / sd);
        return high - low;
    }

    private double Overlap(NumberWords figure, int choice)
    {
        var low = choice == 0 ? Math.Min(Ends.Low, Edges[0] - 1e-9) : Edges[choice - 1];
        var high = choice == Edges.Length ? Math.Max(Ends.High, Edges[^1] + 1e-9) : Edges[choice];
        return Math.Max(0, Math.Min(high, figure.High) - Math.Max(low, figure.Low)) / (high - low);
    }

    // The normal distribution function by the logistic curve of Page (1977), within 0.0002: finer than any edge here is known.
    private static double Below(double z) => 1 / (1 + Math.Exp(-2 * Math.Sqrt(2 / Math.PI) * z * (1 + (0.044715 * z * z))));
}
