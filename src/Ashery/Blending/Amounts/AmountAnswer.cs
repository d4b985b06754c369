namespace Ashery.Blending.Amounts;

/// <summary>The amounts found, best first.</summary>
/// <param name="Blends">Ordered by error, cost (mass where a price is missing), number of columns, names. Empty when no amounts keep the rows.</param>
/// <param name="Proved">True when no other set of columns can come before the last one shown.</param>
/// <param name="Certificate">Multipliers that prove a bound; null when there is no blend.</param>
/// <param name="Bound">
/// The error no amounts of the columns can pass below, whatever their number, worked out from the certificate in decimal arithmetic; null without one.
/// </param>
public sealed record AmountAnswer(IReadOnlyList<AmountBlend> Blends, bool Proved, Certificate? Certificate, decimal? Bound);

/// <summary>One set of columns at its best amounts.</summary>
/// <param name="Members">Column indices, ascending; empty when nothing is best.</param>
/// <param name="Masses">In the order of the members.</param>
/// <param name="Amounts">What there is of each of the target's nutrients, the fixed column included.</param>
/// <param name="Error">Mean relative deviation of the amounts from the wanted ones.</param>
/// <param name="LargestDeviation">Largest relative deviation.</param>
/// <param name="Cost">Price of the masses; null when a price is unknown.</param>
public sealed record AmountBlend(
    IReadOnlyList<int> Members,
    IReadOnlyList<double> Masses,
    IReadOnlyList<double> Amounts,
    double Error,
    double LargestDeviation,
    double? Cost)
{
    /// <summary>The figures of given masses, straight from the definitions.</summary>
    public static AmountBlend Of(AmountRequest request, IReadOnlyList<int> members, IReadOnlyList<double> masses)
    {
        var amounts = new double[request.Target.Count];
        double error = 0, largest = 0;
        double? cost = 0;
        for (var j = 0; j < amounts.Length; j++)
        {
            amounts[j] = request.Fixed[j];
            for (var k = 0; k < members.Count; k++)
            {
                amounts[j] += request.Columns[members[k]].Content[j] * masses[k];
            }

            var deviation = Math.Abs((amounts[j] / request.Target[j]) - 1);
            error += deviation / amounts.Length;
            largest = Math.Max(largest, deviation);
        }

        for (var k = 0; k < members.Count; k++)
        {
            cost += request.Columns[members[k]].Price * masses[k];
        }

        return new(members, masses, amounts, error, largest, cost);
    }
}
