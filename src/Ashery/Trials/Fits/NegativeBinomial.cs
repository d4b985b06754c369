using Ashery.Trials.Chances;

namespace Ashery.Trials.Fits;

/// <summary>A fitted count model with its spread between pots.</summary>
/// <param name="Model">The fit at this spread.</param>
/// <param name="ThetaError">Standard error of θ; null when no spread beyond counting was found.</param>
/// <param name="LogLikelihood">At the fit.</param>
internal sealed record SpreadFit(CountModel Model, double? ThetaError, double LogLikelihood);

/// <summary>
/// θ by maximum likelihood (Lawless 1987; the alternation of Venables and Ripley 2002, section 7.4): means at this θ, then θ by Newton's
/// steps at these means, until neither moves. Where counts scatter no more than chance, θ has no end and the model is Poisson.
/// </summary>
internal static class NegativeBinomial
{
    private const double Endless = 1e7;

    public static SpreadFit Fit(ModelMatrix matrix, double[] y)
    {
        var model = CountModel.Poisson(matrix, y);
        var alone = new SpreadFit(model, null, model.LogLikelihood(y));

        // The slope of the likelihood where the spread is nothing: below it no spread fits better.
        if (!(Enumerable.Range(0, y.Length).Sum(i => Square(y[i] - model.Means[i]) - y[i]) > 0))
        {
            return alone;
        }

        var theta = Solve(y, model.Means, y.Length / y.Zip(model.Means, static (v, m) => Square((v / m) - 1)).Sum());
        var before = double.NegativeInfinity;
        for (var round = 0; round < 200 && theta < Endless; round++)
        {
            model = CountModel.NegativeBinomial(matrix, y, theta);
            var likelihood = model.LogLikelihood(y);
            var next = Solve(y, model.Means, theta);
            if (Math.Abs(likelihood - before) < 1e-12 * Math.Abs(likelihood) && Math.Abs(next - theta) < 1e-8 * theta)
            {
                break;
            }

            (before, theta) = (likelihood, next);
        }

        if (theta >= Endless)
        {
            return alone;
        }

        model = CountModel.NegativeBinomial(matrix, y, theta);
        return new(model, 1 / Math.Sqrt(Information(y, model.Means, theta)), model.LogLikelihood(y));
    }

    private static double Solve(double[] y, double[] means, double theta)
    {
        for (var step = 0; step < 50 && theta < Endless; step++)
        {
            var score = Score(y, means, theta);
            var information = Information(y, means, theta);

            // Where the likelihood is not hollow, a step by the sign of its slope instead.
            var move = information > 0 ? score / information : theta * Math.Sign(score);
            move = Math.Clamp(move, -theta / 2, theta * 2);
            theta += move;
            if (Math.Abs(move) < 1e-10 * theta)
            {
                break;
            }
        }

        return theta;
    }

    private static double Score(double[] y, double[] means, double theta)
    {
        var sum = 0.0;
        var digamma = Laws.Digamma(theta);
        for (var i = 0; i < y.Length; i++)
        {
            sum += Laws.Digamma(theta + y[i]) - digamma + Math.Log(theta) + 1 - Math.Log(theta + means[i]) - ((y[i] + theta) / (means[i] + theta));
        }

        return sum;
    }

    private static double Information(double[] y, double[] means, double theta)
    {
        var sum = 0.0;
        var trigamma = Laws.Trigamma(theta);
        for (var i = 0; i < y.Length; i++)
        {
            sum += -Laws.Trigamma(theta + y[i]) + trigamma - (1 / theta) + (2 / (means[i] + theta)) - ((y[i] + theta) / Square(means[i] + theta));
        }

        return sum;
    }

    private static double Square(double x) => x * x;
}
