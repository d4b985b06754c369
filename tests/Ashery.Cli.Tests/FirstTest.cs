namespace Ashery.Cli.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Cli.Tests", typeof(FirstTest).Namespace);
}
