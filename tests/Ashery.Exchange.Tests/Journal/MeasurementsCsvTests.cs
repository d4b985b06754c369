using System.Globalization;
using Ashery.Climate;
using Ashery.Exchange.Journal;
using Ashery.Gardens;
using Ashery.Journal;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;
using CsCheck;
using Measured = Ashery.Journal.Measured;

namespace Ashery.Exchange.Tests.Journal;

public class MeasurementsCsvTests
{
    private static readonly DateOnly Today = new(2027, 6, 1);

    private static readonly Garden Garden = new()
    {
        Name = "Terrace",
        Place = new Place { Name = "Harbour", Latitude = 43 },
        Pots = [Pot("tub", "Blue tub"), Pot("bowl", "Bowl"), Pot("twin-1", "Twin"), Pot("twin-2", "Twin")],
    };

    private static readonly string[] Notes = ["", "by the door", "=1+1", "a;b,c\td", "two\nlines", "\"quoted\"", "éß🪴", "@home", "-5"];

    // Figures as meters and thumbs give them: not more than six decimals.
    private static readonly Gen<Entry> Entries =
        from day in Gen.Int[0, 300]
        from minute in Gen.Int[-400, 1439]
        from pot in Gen.Int[0, 3]
        from what in Gen.Enum<MeasuredKind>()
        from at in Gen.Double[0, 1]
        from note in Gen.Int[0, 8]
        select new Entry
        {
            Id = Guid.NewGuid(),
            Day = new DateOnly(2026, 6, 1).AddDays(day),
            Time = minute < 0 ? null : new TimeOnly(minute / 60, minute % 60),
            Pots = [Garden.Pots[pot].Id],
            Note = Notes[note],
            Facts = new Measured(what, Math.Round(MeasuredRange.Of(what).From + (at * (MeasuredRange.Of(what).To - MeasuredRange.Of(what).From)), 6), at > 0.7 ? 18.5 : null),
        };

    [Fact]
    public void What_is_written_reads_back_as_the_same_readings() => Entries.List[1, 40].Sample(entries =>
    {
        var read = MeasurementsCsv.Read(Written(entries), Garden, Today);
        Assert.True(read.Ok, string.Join('\n', read.Problems));
        Assert.Equal(Said(entries), Said(read.Value.Select(static l => l.Entry)));

        // The same again has the same ids, so that nothing is written twice.
        Assert.Equal(Ids(read.Value), Ids(MeasurementsCsv.Read(Written(read.Value.Select(static l => l.Entry)), Garden, Today).Value!));
        Assert.All(read.Value, l => Assert.True(l.IsIn(entries)));
    }, iter: 300);

    [Fact]
    public void A_table_of_few_columns_in_any_order_by_name_and_with_tabs_is_read()
    {
        var read = MeasurementsCsv.Read("Flowers\tPOT\tday\tleachateec\n12\tblue TUB\t2027-05-30\t2.4\n\tbowl\t2027-05-31\t1.9\n0\tbowl\t2027-05-31\t\n", Garden, Today);
        Assert.True(read.Ok, string.Join('\n', read.Problems));
        Assert.Equal([(2L, "tub", MeasuredKind.LeachateEc, 2.4), (2L, "tub", MeasuredKind.Flowers, 12), (3L, "bowl", MeasuredKind.LeachateEc, 1.9), (4L, "bowl", MeasuredKind.Flowers, 0)],
            read.Value.Select(static l => (l.Line, l.Entry.Pots[0], ((Measured)l.Entry.Facts).What, ((Measured)l.Entry.Facts).Value)));
    }

    [Theory]
    [InlineData("day,pot,flowers\n2027-05-30,tub,12\n2027-05-31,gone,3", "line 3, pot", "no pot 'gone'")]
    [InlineData("day,pot,flowers\n2027-05-31,Twin,3", "line 2, pot", "Two pots")]
    [InlineData("day,pot,flowers\n31.5.2027,tub,3", "line 2, day", "not a day")]
    [InlineData("day,pot,flowers\n2028-05-31,tub,3", "line 2, day", "still to come")]
    [InlineData("day,pot,leachatePh\n2027-05-31,tub,61", "line 2, leachatePh", "above")]
    [InlineData("day,pot,leachatePh\n2027-05-31,tub,\"6,1\"", "line 2, leachatePh", "")]
    [InlineData("day,pot,leachatePh\n2027-05-31,tub,6,1", "line 2", "4 fields")]
    [InlineData("day,pot,time,leachatePh\n2027-05-31,tub,noon,6", "line 2, time", "not an hour")]
    [InlineData("day,pot,colour\n2027-05-31,tub,6", "line 1", "'colour' is not known")]
    [InlineData("pot,flowers\ntub,6", "line 1", "'day' is missing")]
    [InlineData("day,pot,flowers,flowers\n2027-05-31,tub,6,7", "line 1", "twice")]
    [InlineData("day,pot,flowers\n", "file", "no figure")]
    [InlineData("", "line 1", "missing")]
    [InlineData("day,pot,note,flowers\n2027-05-31,tub,\"open,6", "line 2", "quotes")]
    public void What_is_wrong_names_its_line(string text, string field, string message)
    {
        var read = MeasurementsCsv.Read(text, Garden, Today);
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Field.StartsWith(field, StringComparison.Ordinal) && p.Message.Contains(message, StringComparison.Ordinal) && p.WayOut.Length > 0);
    }

    [Fact]
    public void All_that_is_wrong_comes_at_once_and_no_line_is_read_half()
    {
        var read = MeasurementsCsv.Read("day,pot,flowers,leachatePh\n2027-05-30,tub,x,99\n2027-05-31,nobody,3,\n", Garden, Today);
        Assert.Equal(["line 2, leachatePh", "line 2, flowers", "line 3, pot"], read.Problems.Select(static p => p.Field));
    }

    [Fact]
    public void The_same_line_twice_is_read_once()
    {
        var read = MeasurementsCsv.Read("day,pot,flowers\n2027-05-30,tub,4\n2027-05-30,tub,4\n2027-05-30,tub,5\n", Garden, Today);
        Assert.Equal(2, read.Value!.Count);
        Assert.Equal(Severity.Note, Assert.Single(read.Problems).Severity);
    }

    [Fact]
    public void Any_text_is_read_or_refused() => Gen.String.Sample(static text => _ = MeasurementsCsv.Read("day,pot,flowers\n" + text, Garden, Today), iter: 500);

    private static string Written(IEnumerable<Entry> entries)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        MeasurementsCsv.Write(writer, entries);
        return writer.ToString();
    }

    private static List<string> Said(IEnumerable<Entry> entries) =>
        [.. entries.Select(static e => FormattableString.Invariant($"{e.Day:O} {e.Time:O} {e.Pots[0]} {e.Facts} {e.Note}")).Distinct().Order(StringComparer.Ordinal)];

    private static List<Guid> Ids(IEnumerable<MeasurementLine> lines) => [.. lines.Select(static l => l.Entry.Id).Order()];

    private static Pot Pot(string id, string name) => new() { Id = id, Name = name, CropId = "rose", Volume = new Volume(5), Medium = MediumKind.PeatMix };
}
