using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Ashery.Blending.Uncertainty;

namespace Ashery.Blending;

/// <summary>
/// What label ranges and weighing errors do to blends: draws with common random numbers, and the exact worst case.
/// </summary>
/// <remarks>
/// Each content is drawn from a triangular distribution (lowest, typical, highest), each amount from a symmetric triangular
/// one of the given relative half-width, all independent; every blend sees the same draws, so that differences between blends are not
/// noise. Draws run through vector registers four at a time; percentiles are the order statistic at rank ceil(p n).
/// The worst case is not drawn: see <see cref="WorstCase"/>.
/// Complexity: (columns used) (d + 1) random numbers and c d multiply-adds a blend for each draw.
/// </remarks>
public static class UncertaintyDraws
{
    private const int Block = 512;

    /// <summary>Runs the draws; the same seed gives the same answer on every machine.</summary>
    public static UncertaintyAnswer Run(UncertaintyRequest request)
    {
        UncertaintyGuard.Check(request);
        var d = request.Blend.Target.Count;
        var draws = request.Draws;
        var tables = new DrawTables(request);
        var errors = new double[request.Blends.Count][];
        var contents = new double[request.Blends.Count * d][];
        for (var b = 0; b < errors.Length; b++)
        {
            errors[b] = new double[draws + Block];
            for (var j = 0; j < d; j++)
            {
                contents[(b * d) + j] = new double[draws + Block];
            }
        }

        for (var from = 0; from < draws; from += Block)
        {
            tables.Draw(Block);
            for (var b = 0; b < errors.Length; b++)
            {
                Measure(tables, request.Blends[b], errors[b].AsSpan(from, Block), contents.AsSpan(b * d, d), from);
            }
        }

        var selection = new Percentiles(draws);
        var answers = new BlendUncertainty[errors.Length];
        for (var b = 0; b < answers.Length; b++)
        {
            var (median, high) = selection.Of(errors[b], 0.5, 0.95);
            var low5 = new double[d];
            var high95 = new double[d];
            for (var j = 0; j < d; j++)
            {
                (low5[j], high95[j]) = selection.Of(contents[(b * d) + j], 0.05, 0.95);
            }

            answers[b] = new BlendUncertainty(median, high, WorstCase.Of(request, request.Blends[b]), low5, high95);
        }

        var ranked = Enumerable.Range(0, answers.Length).OrderBy(b => answers[b].Percentile95).ThenBy(b => b).ToArray();
        return new UncertaintyAnswer(answers, ranked);
    }

    /// <summary>One blend over a block of draws.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Measure(DrawTables tables, Blend blend, Span<double> errors, ReadOnlySpan<double[]> contents, int from)
    {
        var d = contents.Length;
        Span<Vector256<double>> sum = stackalloc Vector256<double>[d];
        var weight = Vector256.Create(1.0 / d);
        for (var at = 0; at < errors.Length; at += Vector256<double>.Count)
        {
            sum.Clear();
            var mass = Vector256<double>.Zero;
            for (var k = 0; k < blend.Members.Count; k++)
            {
                var place = tables.Place(blend.Members[k]);
                var amount = Vector256.Create(blend.MassFractions[k]) * tables.Amount(place, at);
                mass += amount;
                for (var j = 0; j < d; j++)
                {
                    sum[j] = Vector256.MultiplyAddEstimate(amount, tables.Content(place, j, at), sum[j]);
                }
            }

            var total = sum[0];
            for (var j = 1; j < d; j++)
            {
                total += sum[j];
            }

            var error = Vector256<double>.Zero;
            for (var j = 0; j < d; j++)
            {
                error += Vector256.Abs((sum[j] / (total * tables.Target[j])) - Vector256<double>.One);
                (sum[j] / mass).CopyTo(contents[j], from + at);
            }

            (error * weight).CopyTo(errors[at..]);
        }
    }
}
