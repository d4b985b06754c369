namespace Ashery.Judges.Tests;

public class FirstTest
{
    [Fact]
    public void Test_project_runs() => Assert.Equal("Ashery.Judges.Tests", typeof(FirstTest).Namespace);
}
