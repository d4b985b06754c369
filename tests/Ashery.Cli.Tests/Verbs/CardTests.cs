using System.Text;
using System.Xml.Linq;
using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Verbs;

public class CardTests
{
    private static readonly string[] Mix = ["--crop", "fuchsia", "--demo", "--batch", "1kg", "--name", "Balcony"];

    [Theory]
    [InlineData("card.pdf")]
    [InlineData("card.html")]
    [InlineData("card.svg")]
    [InlineData("card.txt")]
    public void The_end_of_the_name_says_what_is_written(string name)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run(["card", .. Mix, "--to", folder.File(name)]);
        Assert.Equal((0, string.Empty), (run.Code, run.Errors));
        var bytes = File.ReadAllBytes(folder.File(name));
        switch (Path.GetExtension(name))
        {
            case ".pdf":
                Assert.Equal("%PDF-", Encoding.ASCII.GetString(bytes[..5]));
                break;
            case ".svg":
                Assert.Equal("svg", XDocument.Parse(Encoding.UTF8.GetString(bytes)).Root!.Name.LocalName);
                break;
            default:
                Assert.Contains("Balcony", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
                break;
        }
    }

    [Fact]
    public void With_a_garden_the_card_has_a_dose_for_its_pots() =>
        Assert.Contains("Climbing rose", Command.Run(["card", .. Mix]).Output, StringComparison.Ordinal);

    [Fact]
    public void A_wish_out_of_reach_makes_no_card()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("card", "--grade", "40-20-20", "--from", "gypsum,mkp", "--to", folder.File("card.pdf"));
        Assert.Equal(1, run.Code);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }
}
