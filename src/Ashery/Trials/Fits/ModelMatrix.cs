namespace Ashery.Trials.Fits;

/// <summary>One term of a model and the columns it owns.</summary>
/// <param name="Name">As a table calls it: <c>blocks</c>, <c>N:P</c>.</param>
/// <param name="From">First column.</param>
/// <param name="Count">How many.</param>
internal sealed record ModelTerm(string Name, int From, int Count);

/// <summary>Columns of a model: a constant, then factors by their differences from the first level, then products of these for interactions.</summary>
internal sealed class ModelMatrix
{
    private readonly List<double[]> columns = [];
    private readonly List<ModelTerm> terms = [];

    public ModelMatrix(int rows)
    {
        Rows = rows;
        var ones = new double[rows];
        Array.Fill(ones, 1);
        columns.Add(ones);
    }

    public int Rows { get; }

    public IReadOnlyList<double[]> Columns => columns;

    public IReadOnlyList<ModelTerm> Terms => terms;

    /// <summary>A factor: for each row the number of its level, 0 the one that the others are compared with.</summary>
    public ModelMatrix Factor(string name, IReadOnlyList<int> levels, int count)
    {
        var from = columns.Count;
        for (var level = 1; level < count; level++)
        {
            var column = new double[Rows];
            for (var i = 0; i < Rows; i++)
            {
                column[i] = levels[i] == level ? 1 : 0;
            }

            columns.Add(column);
        }

        terms.Add(new(name, from, count - 1));
        return this;
    }

    /// <summary>A figure as it is.</summary>
    public ModelMatrix Figure(string name, double[] values)
    {
        terms.Add(new(name, columns.Count, 1));
        columns.Add(values);
        return this;
    }

    /// <summary>What two terms do together beyond their sum.</summary>
    public ModelMatrix Together(string first, string second)
    {
        var (a, b) = (Term(first), Term(second));
        var from = columns.Count;
        for (var j = 0; j < b.Count; j++)
        {
            for (var i = 0; i < a.Count; i++)
            {
                var (x, y) = (columns[a.From + i], columns[b.From + j]);
                var product = new double[Rows];
                for (var k = 0; k < Rows; k++)
                {
                    product[k] = x[k] * y[k];
                }

                columns.Add(product);
            }
        }

        terms.Add(new($"{first}:{second}", from, a.Count * b.Count));
        return this;
    }

    public ModelTerm Term(string name) => terms.Find(t => t.Name == name) ?? throw new ArgumentException($"No term {name}.", nameof(name));

    /// <summary>The contrast of level a less level b of a factor.</summary>
    public double[] Difference(ModelTerm term, int a, int b)
    {
        var l = new double[columns.Count];
        if (a > 0)
        {
            l[term.From + a - 1] = 1;
        }

        if (b > 0)
        {
            l[term.From + b - 1] -= 1;
        }

        return l;
    }
}
