using Ashery.Blending.Model;

namespace Ashery.Blending.WholeSteps;

/// <summary>The best whole-step blends found so far. Multiples of the same proportions count once, the smallest batch of them.</summary>
internal sealed class BestSteps(int capacity)
{
    private readonly List<FoundSteps> found = [];

    public IReadOnlyList<FoundSteps> Found => found;

    public bool Full => found.Count == capacity;

    public double Cutoff => Full ? found[^1].Error + FoundBlend.Tie : double.PositiveInfinity;

    public void Add(FoundSteps blend)
    {
        if (Full && blend.CompareTo(found[^1]) >= 0)
        {
            return;
        }

        for (var i = 0; i < found.Count; i++)
        {
            if (found[i].SameProportions(blend))
            {
                if (found[i].Total <= blend.Total)
                {
                    return;
                }

                found.RemoveAt(i);
                break;
            }
        }

        var at = found.Count;
        while (at > 0 && blend.CompareTo(found[at - 1]) < 0)
        {
            at--;
        }

        found.Insert(at, blend);
        if (found.Count > capacity)
        {
            found.RemoveAt(capacity);
        }
    }
}

/// <summary>A whole-step blend as the search keeps it.</summary>
/// <param name="Members">Canonical columns, ascending.</param>
/// <param name="Steps">Steps of each.</param>
/// <param name="Error">Ratio error.</param>
/// <param name="Cost">Per kg of nutrient; infinite when unknown.</param>
internal sealed record FoundSteps(int[] Members, int[] Steps, double Error, double Cost) : IComparable<FoundSteps>
{
    public long Total { get; } = Steps.Sum(s => (long)s);

    public bool SameProportions(FoundSteps other)
    {
        if (Math.Abs(Error - other.Error) > FoundBlend.Tie || !Members.AsSpan().SequenceEqual(other.Members))
        {
            return false;
        }

        for (var k = 1; k < Steps.Length; k++)
        {
            if ((long)Steps[k] * other.Steps[0] != (long)other.Steps[k] * Steps[0])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Error, cost (unknown last), number of columns, number of steps, names.</summary>
    public int CompareTo(FoundSteps? other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (Math.Abs(Error - other.Error) > FoundBlend.Tie)
        {
            return Error.CompareTo(other.Error);
        }

        var c = FoundBlend.CompareCost(Cost, other.Cost);
        c = c != 0 ? c : Members.Length.CompareTo(other.Members.Length);
        c = c != 0 ? c : Total.CompareTo(other.Total);
        for (var k = 0; c == 0 && k < Members.Length; k++)
        {
            c = Members[k].CompareTo(other.Members[k]);
        }

        for (var k = 0; c == 0 && k < Members.Length; k++)
        {
            c = other.Steps[k].CompareTo(Steps[k]);
        }

        return c;
    }

    public WholeStepBlend ToBlend(BlendModel model, WholeStepRequest request)
    {
        var places = Array.ConvertAll(Members, i => model.Order[i]);
        var steps = (int[])Steps.Clone();
        Array.Sort(places, steps);
        var grams = new double[places.Length];
        for (var k = 0; k < places.Length; k++)
        {
            grams[k] = steps[k] * request.StepGrams[places[k]];
        }

        return new WholeStepBlend(BlendMeasure.Of(request.Blend, places, grams), steps, grams.Sum());
    }
}
