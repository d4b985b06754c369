namespace Ashery.Clinic.Knowledge;

/// <summary>Single causes, every pair of shortages, and last "something else".</summary>
internal static class CauseList
{
    public const string SomethingElse = "something-else";

    public static Cause[] Of(ClinicData data)
    {
        var sum = data.Causes.Sum(static c => c.Often);
        var causes = new List<Cause>();
        foreach (var row in data.Causes)
        {
            causes.Add(new(row.Id, row.Name, row.Kind, row.Often / sum) { Row = row });
        }

        var singles = causes.Count;
        for (var i = 0; i < singles; i++)
        {
            for (var k = i + 1; k < singles; k++)
            {
                if (causes[i].Kind == CauseKind.Shortage && causes[k].Kind == CauseKind.Shortage)
                {
                    causes.Add(Pair(data, causes, i, k));
                }
            }
        }

        // What is left for the causes that are known, in their proportions.
        var all = causes.Sum(static c => c.Prior);
        var known = 1 - data.Model.SomethingElse;
        for (var i = 0; i < causes.Count; i++)
        {
            causes[i] = causes[i] with { Prior = causes[i].Prior / all * known };
        }

        causes.Add(new(SomethingElse, "something else", CauseKind.Unknown, data.Model.SomethingElse));
        return [.. causes];
    }

    // Two at once as if by chance, times a factor where they come together.
    private static Cause Pair(ClinicData data, List<Cause> causes, int a, int b)
    {
        var (one, two) = (causes[a], causes[b]);
        PairRow? named = null;
        foreach (var row in data.Pairs)
        {
            if ((row.A == one.Id && row.B == two.Id) || (row.A == two.Id && row.B == one.Id))
            {
                named = row;
            }
        }

        var name = named?.Name ?? $"{Element(one)} + {Element(two)} deficiency";
        return new($"{one.Id}+{two.Id}", name, CauseKind.Pair, one.Prior * two.Prior * (named?.Together ?? 1)) { Pair = (a, b), Named = named };

        static string Element(Cause cause) => cause.Name.Replace(" deficiency", string.Empty, StringComparison.Ordinal);
    }
}
