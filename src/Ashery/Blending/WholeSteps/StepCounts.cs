using Ashery.Blending.Model;

namespace Ashery.Blending.WholeSteps;

/// <summary>Depth-first search over the counts of one set of columns, every count at least one.</summary>
/// <remarks>
/// All that a blend must keep is a row sum_i A_ki n_i g_i &lt;= 0 over the grams n_i g_i: the side rows, and for each nutrient
/// a_j &lt;= (1 + D_j) tau_j T and a_j &gt;= (1 - D_j) tau_j T, T the sum of the target's nutrients. With the grams of the columns still to
/// come between two masses, each row cuts the range of the next count from one side.
/// </remarks>
internal sealed class StepCounts
{
    /// <summary>Relative slack on masses and rows: rounding, not grams.</summary>
    public const double Slack = 1e-9;

    private readonly BlendModel model;
    private readonly WholeStepRequest request;
    private readonly BestSteps best;
    private readonly int d;
    private readonly int rows;
    private readonly double[] content;
    private readonly double[] grams;
    private readonly double[] coefficient;
    private readonly double[] leastLater;
    private readonly double[] partial;
    private readonly double[] stepLater;
    private readonly int[] counts;
    private readonly double largestTarget;
    private int[] set = [];
    private double limit;

    public StepCounts(BlendModel model, WholeStepRequest request, BestSteps best)
    {
        this.model = model;
        this.request = request;
        this.best = best;
        d = model.Nutrients;
        rows = (2 * d) + model.RowCount;
        var most = Math.Max(1, Math.Min(request.Blend.AtMost, model.Columns));
        content = new double[model.Columns * d];
        grams = new double[model.Columns];
        for (var i = 0; i < model.Columns; i++)
        {
            grams[i] = request.StepGrams[model.Order[i]];
            for (var j = 0; j < d; j++)
            {
                content[(i * d) + j] = request.Blend.Columns[model.Order[i]].Content[j];
            }
        }

        coefficient = new double[most * rows];
        leastLater = new double[(most + 1) * rows];
        partial = new double[(most + 1) * rows];
        stepLater = new double[most + 1];
        counts = new int[most];
        largestTarget = model.Target.Max();
    }

    /// <summary>Count vectors looked at so far.</summary>
    public long Work { get; set; }

    public void Search(int[] members, double errorLimit)
    {
        set = members;
        limit = errorLimit;
        Prepare();
        Descend(0, 0);
    }

    private void Prepare()
    {
        for (var k = 0; k < set.Length; k++)
        {
            var i = set[k];
            double total = 0;
            for (var j = 0; j < d; j++)
            {
                total += content[(i * d) + j];
            }

            for (var j = 0; j < d; j++)
            {
                var deviation = Deviation(j);
                var a = content[(i * d) + j];
                var wanted = model.Target[j] * total;
                coefficient[(k * rows) + (2 * j)] = double.IsFinite(deviation) ? a - ((1 + deviation) * wanted) : 0;
                coefficient[(k * rows) + (2 * j) + 1] = deviation < 1 ? ((1 - deviation) * wanted) - a : 0;
            }

            for (var r = 0; r < model.RowCount; r++)
            {
                coefficient[(k * rows) + (2 * d) + r] = model.Rows[(r * model.Columns) + i] * model.Scale[i];
            }
        }

        stepLater[set.Length] = 0;
        for (var k = set.Length - 1; k >= 0; k--)
        {
            stepLater[k] = stepLater[k + 1] + grams[set[k]];
            for (var r = 0; r < rows; r++)
            {
                var own = coefficient[(k * rows) + r];
                leastLater[(k * rows) + r] = k == set.Length - 1 ? own : Math.Min(own, leastLater[((k + 1) * rows) + r]);
            }
        }

        Array.Clear(partial, 0, rows);
    }

    /// <summary>Largest relative deviation of nutrient j in a blend within the limit; see <see cref="BlendModel.LargestAmount"/>.</summary>
    private double Deviation(int j) => d * limit / (1 + (model.Target[j] / largestTarget));

    private void Descend(int k, double used)
    {
        var g = grams[set[k]];
        var last = k == set.Length - 1;
        var low = 1.0;
        var high = Math.Floor(((request.ToGrams * (1 + Slack)) - used - stepLater[k + 1]) / g);
        if (last)
        {
            low = Math.Max(low, Math.Ceiling(((request.FromGrams * (1 - Slack)) - used) / g));
        }

        for (var r = 0; r < rows; r++)
        {
            Cut(k, r, used, g, last, ref low, ref high);
        }

        for (var n = low; n <= high; n++)
        {
            Work++;
            if (Work > request.WorkLimit)
            {
                return;
            }

            counts[k] = (int)n;
            if (last)
            {
                Keep(used + (n * g));
                continue;
            }

            for (var r = 0; r < rows; r++)
            {
                partial[((k + 1) * rows) + r] = partial[(k * rows) + r] + (n * g * coefficient[(k * rows) + r]);
            }

            Descend(k + 1, used + (n * g));
        }
    }

    /// <summary>partial + n g a + (mass still to come) least &lt;= 0, solved for n.</summary>
    private void Cut(int k, int r, double used, double g, bool last, ref double low, ref double high)
    {
        var slope = g * coefficient[(k * rows) + r];
        var constant = partial[(k * rows) + r] - (Slack * Math.Max(used, g));
        if (!last)
        {
            // The lighter or the heavier end of the window, whichever lets the row off more easily.
            var least = leastLater[((k + 1) * rows) + r];
            var mass = (least < 0 ? request.ToGrams : request.FromGrams) - used;
            slope -= g * least;
            constant += mass * least;
        }

        if (slope > 1e-300)
        {
            high = Math.Min(high, Math.Floor((-constant / slope) + Slack));
        }
        else if (slope < -1e-300)
        {
            low = Math.Max(low, Math.Ceiling((constant / -slope) - Slack));
        }
        else if (constant > 0)
        {
            high = 0;
        }
    }

    private void Keep(double mass)
    {
        double total = 0;
        double cost = 0;
        Span<double> sum = stackalloc double[d];
        for (var k = 0; k < set.Length; k++)
        {
            var part = counts[k] * grams[set[k]];
            for (var j = 0; j < d; j++)
            {
                sum[j] += content[(set[k] * d) + j] * part;
            }

            cost += model.Unpriced[set[k]] > 0 ? double.PositiveInfinity : part * model.Cost[set[k]] * model.Scale[set[k]];
        }

        foreach (var s in sum)
        {
            total += s;
        }

        if (total <= 0 || mass < request.FromGrams * (1 - Slack))
        {
            return;
        }

        double error = 0;
        for (var j = 0; j < d; j++)
        {
            error += Math.Abs((sum[j] / total / model.Target[j]) - 1);
        }

        error /= d;
        if (error <= Math.Min(limit, best.Cutoff))
        {
            best.Add(new FoundSteps([.. set], counts.AsSpan(0, set.Length).ToArray(), error, cost / total));
        }
    }
}
