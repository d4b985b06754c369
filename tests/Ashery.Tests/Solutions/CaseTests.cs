using Ashery.Solutions;

namespace Ashery.Tests.Solutions;

/// <summary>The bounds over all reference cases; the table itself is in docs/science/solutions.md.</summary>
public class CaseTests
{
    [Fact]
    public void All_cases_are_there() => Assert.Equal(127, ErrorTable.Rows.Count);

    [Fact]
    public void Up_to_ionic_strength_a_tenth_conductivity_and_ph_lie_close()
    {
        var counted = ErrorTable.Counted;
        Assert.Equal(121, counted.Count);
        var inside = counted.Count(r => Math.Abs(r.Ec) <= 3 && Math.Abs(r.Ec25) <= 3 && Math.Abs(r.Ph) <= 0.05);
        TestContext.Current.TestOutputHelper!.WriteLine(FormattableString.Invariant($"{inside} of {counted.Count} inside\n") + ErrorTable.Markdown());
        Assert.True(inside >= 0.95 * counted.Count, FormattableString.Invariant($"{inside} of {counted.Count}"));
        Assert.All(counted, r => Assert.True(Math.Abs(r.Ec) <= 8 && Math.Abs(r.Ec25) <= 8 && Math.Abs(r.Ph) <= 0.15, r.ToString()));
    }

    [Fact]
    public void Saturation_indices_lie_within_a_tenth() =>
        Assert.All(ErrorTable.Counted, r => Assert.True(Math.Abs(r.Index) <= 0.1, r.ToString()));

    [Fact]
    public void Open_to_the_air_the_cases_lie_as_close() =>
        Assert.All(ErrorTable.Counted.Where(r => !double.IsNaN(r.OpenPh)), r => Assert.True(Math.Abs(r.OpenPh) <= 0.05 && Math.Abs(r.OpenEc) <= 3, r.ToString()));

    [Fact]
    public void Balances_close() => Assert.All(Reference.Cases, c =>
    {
        var solution = Speciation.Solve(Reference.Input(c));
        Assert.True(solution.Certificate.Holds, $"{c.GetProperty("id")}: {solution.Certificate}");
    });
}
