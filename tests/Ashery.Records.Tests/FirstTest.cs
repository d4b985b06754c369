namespace Ashery.Records.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Records.Tests", typeof(FirstTest).Namespace);
}
