namespace Ashery.Bench;

/// <summary>
/// A discrete Bayesian network by variable elimination as textbooks give it (Zhang and Poole 1994, from memory): factors over any variables, evidence cut out, every
/// variable but the wanted one multiplied in and summed out, fewest neighbours first. It knows nothing of what the variables mean.
/// </summary>
internal sealed class PlainNetwork(int[] states, IReadOnlyList<PlainFactor> factors)
{
    /// <summary>P(wanted | evidence).</summary>
    public double[] Query(int wanted, IReadOnlyDictionary<int, int> evidence)
    {
        var left = factors.Select(f => f.Given(evidence)).ToList();
        var open = Enumerable.Range(0, states.Length).Where(v => v != wanted && !evidence.ContainsKey(v)).ToHashSet();
        while (open.Count > 0)
        {
            var next = open.MinBy(v => left.Where(f => f.Variables.Contains(v)).SelectMany(static f => f.Variables).Distinct().Count());
            open.Remove(next);
            var with = left.Where(f => f.Variables.Contains(next)).ToList();
            if (with.Count == 0)
            {
                continue;
            }

            left.RemoveAll(with.Contains);
            left.Add(with.Aggregate((a, b) => a.Times(b, states)).SumOut(next, states));
        }

        var result = new double[states[wanted]];
        Array.Fill(result, 1);
        foreach (var factor in left)
        {
            for (var s = 0; s < result.Length; s++)
            {
                result[s] *= factor.Variables.Length == 0 ? factor.Values[0] : factor.Values[s];
            }
        }

        var sum = result.Sum();
        return Array.ConvertAll(result, p => p / sum);
    }

    /// <summary>Doubt that knowing each open variable would take off the wanted one on average, bits: P(answer) and P(wanted | answer) asked anew for each.</summary>
    public Dictionary<int, double> Gains(int wanted, IReadOnlyDictionary<int, int> evidence)
    {
        var doubt = Entropy(Query(wanted, evidence));
        var gains = new Dictionary<int, double>();
        foreach (var v in Enumerable.Range(0, states.Length).Where(v => v != wanted && !evidence.ContainsKey(v)))
        {
            var answers = Query(v, evidence);
            gains[v] = doubt - Enumerable.Range(0, states[v]).Sum(a => answers[a] * Entropy(Query(wanted, new Dictionary<int, int>(evidence) { [v] = a })));
        }

        return gains;
    }

    private static double Entropy(double[] odds) => -odds.Where(static p => p > 0).Sum(static p => p * Math.Log2(p));
}

/// <summary>A table over some variables, the last one changing fastest.</summary>
internal sealed record PlainFactor(int[] Variables, int[] Sizes, double[] Values)
{
    public PlainFactor Given(IReadOnlyDictionary<int, int> evidence)
    {
        if (!Variables.Any(evidence.ContainsKey))
        {
            return this;
        }

        var kept = Enumerable.Range(0, Variables.Length).Where(i => !evidence.ContainsKey(Variables[i])).ToArray();
        var sizes = kept.Select(i => Sizes[i]).ToArray();
        var values = new double[sizes.Aggregate(1, static (a, b) => a * b)];
        for (var at = 0; at < Values.Length; at++)
        {
            var states = States(at);
            if (Enumerable.Range(0, Variables.Length).All(i => !evidence.TryGetValue(Variables[i], out var s) || s == states[i]))
            {
                values[Place(kept.Select(i => states[i]).ToArray(), sizes)] = Values[at];
            }
        }

        return new([.. kept.Select(i => Variables[i])], sizes, values);
    }

    public PlainFactor Times(PlainFactor other, int[] all)
    {
        var variables = Variables.Union(other.Variables).ToArray();
        var sizes = variables.Select(v => all[v]).ToArray();
        var product = new PlainFactor(variables, sizes, new double[sizes.Aggregate(1, static (a, b) => a * b)]);
        for (var at = 0; at < product.Values.Length; at++)
        {
            var states = product.States(at);
            product.Values[at] = Values[Place([.. Variables.Select(v => states[Array.IndexOf(variables, v)])], Sizes)]
                * other.Values[Place([.. other.Variables.Select(v => states[Array.IndexOf(variables, v)])], other.Sizes)];
        }

        return product;
    }

    public PlainFactor SumOut(int variable, int[] all)
    {
        var kept = Variables.Where(v => v != variable).ToArray();
        var sizes = kept.Select(v => all[v]).ToArray();
        var values = new double[sizes.Aggregate(1, static (a, b) => a * b)];
        for (var at = 0; at < Values.Length; at++)
        {
            var states = States(at);
            values[Place([.. kept.Select(v => states[Array.IndexOf(Variables, v)])], sizes)] += Values[at];
        }

        return new(kept, sizes, values);
    }

    private int[] States(int at)
    {
        var states = new int[Sizes.Length];
        for (var i = Sizes.Length - 1; i >= 0; i--)
        {
            states[i] = at % Sizes[i];
            at /= Sizes[i];
        }

        return states;
    }

    private static int Place(int[] states, int[] sizes)
    {
        var at = 0;
        for (var i = 0; i < states.Length; i++)
        {
            at = (at * sizes[i]) + states[i];
        }

        return at;
    }
}
