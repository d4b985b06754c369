using Ashery.Journal;

namespace Ashery.Tests.Journal;

public sealed class TaskIdTests
{
    [Theory]
    [InlineData("2027-04-03/spring-feed")]
    [InlineData("2027-12-31/a/b c")]
    public void A_planned_feed_reads_back(string text) => Assert.Equal(text, TaskId.Parse(text)?.ToString());

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("2027-04-03")]
    [InlineData("2027-04-03/")]
    [InlineData("2027-13-03/feed")]
    [InlineData("2027-4-3/feed-one")]
    public void Anything_else_is_none(string? text) => Assert.Null(TaskId.Parse(text));
}
