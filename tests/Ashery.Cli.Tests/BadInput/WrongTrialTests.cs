using System.Text.Json.Nodes;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Trials;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>Trials that cannot be, on the command line, in the file and in the results.</summary>
public class WrongTrialTests
{
    public static TheoryData<string, string> Words => new()
    {
        { "trial", "Neither design nor analyse" },
        { "trial desing", "Did you mean design?" },
        { "trial design", "No feeds are named" },
        { "trial design --feeds one", "A trial of 1 feed cannot be" },
        { "trial design --feeds a,a", "stands there twice" },
        { "trial design --feeds a,b --control c", "is not one of the feeds" },
        { "trial design --feeds a,b --kind weight", "is not one of count, measurement" },
        { "trial design --feeds a,b --difference 0", "difference: 0 is outside" },
        { "trial design --feeds a,b --difference -100", "difference" },
        { "trial design --feeds a,b --spread NaN", "spread" },
        { "trial design --feeds a,b --power 100", "power" },
        { "trial design --feeds a,b --pots 99999", "pots" },
        { "trial design --feeds a,b --demo --pots p99", "There is no pot 'p99'" },
        { "trial design --feeds a,b --looks 0", "looks" },
        { "trial design --feeds a,b --key key.txt", "not blind" },
        { "trial design --feeds a,b --plan plan.doc", "does not end in" },
        { "trial design --feeds a,b --to trial.txt", "does not end in .json" },
        { "trial design gone.json", "is not there" },
        { "trial analyse", "A trial and its results are needed" },
        { "trial analyse --demo --look 4", "Look 4 of 1" },
        { "trial analyse --demo --picture trial.png", "does not end in .svg" },
    };

    public static TheoryData<string, string, string> Changes => new()
    {
        { "format", "\"ashery-trial/9\"", "not a trial file of this edition" },
        { "name", "7", "not of the kind" },
        { "name", "\"\"", "name" },
        { "feeds", "[]", "A trial of 0 feeds" },
        { "feeds", "[ null, null ]", "feeds[0]" },
        { "feeds", "[ { \"name\": \"a\" }, { \"name\": \"b\", \"factors\": { \"N\": \"1\" } } ]", "same factors" },
        { "measure", "{ \"kind\": \"guess\", \"name\": \"x\" }", "There is no \"guess\"" },
        { "wish", "{ \"spread\": -3 }", "spread" },
        { "wish", "{ \"power\": 1e400 }", "trial" },
        { "layout", "[ { \"pot\": \"T01\", \"feed\": \"gone\" } ]", "no feed \"gone\"" },
        { "layout", "[ { \"pot\": \"T01\", \"feed\": \"old\", \"block\": -4 } ]", "block" },
        { "results", "[ { \"pot\": \"T99\", \"value\": 3 } ]", "no such pot" },
        { "results", "[ { \"pot\": \"T01\", \"value\": 2.5 } ]", "is not a count" },
        { "results", "[ { \"pot\": \"T01\", \"value\": -1 } ]", "is not a count" },
        { "results", "[ { \"pot\": \"T01\", \"date\": \"2026-02-30\", \"value\": 1 } ]", "not a date" },
        { "results", "[ { \"pot\": \"T01\", \"value\": 1 }, { \"pot\": \"T01\", \"value\": 2 } ]", "two figures" },
        { "results", "[]", "There is no figure" },
        { "looks", "99", "looks" },
        { "spending", "\"all\"", "There is no \"all\"" },
        { "moon", "\"full\"", "no field 'moon'" },
    };

    public static TheoryData<string, string> Sheets => new()
    {
        { "", "no line" },
        { "plant,figure,colour,size\nT01,3,red,2\n", "needs the columns pot and value" },
        { "pot,value\nT01,many\n", "line 2, value" },
        { "pot,value\n,3\n", "line 2, pot" },
        { "pot,date,value\nT01,12.6.2026,3\n", "not a date" },
        { "pot;value\nT01;2,5\n", "not a number" },
        { "pot,value\nT01,1e999\n", "not a number" },
        { "pot,value\n=cmd,3\n", "no such pot" },
    };

    [Theory]
    [MemberData(nameof(Words))]
    public void Words_that_cannot_be_are_answered(string line, string said)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run(folder.Into(Shell.Split(line)));
        Assert.Equal(2, run.Code);
        Assert.Contains(said, Whole(run.Errors), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_file_that_cannot_be_is_answered(string field, string value, string said)
    {
        using var folder = new TemporaryFolder();
        var sample = JsonNode.Parse(TrialFile.Sample())!.AsObject();
        sample[field] = "$";
        var run = Command.Run("trial", "analyse", folder.Write("t.json", sample.ToJsonString().Replace("\"$\"", value, StringComparison.Ordinal)));
        Assert.Equal(2, run.Code);
        Assert.Contains(said, Whole(run.Errors), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Results_that_cannot_be_are_answered(string sheet, string said)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("trial", "analyse", folder.Write("t.json", TrialFile.Sample()), folder.Write("r.csv", sheet));
        Assert.Equal(2, run.Code);
        Assert.Contains(said, Whole(run.Errors), StringComparison.Ordinal);
    }

    /// <summary>What cannot be answered ends with the code of a wish out of reach.</summary>
    [Fact]
    public void One_pot_a_feed_proves_nothing()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("trial", "analyse", folder.Write("t.json", TrialFile.Sample()), folder.Write("r.csv", "T07\t3\nT08\t9\nT09\t12\n"));
        Assert.Equal(1, run.Code);
        Assert.Contains("One pot a feed proves nothing", Whole(run.Output), StringComparison.Ordinal);
    }

    /// <summary>The kept file, the sheet typed and the picture: one way through all of it.</summary>
    [Fact]
    public void A_trial_goes_from_design_to_answer()
    {
        using var folder = new TemporaryFolder();
        var design = Command.Run(folder.Into(["trial", "design", "--feeds", "a,b", "--kind", "measurement", "--pots", "6", "--to", "t.json", "--sheet", "r.csv", "--plan", "p.pdf", "--tags", "t.svg"]));
        Assert.Equal((0, string.Empty), (design.Code, design.Errors));
        var kept = TrialFile.Read(File.ReadAllText(folder.File("t.json"))).Value!.Trial;
        var filled = File.ReadAllLines(folder.File("r.csv")).Select((l, i) => i == 0 ? l : l + (kept.Layout[i - 1].Treatment == "a" ? 10 + i : 20 + (i * i / 8.0)).ToString(System.Globalization.CultureInfo.InvariantCulture));
        File.WriteAllLines(folder.File("r.csv"), filled);
        var run = Command.Run("trial", "analyse", folder.File("t.json"), folder.File("r.csv"), "--picture", folder.File("e.svg"));
        Assert.Equal((0, string.Empty), (run.Code, run.Errors));
        Assert.Contains("95 % interval", Whole(run.Output), StringComparison.Ordinal);
        Assert.StartsWith("<svg", File.ReadAllText(folder.File("e.svg")), StringComparison.Ordinal);
    }

    private static string Whole(string text) => string.Join(' ', text.Split((char[])[' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
}
