using System.Text;
using Ashery.Cli.Tests.BadInput;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>Bags in and out: what is right is kept, what is wrong changes nothing.</summary>
public class ShelfTests
{
    [Fact]
    public void What_is_exported_comes_back_the_same()
    {
        using var folder = new TemporaryFolder();
        var garden = folder.Write("garden.json", GardenFile.Write(DemoGarden.Create(Command.Today)));
        var before = Command.Run("shelf", "--garden", garden).Output;
        Assert.Equal(0, Command.Run("shelf", "--garden", garden, "--export", folder.File("bags.csv")).Code);
        Assert.Equal(before, Command.Run("shelf", "--garden", garden, "--import", folder.File("bags.csv")).Output);
        Assert.Equal(before, Command.Run("shelf", "--garden", garden).Output);
    }

    [Fact]
    public void A_garden_file_becomes_the_stored_garden_and_bags_are_added_to_it()
    {
        using var folder = new TemporaryFolder();
        var at = Command.At(folder.Path);
        Assert.Equal(2, Command.Run(at, "shelf").Code);
        var demo = DemoGarden.Create(Command.Today);
        Assert.Equal(0, Command.Run(at, "shelf", "--import", folder.Write("garden.json", GardenFile.Write(demo))).Code);
        Assert.Equal(Command.Run("shelf", "--demo").Output, Command.Run(at, "shelf").Output);
        var bags = folder.Write("bags.csv", "material,left,size,price\nurea,2 kg,5 kg,8.5\n");
        var run = Command.Run(at, "shelf", "--import", bags);
        Assert.Equal((0, string.Empty), (run.Code, run.Errors));
        Assert.Contains("urea", Command.Run(at, "shelf").Output, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{demo.Shelf.Count + 1} bags"), Command.Run(at, "shelf").Output, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> WrongTables => new()
    {
        { "", "" },
        { "material\n", "no bag" },
        { "material,left\nuera,2 kg\n", "uera" },
        { "material,left\nurea,2,5 kg\n", "" },
        { "material,left\nurea,two\n", "line 2" },
        { "material,price\nurea,\"1,5\"\n", "line 2" },
        { "material,N\nurea,92\n", "line 2" },
        { "material,colour\nurea,red\n", "colour" },
        { "material\nurea\nurea\n", "line 3" },
        { "material\n\"urea\n", "" },
        { "material,left\nurea,-5 kg\n", "line 2" },
        { "material,left\nurea,NaN kg\n", "line 2" },
    };

    [Theory]
    [MemberData(nameof(WrongTables))]
    public void A_table_with_a_mistake_changes_nothing(string text, string said)
    {
        using var folder = new TemporaryFolder();
        var garden = folder.Write("garden.json", GardenFile.Write(DemoGarden.Create(Command.Today)));
        var before = File.ReadAllText(garden);
        var run = Command.Run("shelf", "--garden", garden, "--import", folder.Write("bags.csv", text));
        Assert.Equal(2, run.Code);
        Assert.Contains(said, run.Said, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(garden));
        WrongWordsTests.NeverATrace(run);
    }

    [Fact]
    public void A_table_of_200_MB_and_one_that_is_no_text_are_refused()
    {
        using var folder = new TemporaryFolder();
        var garden = folder.Write("garden.json", GardenFile.Write(DemoGarden.Create(Command.Today)));
        using (var sparse = File.Create(folder.File("big.csv")))
        {
            sparse.Write(Encoding.UTF8.GetBytes("material\nurea\n"));
            sparse.SetLength(200L * 1024 * 1024);
        }

        File.WriteAllBytes(folder.File("sheet.csv"), [0x50, 0x4b, 3, 4, 0x14, 0, 6, 0, 8, 0, 0, 0, 0x21, 0]);
        var before = GC.GetTotalAllocatedBytes(precise: true);
        foreach (var name in new[] { "big.csv", "sheet.csv" })
        {
            var run = Command.Run("shelf", "--garden", garden, "--import", folder.File(name));
            Assert.Equal(2, run.Code);
            Assert.NotEmpty(run.Errors);
            WrongWordsTests.NeverATrace(run);
        }

        Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 50_000_000);
    }

    [Theory]
    [InlineData("--import", "bags.xlsx", "neither in .csv nor in .json")]
    [InlineData("--import", "no-such.csv", "cannot be read")]
    [InlineData("--export", "bags.xlsx", "neither in .csv nor in .json")]
    public void Files_of_another_kind_are_refused(string option, string file, string said)
    {
        using var folder = new TemporaryFolder();
        var garden = folder.Write("garden.json", GardenFile.Write(DemoGarden.Create(Command.Today)));
        var run = Command.Run("shelf", "--garden", garden, option, file);
        Assert.Equal(2, run.Code);
        Assert.Contains(said, run.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_brought_into_the_demo() => Assert.Equal(2, Command.Run("shelf", "--demo", "--import", "bags.csv").Code);
}
