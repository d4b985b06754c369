using Ashery.Cli.Frame;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Files that are not what they should be.</summary>
public class WrongFilesTests
{
    [Theory]
    [InlineData("", "garden", "")]
    [InlineData("{", "garden, line 1", "")]
    [InlineData("null", "garden", "null")]
    [InlineData("[1, 2]", "garden, line 1", "not of the kind")]
    [InlineData("{ \"format\": \"ashery-garden/9\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 1 } }", "format", "ashery-garden/9")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\" }", "place", "missing")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"colour\": 1 }", "garden, line 1", "no field 'colour'")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 400 } }", "place.latitude", "400")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 1,5 } }", "garden, line 1", "")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 1 }, \"pots\": [ { \"id\": \"a\", \"crop\": \"fuschia\", \"volume\": 3, \"medium\": \"peatMix\" } ] }", "pots[0].crop", "fuschia")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 1 }, \"pots\": [ { \"id\": \"a\", \"crop\": \"fuchsia\", \"volume\": -3, \"medium\": \"peatMix\" } ] }", "pots[0].volume", "")]
    [InlineData("{ \"format\": \"ashery-garden/1\", \"name\": \"x\", \"place\": { \"name\": \"y\", \"latitude\": 1 }, \"shelf\": [ { \"material\": \"uera\" } ] }", "shelf[0].material", "uera")]
    public void A_garden_file_that_is_wrong_names_the_place(string text, string field, string message)
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("garden.json", text);
        foreach (var verb in new[] { "dose", "year", "shelf" })
        {
            var run = Command.Run(verb, "--garden", file);
            Assert.Equal(2, run.Code);
            var said = run.Said;
            Assert.Contains(field, said, StringComparison.Ordinal);
            Assert.Contains(message, said, StringComparison.Ordinal);
            WrongWordsTests.NeverATrace(run);
        }

        Assert.Equal(text, File.ReadAllText(file));
    }

    [Fact]
    public void A_file_that_is_no_text_is_told_so()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder.File("a.json"), [0x50, 0x4b, 3, 4, 0, 0, 0, 1]);
        File.WriteAllBytes(folder.File("b.json"), [0x7b, 0xff, 0xfe, 0x7d]);
        foreach (var name in new[] { "a.json", "b.json" })
        {
            var run = Command.Run("shelf", "--garden", folder.File(name));
            Assert.Equal(2, run.Code);
            Assert.Contains("is not a text", run.Errors, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_file_of_200_MB_is_refused_before_it_is_read()
    {
        using var folder = new TemporaryFolder();
        using (var sparse = File.Create(folder.File("big.json")))
        {
            sparse.SetLength(200L * 1024 * 1024);
        }

        var before = GC.GetTotalAllocatedBytes(precise: true);
        var run = Command.Run("shelf", "--garden", folder.File("big.json"));
        Assert.Equal(2, run.Code);
        Assert.Contains("longer than 16 MB", run.Errors, StringComparison.Ordinal);
        Assert.True(GC.GetTotalAllocatedBytes(precise: true) - before < 20_000_000);
    }

    /// <summary>A pipe has no length; the reading stops by itself.</summary>
    [Fact]
    public void A_stream_without_end_is_refused()
    {
        if (!File.Exists("/dev/zero"))
        {
            Assert.Skip("this system has no /dev/zero");
        }

        var run = Command.Run("shelf", "--garden", "/dev/zero");
        Assert.Equal(2, run.Code);
        Assert.Contains("longer than 16 MB", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_is_no_file()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("shelf", "--garden", folder.Path);
        Assert.Equal(2, run.Code);
        Assert.Contains("is a folder", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_garden_without_bags_cannot_be_mixed_from()
    {
        var garden = DemoGarden.Create(Command.Today) with { Shelf = [], Feeds = [] };
        using var folder = new TemporaryFolder();
        var run = Command.Run("mix", "--ratio", "3:1:2", "--garden", folder.Write("garden.json", GardenFile.Write(garden)));
        Assert.Equal(2, run.Code);
        Assert.Contains("shelf is empty", run.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_garden_store_that_is_no_database_is_left_as_it_is()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("garden.db", "this is no database, but somebody's notes");
        var run = Command.Run(Command.At(folder.Path), "shelf");
        Assert.Equal(2, run.Code);
        Assert.Contains("cannot be opened", run.Said, StringComparison.Ordinal);
        Assert.Equal("this is no database, but somebody's notes", File.ReadAllText(file));
        WrongWordsTests.NeverATrace(run);
    }

    [Fact]
    public void A_file_is_replaced_in_one_step_or_not_at_all()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("card.txt", "old");
        Assert.True(TextFile.Write(file, "new", "to").Ok);
        Assert.Equal("new", File.ReadAllText(file));
        Assert.False(TextFile.Write(Path.Combine(file, "inside.txt"), "x", "to").Ok);
        Assert.Equal(["card.txt"], Directory.GetFiles(folder.Path).Select(Path.GetFileName));
    }
}
