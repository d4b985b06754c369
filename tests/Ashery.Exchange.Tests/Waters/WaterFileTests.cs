using Ashery.Exchange.Waters;
using Ashery.Solutions.Waters;
using CsCheck;

namespace Ashery.Exchange.Tests.Waters;

/// <summary>Water files: whatever is written reads back as it was; whatever is wrong names its field.</summary>
public class WaterFileTests
{
    private static readonly Gen<string> Name = One("Ca", "calcium", "NO3-N", "alkalinity", "KH", "P2O5", "SO4");

    private static readonly Gen<WaterReport> Reports =
        from lines in Gen.Select(Name, Gen.Double[0, 1e4], One<string?>(null, "mg/L as CaCO3", "°dH", "meq/L"), Gen.Bool, (n, v, u, b) => new WaterLine(n, v, u, b)).List[1, 8]
        from ec in Gen.Null(Gen.Select(Gen.Double[0, 10], One("mS/cm", "µS/cm"), One(20.0, 25.0), (v, u, c) => new WaterConductivity(v, u, c)))
        from numbers in Gen.Select(Gen.Nullable(Gen.Double[3, 11]), Gen.Nullable(Gen.Double[0, 40]), Gen.Null(One<string>("spring", "\"quoted\"", "bottle 3 ö")))
        select new WaterReport { Id = "w", Name = "a water", Lines = lines, Ec = ec, PH = numbers.Item1, Celsius = numbers.Item2, Note = numbers.Item3 };

    [Fact]
    public void A_written_report_reads_back_as_it_was() => Reports.Sample(
        report =>
        {
            // Two lines of one name cannot be told from a slip once they stand in a file; the reading refuses them.
            var back = WaterFile.Read(WaterFile.Write(report)).Value!;
            Assert.Equal(report with { Lines = [] }, back with { Lines = [] });
            Assert.Equal(report.Lines, back.Lines);
        },
        iter: 500, seed: "0000000000000");

    [Fact]
    public void Ions_may_stand_beside_the_other_fields()
    {
        var report = WaterFile.Read("{ \"name\": \"tap\", \"Ca\": 62, \"Mg\": { \"value\": 3, \"unit\": \"°dH\" }, \"alkalinity\": 140, \"pH\": 7.4, \"ec\": { \"value\": 480, \"unit\": \"µS/cm\" }, \"ecCelsius\": 20 }").Value!;
        Assert.Equal([new("Ca", 62), new("Mg", 3, "°dH"), new("alkalinity", 140)], report.Lines);
        Assert.Equal(new WaterConductivity(480, "µS/cm", 20), report.Ec);
        Assert.Equal(7.4, report.PH);
    }

    /// <summary>The table of a sheet as it stands, pH and alkalinity among its lines.</summary>
    [Theory]
    [InlineData("mg_per_L")]
    [InlineData("mg/L")]
    [InlineData("ions")]
    public void A_table_may_hold_everything(string field)
    {
        var report = WaterFile.Read($"{{ \"{field}\": {{ \"Ca\": 62, \"Alk\": 140, \"pH\": 7.4 }} }}").Value!;
        Assert.Equal([new("Ca", 62), new("Alk", 140)], report.Lines);
        Assert.Equal(7.4, report.PH);
        Assert.Equal("pH", WaterFile.Read($"{{ \"pH\": 7, \"{field}\": {{ \"Ca\": 62, \"pH\": 7.4 }} }}").Problems[0].Field);
    }

