using System.Text.Json;
using Ashery.Cli.Frame;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Text that would move a terminal's cursor, run a command or break a page stays text.</summary>
public class HostileTextTests
{
    private const string Escape = "\u001b[2J\u001b]0;owned\u0007";

    [Theory]
    [InlineData("\u001b[31mred\u001b[0m")]
    [InlineData("a\r\nb")]
    [InlineData("\u202Egnp.exe")]
    [InlineData("\u0000")]
    [InlineData("$(touch owned)`touch owned`;touch owned")]
    [InlineData("'; DROP TABLE pots; --")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("../../../../etc/passwd")]
    [InlineData("%s%n%x{0}{1}")]
    [InlineData("@/etc/passwd")]
    public void Typed_as_a_material_it_is_an_unknown_one(string hostile)
    {
        foreach (var words in new[] { new[] { "materials", hostile }, ["mix", "--ratio", "3:1:2", "--from", hostile], ["mix", "--crop", hostile, "--from", "urea"] })
        {
            var run = Command.Run(words);
            Assert.Equal(2, run.Code);
            OnlyPlainText(run.Errors);
            WrongWordsTests.NeverATrace(run);
        }
    }

    [Fact]
    public void In_names_of_a_garden_file_it_is_shown_without_effect_and_kept_whole_in_json()
    {
        const string Name = "Terrace <b>\"; $(rm -rf /) `id` \\ %s {0} '; DROP TABLE pots";
        var garden = DemoGarden.Create(Command.Today);
        garden = garden with { Name = Name, Pots = [.. garden.Pots.Select(static p => p with { Name = p.Name + "<script>" })] };
        using var folder = new TemporaryFolder();
        var file = folder.Write("garden.json", GardenFile.Write(garden));
        foreach (var verb in new[] { "shelf", "dose", "year" })
        {
            var run = Command.Run(verb, "--garden", file);
            Assert.Equal((0, string.Empty), (run.Code, run.Errors));
            OnlyPlainText(run.Output);
        }

        using var json = JsonDocument.Parse(Command.Run("shelf", "--garden", file, "--json").Output);
        Assert.Equal(Name, json.RootElement.GetProperty("garden").GetString());
    }

    [Fact]
    public void Control_codes_in_names_of_a_garden_file_are_refused_and_not_shown()
    {
        using var folder = new TemporaryFolder();
        var garden = DemoGarden.Create(Command.Today);
        var run = Command.Run("shelf", "--garden", folder.Write("garden.json", GardenFile.Write(garden with { Name = "Terrace" + Escape })));
        Assert.Equal(2, run.Code);
        OnlyPlainText(run.Errors);
    }

    [Fact]
    public void In_a_card_it_is_text()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("card", "--ratio", "3:1:2", "--from", "urea,mkp,potassium-nitrate", "--name", "<script>alert(1)</script>" + Escape, "--to", folder.File("card.html"));
        Assert.Equal(0, run.Code);
        OnlyPlainText(run.Output);
        Assert.DoesNotContain("<script", File.ReadAllText(folder.File("card.html")), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_word_with_an_at_sign_reads_no_file()
    {
        using var folder = new TemporaryFolder();
        var list = folder.Write("words", "--version");
        var run = Command.Run("@" + list);
        Assert.Equal(2, run.Code);
        Assert.Contains("not a verb", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plain Kalksalpeter 15.5 % – über", "plain Kalksalpeter 15.5 % – über")]
    [InlineData("a\tb\u0085c\u2028d\uE000", "a·b·c·d·")]
    [InlineData("🌿 नीम", "🌿 नीम")]
    public void Letters_of_any_script_pass_and_controls_do_not(string text, string shown) => Assert.Equal(shown, SafeText.Of(text));

    private static void OnlyPlainText(string text) =>
        Assert.DoesNotContain(text, static c => (char.IsControl(c) && c != '\n') || c is '\u202E' or '\u2028');
}
