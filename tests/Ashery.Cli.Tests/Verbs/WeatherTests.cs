using System.Globalization;
using System.Text;
using System.Text.Json;
using Ashery.Cli.Tests.BadInput;
using Ashery.Cli.Tests.Frame;
using Ashery.Climate;
using Ashery.Climate.Sheltering;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Exchange.Weather;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>Weather on the command line.</summary>
public class WeatherTests
{
    private const string Normals = "month,max,min,rain,wet-days\n1,8,1,60,11\n2,9,1,50,10\n3,12,3,55,11\n4,16,6,50,10\n5,20,10,60,10\n6,23,13,65,10\n7,26,15,60,9\n8,25,15,60,9\n9,21,12,65,9\n10,16,8,70,11\n11,11,4,70,12\n12,8,2,65,12\n";

    [Fact]
    public void The_figures_are_those_of_the_library()
    {
        using var json = JsonDocument.Parse(Command.Run("weather", "--demo", "--from", "2028-02-01", "--days", "60", "--seed", "3", "--json").Output);
        var series = WeatherGenerator.Run(DemoGarden.Create(Command.Today).Place, new(2028, 2, 1), 60, 3).Value!;
        var days = json.RootElement.GetProperty("days").EnumerateArray().ToList();
        Assert.Equal(60, days.Count);
        for (var i = 0; i < 60; i++)
        {
            Assert.Equal(series.Days[i].Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), days[i].GetProperty("date").GetString());
            Assert.Equal(series.Days[i].MaxCelsius, days[i].GetProperty("max").GetDouble(), 9);
            Assert.Equal(series.Days[i].RainMm, days[i].GetProperty("rain").GetDouble(), 9);
            Assert.Equal(series.Days[i].ReferenceEtMm, days[i].GetProperty("referenceEt").GetDouble(), 9);
        }

