namespace Ashery.Cards.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Cards.Tests", typeof(FirstTest).Namespace);
}
