namespace Ashery.Solutions;

/// <summary>
/// Which species two unknowns have in common, so that an entry of the Hessian, the sum of ν_ij ν_ik m_i over the species i, is one short sum.
/// </summary>
/// <param name="Places">Where each pair with a species in common lies in the columns of <see cref="Cholesky"/>.</param>
/// <param name="Starts">Its first term, and at the end the number of terms.</param>
/// <param name="Species">Species of each term.</param>
/// <param name="Products">ν_ij ν_ik of each term.</param>
internal sealed record PairTerms(int[] Places, int[] Starts, int[] Species, double[] Products)
{
    public static PairTerms None { get; } = new([], [0], [], []);

    public static PairTerms Of(AqueousSystem system)
    {
        var stride = Cholesky.Stride(system.Unknowns);
        List<int> places = [], starts = [], species = [];
        var products = new List<double>();
        for (var j = 0; j < system.Unknowns; j++)
        {
            for (var k = j; k < system.Unknowns; k++)
            {
                var first = species.Count;
                for (var i = 0; i < system.Species.Count; i++)
                {
                    var product = system.Rows[(i * system.Width) + j] * system.Rows[(i * system.Width) + k];
                    if (product != 0)
                    {
                        species.Add(i);
                        products.Add(product);
                    }
                }

                if (species.Count > first)
                {
                    places.Add((j * stride) + k);
                    starts.Add(first);
                }
            }
        }

        starts.Add(species.Count);
        return new([.. places], [.. starts], [.. species], [.. products]);
    }
}
