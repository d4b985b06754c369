using System.Globalization;
using System.Text.Json;
using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>The text and the JSON of a verb say the same.</summary>
public class SameContentTests
{
    public static TheoryData<string> Lines =>
    [
        "mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 120g --step 1g",
        "mix --grade 30-10-20 --from ammonium-sulfate,mkp,potassium-sulfate",
        "compatible urea mkp gypsum",
        "water",
        "water saline",
        "dose --demo --on 2026-05-20",
        "year --demo --from 2026-03-01",
        "card --kind label --crop fuchsia --demo --batch 1kg",
        "shelf --demo",
        "stock --demo",
        "batch terrace-blend --grams 500 --demo",
        "batch --trace 260402-01 --demo",
        "batch --recall N-26-02 --demo",
        "materials --search potash",
        "materials potassium-nitrate",
        "crops --search rose",
        "crops fuchsia",
        "completion zsh",
    ];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_verb_prints_sound_json_with_the_same_exit_code(string line)
    {
        var text = Command.Run(Shell.Split(line));
        var run = Command.Run([.. Shell.Split(line), "--json"]);
        Assert.Equal((text.Code, string.Empty), (run.Code, run.Errors));
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        Assert.EndsWith("}\n", run.Output, StringComparison.Ordinal);
    }

    /// <summary>Words that stand in the one (names, reasons, sources, notes) stand in the other.</summary>
    [Theory]
    [InlineData("compatible urea mkp gypsum", "reason", "source", "a", "b")]
    [InlineData("shelf --demo", "name", "id")]
    [InlineData("stock --demo", "lot", "unpriced", "feed")]
    [InlineData("batch terrace-blend --grams 500 --demo", "bag", "words", "useByWhy")]
    [InlineData("batch --trace 260402-01 --demo", "bag", "lot")]
    [InlineData("batch --recall N-26-02 --demo", "lot", "pot")]
    [InlineData("water", "id", "about")]
    [InlineData("water saline", "name", "words", "how", "judgedFor", "judgedBy")]
    [InlineData("materials potassium-nitrate", "name", "source", "cautions", "regulations")]
    [InlineData("crops fuchsia", "name", "latin", "source", "notes")]
    [InlineData("dose --demo --on 2026-05-20", "name", "rateBand", "how")]
    [InlineData("mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --full", "name", "message", "words", "errorMeasure")]
    [InlineData("year --demo --from 2026-03-01 --full", "feedName", "reasons", "statement", "material")]
    [InlineData("card --kind label --crop fuchsia --demo --batch 1kg", "title", "value", "kind")]
    public void What_the_json_says_in_words_the_text_says_too(string line, params string[] fields)
    {
        var output = Command.Run(Shell.Split(line)).Output;
        var text = Squeezed(output);
        using var json = JsonDocument.Parse(Command.Run([.. Shell.Split(line), "--json"]).Output);
        var words = new List<string>();
        Collect(json.RootElement, fields, inField: false, words);
        Assert.NotEmpty(words);
        Assert.All(words.Distinct(), word => Assert.True(text.Contains(Squeezed(word), StringComparison.OrdinalIgnoreCase) || InATable(word, output), word));
    }

    // In a table a cell of several words may stand on several lines, between the cells beside it.
    private static bool InATable(string value, string output) =>
        value.Length < 80 && value.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => output.Contains(word, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void The_grams_of_the_text_are_those_of_the_json()
    {
        const string Line = "mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 120g --step 1g";
        var text = Command.Run(Shell.Split(Line)).Output;
        using var json = JsonDocument.Parse(Command.Run([.. Shell.Split(Line), "--json"]).Output);
        var parts = json.RootElement.GetProperty("blends")[0].GetProperty("parts").EnumerateArray().ToList();
        Assert.NotEmpty(parts);
        Assert.All(parts, part => Assert.Contains(
            $"({part.GetProperty("material").GetString()})",
            text.Split('\n').First(l => l.Contains(part.GetProperty("grams").GetDouble().ToString("0.00", CultureInfo.InvariantCulture), StringComparison.Ordinal)),
            StringComparison.Ordinal));
    }

    /// <summary>Errors as JSON are the same problems.</summary>
    [Fact]
    public void What_is_wrong_is_json_too_when_json_was_asked_for()
    {
        var run = Command.Run("mix", "--ratio", "3:1", "--from", "urea", "--json");
        Assert.Equal(2, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var problem = Assert.Single(json.RootElement.GetProperty("problems").EnumerateArray());
        Assert.Contains(Squeezed(problem.GetProperty("message").GetString()!), Squeezed(run.Errors), StringComparison.Ordinal);
        Assert.Contains(Squeezed(problem.GetProperty("wayOut").GetString()!), Squeezed(run.Errors), StringComparison.Ordinal);
    }

    private static void Collect(JsonElement element, string[] fields, bool inField, List<string> words)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var property in element.EnumerateObject())
                {
                    Collect(property.Value, fields, fields.Contains(property.Name), words);
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in element.EnumerateArray())
                {
                    Collect(item, fields, inField, words);
                }

                break;
            case JsonValueKind.String when inField:
                words.Add(element.GetString()!);
                break;
        }
    }

    // Lines are broken and tables cut words; letters and digits stay in order.
    private static string Squeezed(string text) => string.Concat(text.Where(char.IsLetterOrDigit));
}
