using Ashery.Cli.Frame;
using Ashery.Cli.Tests.Frame;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Waters that cannot be read, on the command line.</summary>
public class WrongWaterTests
{
    [Theory]
    [InlineData("{ \"Ca\": -4 }", "Ca", "negative")]
    [InlineData("{ \"ions\": { \"Na\": { \"value\": 4, \"unit\": \"°dH\" } } }", "Na", "sodium is neither")]
    [InlineData("{ \"ions\": { \"Ca\": 40, \"calcium\": 40 } }", "calcium", "twice")]
    [InlineData("{ \"ions\": { \"NO3\": 4, \"NO3-N\": 1 } }", "NO3-N", "twice")]
    [InlineData("{ \"ions\": { \"Ca\": 80, \"Mg\": 20, \"Na\": 40, \"K\": 4, \"SO4\": 30, \"Cl\": 10, \"NO3\": 5 }, \"alkalinity\": 80 }", "balance", "cations are heavy")]
    [InlineData("{ \"Ca\": 40, \"alkalinity\": 90, \"pH\": 4.2 }", "alkalinity", "no alkalinity")]
    [InlineData("{ \"Ca\": 40, \"pH\": 15 }", "pH", "outside 2 to 12")]
    [InlineData("{ \"Ca\": 80, \"Mg\": 12, \"hardness\": { \"value\": 5, \"unit\": \"°dH\" } }", "hardness", "less than the calcium")]
    [InlineData("{ \"Ca\": \"4,5\" }", "Ca", "Write 4.5")]
    [InlineData("{}", "water", "empty")]
    [InlineData("Ca 40", "water, line 1", "not JSON")]
    public void A_water_file_that_is_wrong_names_the_field(string text, string field, string message)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("water", folder.Write("tap.json", text));
        Assert.Equal(2, run.Code);
        Assert.Contains($"ashery water: {field}", run.Said, StringComparison.Ordinal);
        Assert.Contains(message, run.Said, StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Theory]
    [InlineData("water treacle", "neither a file nor a water that ships")]
    [InlineData("water hrad", "Did you mean hard?")]
    [InlineData("water pure", "nothing to judge")]
    [InlineData("water hard soft", "More than one water")]
    [InlineData("water hard --crop fuschia", "Did you mean fuchsia")]
    [InlineData("water no-such.json", "is not there")]
    public void Words_that_name_no_water(string line, string message)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Contains(message, run.Said, StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Fact]
    public void The_help_names_the_waters_that_ship() =>
        Assert.Equal(WaterSource.Names, string.Join(", ", SourceWaters.Default.All.Select(static w => w.Report.Id)));
}