    [Theory]
    [InlineData("{ \"name\": \"\\ud83c\\udf31 \\\\ud800\", \"Ca\": 1 }", true)]
    [InlineData("{ \"name\": \"\\ud800\", \"Ca\": 1 }", false)]
    [InlineData("{ \"Ca\": 1, \"\\udc00\": 2 }", false)]
    [InlineData("{ \"Ca\": { \"value\": 1, \"unit\": \"\\ud800\\u0041\" } }", false)]
    public void Half_a_sign_is_said(string text, bool whole)
    {
        var read = WaterFile.Read(text);
        Assert.Equal(whole, read.Ok);
        Assert.True(whole || (read.Problems[0].Field == "water, line 1" && read.Problems[0].Message.StartsWith("Half a sign", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("", "water, line 1", "not JSON")]
    [InlineData("gypsum", "water, line 1", "not JSON")]
    [InlineData("[1]", "water", "one object")]
    [InlineData("{}", "water", "empty")]
    [InlineData("{ \"name\": \"tap\" }", "water", "empty")]
    [InlineData("{ \"name\": \"tap\", \"ions\": {} }", "water", "empty")]
    [InlineData("{ \"ions\": { \"Ca\": \"4,5\" } }", "ions.Ca", "comma")]
    [InlineData("{ \"ions\": { \"Ca\": 4,5 } }", "water, line 1", "not JSON")]
    [InlineData("{ \"ions\": { \"Ca\": NaN } }", "water, line 1", "not JSON")]
    [InlineData("{ \"ions\": { \"Ca\": \"NaN\" } }", "ions.Ca", "not a number")]
    [InlineData("{ \"ions\": { \"Ca\": 1e999 } }", "ions.Ca", "not a number")]
    [InlineData("{ \"ions\": { \"Ca\": -1 } }", "ions.Ca", "negative")]
    [InlineData("{ \"ions\": { \"Ca\": [40] } }", "ions.Ca", "list")]
    [InlineData("{ \"ions\": { \"Ca\": null } }", "ions.Ca", "null")]
    [InlineData("{ \"ions\": { \"Ca\": { \"value\": { \"value\": 4 } } } }", "ions.Ca.value", "object")]
    [InlineData("{ \"ions\": { \"Ca\": { \"value\": 4, \"unit\": 5 } } }", "ions.Ca.unit", "cannot be used")]
    [InlineData("{ \"ions\": { \"Ca\": { \"unit\": \"mg/L\" } } }", "ions.Ca", "missing")]
    [InlineData("{ \"ions\": { \"Ca\": { \"value\": 4, \"units\": \"mg/L\" } } }", "ions.Ca.units", "no such field")]
    [InlineData("{ \"ions\": [ \"Ca\" ] }", "ions", "list")]
    [InlineData("{ \"colour\": 4 }", "colour", "no such field")]
    [InlineData("{ \"name\": 4, \"Ca\": 1 }", "name", "cannot be used")]
    [InlineData("{ \"Ca\": 1, \"pH\": \"sour\" }", "pH", "not a number")]
    [InlineData("{ \"Ca\": 1, \"pH\": true }", "pH", "True or false")]
    [InlineData("{ \"Ca\": 1, \"pH\": 7, \"pH\": 8 }", "pH", "twice")]
    public void What_is_wrong_names_its_field(string text, string field, string message)
    {
        var read = WaterFile.Read(text);
        Assert.False(read.Ok);
        Assert.True(read.Problems.Any(p => p.Field == field && p.Message.Contains(message, StringComparison.Ordinal)), string.Join("\n", read.Problems));
        Assert.All(read.Problems, static p => Assert.NotEmpty(p.WayOut));
    }

    [Fact]
    public void Several_faults_come_at_once() => Assert.Equal(3, WaterFile.Read("{ \"Ca\": \"4,5\", \"glitter\": 1, \"pH\": [] }").Problems.Count);

    [Fact]
    public void A_giant_text_is_not_read()
    {
        Assert.Contains("longer than", Assert.Single(WaterFile.Read("{ \"note\": \"" + new string('x', 300_000) + "\" }").Problems).Message, StringComparison.Ordinal);
        Assert.False(WaterFile.Read("{ \"ions\": " + new string('[', 5000)).Ok);
        Assert.Contains(WaterFile.Read("{ \"ions\": { " + string.Join(",", Enumerable.Repeat("\"Ca\": 1", 100)) + " } }").Problems, static p => p.Message.Contains("more than 60", StringComparison.Ordinal));
    }

    // An ion twice is read as it stands; the reading of the report tells of it.
    [Fact]
    public void A_doubled_ion_is_told_by_the_reading()
    {
        var report = WaterFile.Read("{ \"ions\": { \"Ca\": 40, \"Ca\": 41 } }").Value!;
        Assert.Contains(WaterReports.Read(report).Problems, static p => p.Message.Contains("twice", StringComparison.Ordinal));
    }

    private static Gen<T> One<T>(params T[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);
}
