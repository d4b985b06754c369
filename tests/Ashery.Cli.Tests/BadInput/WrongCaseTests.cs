using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Clinic;
using Json.Schema;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Cases for the clinic that cannot be, on the command line and by their schema.</summary>
public class WrongCaseTests
{
    // Text of the file, what the message names, whether the schema sees it too.
    public static TheoryData<string, string, bool> Files => new()
    {
        { "", "empty", false },
        { "the leaves are yellow", "not JSON", false },
        { "[]", "not an object", true },
        { "null", "not an object", true },
        { "{}", "nothing to go by", false },
        { "{ \"symptoms\": {} }", "nothing to go by", false },
        { "{ \"symptoms\": \"yellow\" }", "not an object", true },
        { "{ \"crop\": 7, \"symptoms\": { \"leaf_age\": \"older\" } }", "not a text", true },
        { "{ \"symptoms\": { \"leaf_age\": { \"a\": 1 } } }", "an answer is a text", true },
        { "{ \"symptoms\": { \"leaf_age\": [1, 2] } }", "an answer is a text", true },
        { "{ \"symptoms\": { \"leaf_age\": \"older\", \"leaf_age\": \"younger\" } }", "stands there twice", false },
        { "{ \"context\": { \"medium_pH\": 55 } }", "lies between 2 and 11", false },
        { "{ \"context\": { \"medium_pH\": \"above 40\" } }", "lies between 2 and 11", false },
        { "{ \"context\": { \"EC\": -1 } }", "lies between 0 and 30", false },
        { "{ \"context\": { \"EC\": 1e999 } }", "answer is a text", false },
        { "{ \"context\": { \"EC\": 1, \"ec_method\": \"tasting\" } }", "no known way to extract", false },
        { "{ \"symptoms\": { \"leaf_age\": \"zxqv\" } }", "was not understood", false },
        { "{ \"history\": { \"wetDays\": 40 }, \"symptoms\": { \"leaf_age\": \"older\" } }", "figure from 0 to 14", true },
        { "{ \"history\": { \"colour\": 4 }, \"symptoms\": { \"leaf_age\": \"older\" } }", "no such field", true },
        { "{ \"a\": { \"b\": { \"c\": { \"d\": { \"e\": { \"f\": { \"g\": 1 } } } } } } }", "too deep", false },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public void A_case_that_is_wrong_says_so(string text, string message, bool bySchema)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("clinic", "--case", folder.Write("case.json", text));
        Assert.Equal(2, run.Code);
        Assert.Contains(message, string.Join(' ', run.Said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
        if (bySchema)
        {
            Assert.False(ByFileSchema(text));
        }
    }

    [Theory]
    [InlineData("clinic", "No case is named")]
    [InlineData("clinic --demo --case a.json", "both named")]
    [InlineData("clinic --case no-such.json", "is not there")]
    [InlineData("clinic --demo --best 0", "whole number from 1")]
    [InlineData("clinic --demo --fields", "goes with no case")]
    public void Words_that_cannot_be(string line, string message)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Contains(message, string.Join(' ', run.Said.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Fact]
    public void Hostile_text_is_only_text()
    {
        using var folder = new TemporaryFolder();
        var hostile = JsonSerializer.Serialize(new { crop = "<script>\u001b[31m", symptoms = new { leaf_age = "older'; DROP TABLE pots; --", notes = "$(rm -rf /) \u001b[2J" + new string('a', 500), chlorosis = "uniform" } });
        var run = Command.Run("clinic", "--case", folder.Write("case.json", hostile));
        Assert.Equal(0, run.Code);
        Assert.DoesNotContain('\u001b', run.Output);
        foreach (var text in new[] { $"{{ \"symptoms\": {{ \"leaf_age\": \"{new string('x', 5000)}\" }} }}", new string('{', 4000), "{ \"symptoms\": { \"" + new string('k', 900) + "\": 1 } }" })
        {
            var bad = Command.Run("clinic", "--case", folder.Write("case.json", text));
            Assert.Equal(2, bad.Code);
            WrongWordsTests.NeverATrace(bad);
        }
    }

    [Fact]
    public void What_was_not_understood_is_named_and_the_rest_counts()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("clinic", "--case", folder.Write("case.json", "{ \"id\": 3, \"symptoms\": { \"leaf_age\": \"older\", \"aura\": \"violet\" }, \"context\": { \"speed\": 7 } }"), "--json");
        Assert.Equal(0, run.Code);
        using var answer = JsonDocument.Parse(run.Output);
        var notes = answer.RootElement.GetProperty("notes").EnumerateArray().Select(static n => n.GetProperty("field").GetString()).ToList();
        Assert.Superset(new HashSet<string?> { "id", "speed" }, new HashSet<string?>(notes));
        Assert.Equal("leaf_age", answer.RootElement.GetProperty("read").EnumerateArray().First(static r => r.GetProperty("given").GetString() == "older").GetProperty("question").GetString());
    }

    [Fact]
    public void The_sample_is_valid_by_the_schema_of_cases() => Assert.True(ByFileSchema(ClinicFile.Sample()));

    private static bool ByFileSchema(string text)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root(), "docs", "schemas", "clinic-file.schema.json")));
        using var document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
