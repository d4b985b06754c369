namespace Ashery.Web.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Web.Tests", typeof(FirstTest).Namespace);
}
