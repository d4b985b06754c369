namespace Ashery.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Tests", typeof(FirstTest).Namespace);
}
