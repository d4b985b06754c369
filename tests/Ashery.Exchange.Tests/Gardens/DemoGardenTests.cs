using Ashery.Exchange.Gardens;
using Ashery.Planning;

namespace Ashery.Exchange.Tests.Gardens;

public class DemoGardenTests
{
    private static readonly DateOnly Today = new(2027, 2, 3);

    [Fact]
    public void Demo_garden_is_a_demo_with_eighteen_pots_of_several_crops()
    {
        var garden = DemoGarden.Create(Today);
        Assert.True(garden.IsDemo);
        Assert.Equal(18, garden.Pots.Sum(static p => p.Count));
        Assert.True(garden.Pots.Select(static p => p.CropId).Distinct().Count() >= 10);
        Assert.InRange(garden.Shelf.Count, 12, 15);
    }

    [Fact]
    public void Written_and_read_back_it_is_the_same_text()
    {
        var once = GardenFile.Write(DemoGarden.Create(Today));
        var read = GardenFile.Read(once);
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        Assert.Equal(once, GardenFile.Write(read.Value));
    }

    [Fact]
    public void Dates_move_with_today()
    {
        var early = DemoGarden.Create(Today);
        var late = DemoGarden.Create(Today.AddDays(100));
        Assert.Equal(early.Pots[0].LastRepotted!.Value.AddDays(100), late.Pots[0].LastRepotted);
    }

    [Fact]
    public void A_year_can_be_planned_for_it()
    {
        var plan = YearPlanner.Plan(new(DemoGarden.Create(Today), Today));
        Assert.NotEmpty(plan.Feeds);
        Assert.NotEmpty(plan.Seasons);
    }
}