        Assert.Equal("2028-02-29", days[28].GetProperty("date").GetString());
        Assert.Equal(29, json.RootElement.GetProperty("months")[0].GetProperty("days").GetInt32());
    }

    [Fact]
    public void The_json_written_by_hand_is_that_of_the_serialiser()
    {
        var series = WeatherGenerator.Run(DemoGarden.Create(Command.Today).Place, new(2026, 12, 20), 40, 1).Value!;
        Assert.Equal(AsheryJson.Write(WeatherJson.Of(series), WeatherJsonContext.Shared.WeatherJson), WeatherJson.Write(series));
    }

    [Fact]
    public void Normals_in_a_file_and_a_latitude_are_enough()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("normals.csv", "# made\n" + Normals);
        var run = Command.Run("weather", "--latitude", "51", "--normals", file, "--days", "365", "--from", "2026-01-01");
        Assert.Equal((0, string.Empty), (run.Code, run.Errors));
        Assert.Contains("the place given: ", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Days with rain are estimated", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_is_read_whole_or_in_part()
    {
        using var folder = new TemporaryFolder();
        var text = new StringBuilder("# latitude: 40\n# elevation: 100\ndate,max,min,rain\n");
        for (var day = new DateOnly(2025, 1, 1); day.Year == 2025; day = day.AddDays(1))
        {
            text.Append(CultureInfo.InvariantCulture, $"{day:yyyy-MM-dd},{15 + (day.Month % 5)},{5 + (day.Day % 3)},{(day.Day == 10 ? 25 : 0)}\n");
        }

        var file = folder.Write("station.csv", text.ToString());
        using var whole = JsonDocument.Parse(Command.Run("weather", "--file", file, "--json").Output);
        Assert.Equal((365, 12), (whole.RootElement.GetProperty("days").GetArrayLength(), whole.RootElement.GetProperty("months").GetArrayLength()));
        Assert.All(whole.RootElement.GetProperty("months").EnumerateArray(), static m => Assert.Equal(25, m.GetProperty("rain").GetDouble()));
        using var part = JsonDocument.Parse(Command.Run("weather", "--file", file, "--from", "2025-03-01", "--days", "10", "--json").Output);
        Assert.Equal("2025-03-01", part.RootElement.GetProperty("days")[0].GetProperty("date").GetString());
        Assert.Equal(10, part.RootElement.GetProperty("days").GetArrayLength());
        Assert.Contains("It ends on 2025-12-31.", Command.Run("weather", "--file", file, "--from", "2026-03-01").Errors, StringComparison.Ordinal);
    }

    // Shade and a roof change what reaches the pots; temperature stays.
    [Fact]
    public void Every_spot_gets_no_more_than_the_open()
    {
        var open = WeatherGenerator.Run(DemoGarden.Create(Command.Today).Place, new(2026, 1, 1), 365, 1).Value!;
        foreach (var spot in Shelter.All)
        {
            var there = spot.Apply(open);
            Assert.All(open.Days.Zip(there.Days), x =>
            {
                Assert.Equal(x.First.RainMm * spot.Rain.Typical, x.Second.RainMm, 9);
                Assert.True(x.Second.RadiationMj <= x.First.RadiationMj && x.Second.WindMs <= x.First.WindMs);
                Assert.Equal(x.First.MaxCelsius, x.Second.MaxCelsius);
            });
            Assert.True(there.Days.Sum(static d => d.ReferenceEtMm) <= open.Days.Sum(static d => d.ReferenceEtMm) * 1.001);
            var run = Command.Run("weather", "--demo", "--days", "31", "--shelter", spot.Id);
            Assert.Equal(0, run.Code);
        }
    }

    [Theory]
    [InlineData("--latitude x", "latitude: 'x' is not a number")]
    [InlineData("--latitude 95", "latitude: 95 is above")]
    [InlineData("--latitude 45,5", "the decimal mark here is the point")]
    [InlineData("--latitude 45", "normals: The place has no monthly normals")]
    [InlineData("--demo --elevation 9999", "elevation: 9999 is above")]
    [InlineData("--demo --days 0", "days: '0' is not a whole number")]
    [InlineData("--demo --days 999999", "days: '999999' is not a whole number")]
    [InlineData("--demo --seed -1", "seed: '-1' is not a whole number")]
    [InlineData("--demo --from soon", "from: 'soon' is not a day")]
    [InlineData("--demo --shelter balkony", "Did you mean --shelter balcony?")]
    [InlineData("--demo --station X", "station: --station belongs to --file.")]
    [InlineData("--demo --normals nowhere.csv", "normals: 'nowhere.csv' is not there.")]
    [InlineData("--file nowhere.csv", "file: 'nowhere.csv' is not there.")]
    [InlineData("--file . --latitude 4", "file: '.' is a folder.")]
    [InlineData("--file", "file: --file has no value.")]
    [InlineData("--file a.csv --seed 3", "seed: --seed belongs to made weather")]
    [InlineData("--demo --garden x.json", "garden: Both --garden and --demo are given.")]
    public void What_is_wrong_is_told(string words, string problem)
    {
        var run = Command.Run(["weather", .. words.Split(' ')]);
        Assert.Equal(2, run.Code);
        Assert.Contains(problem, OneLine(run.Errors), StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Theory]
    [InlineData("", "Months are missing: 1, 2, 3")]
    [InlineData("month,max,min,rain\n13,8,1,60\n", "line 2, month: It is not a month from 1 to 12.")]
    [InlineData("month,max,min,rain\n1.5,8,1,60\n", "line 2, month: It is not a month")]
    [InlineData("month,max,min,rain\n1,8,1,60\n1,8,1,60\n", "line 3, month: Month 1 is there already.")]
    [InlineData("month,max,min,rain\n1,8,,60\n", "line 2, min: '' is not a number.")]
    [InlineData("month,max,min,rain\n1,8,1\n", "line 2: It has 3 fields, the header has 4.")]
    [InlineData("month,max,min\n1,8,1\n", "line 1: There is no column 'rain'.")]
    [InlineData("month,max,min,rain,snow\n", "line 1: The column 'snow' is not known.")]
    public void Wrong_normals_are_told_with_their_line(string text, string problem)
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("weather", "--latitude", "45", "--normals", folder.Write("n.csv", text));
        Assert.Equal(2, run.Code);
        Assert.Contains(problem, OneLine(run.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public void Normals_that_cannot_be_are_told_by_month()
    {
        using var folder = new TemporaryFolder();
        var run = Command.Run("weather", "--latitude", "45", "--normals", folder.Write("n.csv", Normals.Replace("7,26,15,60,9", "7,15,26,60,9", StringComparison.Ordinal)));
        Assert.Equal(2, run.Code);
        Assert.Contains("July: The mean maximum is not half a degree above the mean minimum.", OneLine(run.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_file_is_told_with_its_line_and_as_json()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("w.csv", "date,max,min,rain\n2026-03-01,9,12,0\n");
        var run = Command.Run("weather", "--file", file, "--latitude", "45", "--json");
        Assert.Equal(2, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal("line 2", json.RootElement.GetProperty("problems")[0].GetProperty("field").GetString());
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
