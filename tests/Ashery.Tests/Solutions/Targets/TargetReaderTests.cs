using Ashery.Solutions.Targets;

namespace Ashery.Tests.Solutions.Targets;

/// <summary>How a wish for a solution is written, and what is said of one that cannot be.</summary>
public class TargetReaderTests
{
    [Theory]
    [InlineData("N=150", "N", 150, 150)]
    [InlineData("cl<=50", "Cl", 0, 50)]
    [InlineData("S>=20", "S", 20, double.PositiveInfinity)]
    [InlineData("Ca=80..120", "Ca", 80, 120)]
    [InlineData("nitrate:140", "NO3-N", 140, 140)]
    [InlineData("P2O5=100", "P", 43.64, 43.64)]
    [InlineData("K2O=100", "K", 83.01, 83.01)]
    [InlineData("NO3=100", "NO3-N", 22.59, 22.59)]
    [InlineData("SO4<=300", "S", 0, 100.13)]
    public void A_wish_is_read(string text, string symbol, double low, double high)
    {
        var read = TargetReader.Read(text);
        Assert.True(read.Ok);
        Assert.Equal(symbol, read.Value.Item.Symbol);
        Assert.Equal(low, read.Value.Low, 0.01);
        Assert.Equal(high, read.Value.High, 0.01);
    }

    [Fact]
    public void A_form_may_be_a_part_of_the_nitrogen()
    {
        var read = TargetReader.Read("NH4-N<=15%").Value!;
        Assert.True(read.OfNitrogen);
        Assert.Equal(0.15, read.High, 1e-12);
        Assert.False(read.IsAim);
    }

    [Theory]
    [InlineData("N")]
    [InlineData("=150")]
    [InlineData("N=")]
    [InlineData("N=-5")]
    [InlineData("N=1,5")]
    [InlineData("N=abc")]
    [InlineData("Xy=10")]
    [InlineData("K=10%")]
    [InlineData("Ca=120..80")]
    [InlineData("Ca<=80..120")]
    [InlineData("N=1e9")]
    [InlineData("NH4-N<=150%")]
    public void Anything_else_is_answered_with_the_way_out(string text)
    {
        var read = TargetReader.Read(text);
        Assert.False(read.Ok);
        Assert.All(read.Problems, p => Assert.NotEmpty(p.WayOut));
    }

    [Fact]
    public void An_item_twice_is_refused_and_all_problems_come_together()
    {
        var read = TargetReader.ReadAll("N=150 n=160 Xy=3");
        Assert.False(read.Ok);
        Assert.Equal(2, read.Problems.Count);
    }

    [Theory]
    [InlineData("Cl<=50", null, null, "target")]
    [InlineData("N=150", null, 5.8, "acid")]
    [InlineData("N=150", 900.0, null, "ec")]
    [InlineData("N=150", null, 1.0, "ph")]
    public void A_request_that_cannot_be_is_refused_by_its_field(string wishes, double? ec, double? pH, string field)
    {
        var request = TargetKit.Request(wishes, "soft", "KNO3");
        var answer = TargetSearch.Find(request with { Target = request.Target with { Ec = ec, PH = pH } });
        Assert.False(answer.Ok);
        Assert.Contains(answer.Problems, p => p.Field == field);
    }
}
