namespace Ashery.Exchange.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Exchange.Tests", typeof(FirstTest).Namespace);
}
