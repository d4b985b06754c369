using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Compatibility;
using Ashery.Exchange.Json;

namespace Ashery.Exchange.Tests.Json;

/// <summary>The shared form of every JSON text, and what a reader says of one that is wrong.</summary>
public partial class AsheryJsonTests
{
    private static readonly SampleContext Context = new(new JsonSerializerOptions(AsheryJson.Options));

    [Fact]
    public void Names_and_words_are_camel_case_and_letters_stay_as_they_are()
    {
        var text = AsheryJson.Write(new Sample("Kalk & Söhne <b>", 2.5, Verdict.Limited), Context.Sample);
        Assert.Equal("{\n  \"bagName\": \"Kalk & Söhne <b>\",\n  \"grams\": 2.5,\n  \"dryToday\": \"limited\"\n}\n", text);
    }

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var sample = new Sample("a\u001b[31m\"b", 0.1 + 0.2, Verdict.Stop);
        var back = AsheryJson.Read(AsheryJson.Write(sample, Context.Sample), Context.Sample, "sample");
        Assert.True(back.Ok);
        Assert.Equal(sample, back.Value);
    }

    [Theory]
    [InlineData("{ \"bagName\": \"x\", \"grams\": 1, \"dryToday\": \"fine\", \"colour\": 3 }", "sample, line 1", "no field 'colour'")]
    [InlineData("{ \"bagName\": \"x\", \"grams\": 1 }", "sample, line 1", "Missing: 'dryToday'")]
    [InlineData("{\n \"bagName\": \"x\",\n \"grams\": \"1\", \"dryToday\": \"fine\" }", "sample, line 3, grams", "not of the kind")]
    [InlineData("{ \"bagName\": \"x\", \"grams\": 1,5, \"dryToday\": \"fine\" }", "sample, line 1", "'5'")]
    [InlineData("{ \"bagName\": \"x\", \"grams\": 1, \"dryToday\": \"maybe\" }", "sample, line 1, dryToday", "not of the kind")]
    [InlineData("{ \"bagName\": \"x\", \"grams\": 1, \"dryToday\": 2 }", "sample, line 1, dryToday", "not of the kind")]
    [InlineData("{ \"bagName\": \"x\", \"grams\": NaN, \"dryToday\": \"fine\" }", "sample, line 1", "'N'")]
    [InlineData("{ \"bagName\": \"x\", \"bagName\": \"y\", \"grams\": 1, \"dryToday\": \"fine\" }", "sample, line 1", "bagName")]
    [InlineData("null", "sample", "only 'null'")]
    [InlineData("", "sample", "")]
    [InlineData("\u0000\u0001PK", "sample, line 1", "")]
    public void A_wrong_text_names_its_line_and_field(string text, string field, string message)
    {
        var result = AsheryJson.Read(text, Context.Sample, "sample");
        Assert.False(result.Ok);
        var problem = Assert.Single(result.Problems);
        Assert.StartsWith(field, problem.Field, StringComparison.Ordinal);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.NotEmpty(problem.WayOut);
    }

    [Fact]
    public void A_text_that_is_too_long_is_refused_before_it_is_read()
    {
        var result = AsheryJson.Read(new string(' ', AsheryJson.LongestText + 1), Context.Sample, "sample");
        Assert.Contains("longer than 16 MB", Assert.Single(result.Problems).Message, StringComparison.Ordinal);
    }

    internal sealed record Sample(
        string BagName, double Grams, [property: JsonConverter(typeof(WordConverter<Verdict>))] Verdict DryToday);

    [JsonSerializable(typeof(Sample))]
    internal sealed partial class SampleContext : JsonSerializerContext;
}
