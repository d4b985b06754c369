using System.Text;
using Ashery.Climate;
using Ashery.Exchange.Weather;
using Ashery.Problems;
using CsCheck;

namespace Ashery.Exchange.Tests.Weather;

/// <summary>Whatever stands in a file, the answer names the line and the way out, and costs no more than the file is worth.</summary>
public class HostileWeatherTests
{
    private static readonly Place Somewhere = new() { Name = "x", Latitude = 45, ElevationMetres = 10 };
    private static readonly Place WithNormals = Somewhere with { Normals = [.. Enumerable.Range(0, 12).Select(static m => new MonthlyNormal(20, 10, 60))] };

    private const string Head = "date,max,min,rain\n";

    [Theory]
    [InlineData("2026-03-01,20,10,0\n2026-03-02,20,10,-1", "line 3, rain: -1 mm is negative.")]
    [InlineData("2026-03-01,9,12,0", "line 2: The minimum, 12 °C, is above the maximum, 9 °C.")]
    [InlineData("2026-03-01,20,10,0\n2026-03-01,21,10,0", "line 3, date: 2026-03-01 is on line 2 already.")]
    [InlineData("2026-03-05,20,10,0\n2026-03-02,21,10,0", "line 3, date: 2026-03-02 comes after 2026-03-05 on line 2.")]
    [InlineData("2026-02-29,20,10,0", "line 2, date: '2026-02-29' is not a day.")]
    [InlineData("01/03/2026,20,10,0", "line 2, date: '01/03/2026' is not a day.")]
    [InlineData("0001-01-01,20,10,0", "line 2, date: '0001-01-01' is not a day.")]
    [InlineData("2026-03-01,20,10", "line 2: It has 3 fields, the header has 4.")]
    [InlineData("2026-03-01,20,5,10,0", "line 2: It has 5 fields, the header has 4.")]
    [InlineData("2026-03-01,hot,10,0", "line 2, max: 'hot' is not a number.")]
    [InlineData("2026-03-01,NaN,10,0", "line 2, max: 'NaN' is not a number.")]
    [InlineData("2026-03-01,1e999,10,0", "line 2, max: '1e999' is not a number.")]
    [InlineData("2026-03-01,77,10,0", "line 2, max: 77 is outside -90 to 60 °C.")]
    [InlineData("2026-03-01,20,10,9000", "line 2, rain: 9000 is outside 0 to 2000 mm.")]
    public void A_wrong_line_is_named(string lines, string problem) => Assert.StartsWith(problem, First(Head + lines), StringComparison.Ordinal);

    [Theory]
    [InlineData("", "file: There is no day in it.")]
    [InlineData("\n\n", "file: There is no day in it.")]
    [InlineData("date,max,min,rain\n", "file: There is no day in it.")]
    [InlineData("date,max,min\n2026-03-01,20,10", "line 1: There is no column 'rain'.")]
    [InlineData("date,max,min,rain,mood\n", "line 1: The column 'mood' is not known.")]
    [InlineData("date,max,min,rain,max\n", "line 1: The column 'max' is there twice.")]
    [InlineData("2026-03-01,20,10,0\n", "line 1: The column '2026-03-01' is not known.")]
    [InlineData("# latitude: north\ndate,max,min,rain\n", "line 1, latitude: 'north' is not a number.")]
    [InlineData("# latitude: 95\ndate,max,min,rain\n", "line 1, latitude: 95 is outside -90 to 90 degrees.")]
    [InlineData("date,max,min,rain\n2026-03-01,,,0\n", "temperature: No day has both a maximum and a minimum.")]
    [InlineData("date,max,min,rain\n1800-03-01,20,10,0\n2199-03-01,20,10,0\n", "dates: They run from 1800-03-01 to 2199-03-01, more than 100000 days.")]
    public void A_wrong_table_is_named(string text, string problem) => Assert.StartsWith(problem, First(text), StringComparison.Ordinal);

    [Fact]
    public void Semicolons_and_decimal_commas_are_read()
    {
        var read = Read("date;max;min;rain\n2026-03-01;20,5;10,25;0\n2026-03-02;21;11;1.5\n", "a.csv");
        Assert.Equal((20.5, 10.25, 1.5), (read.Value!.Days[0].MaxCelsius, read.Value.Days[0].MinCelsius, read.Value.Days[1].RainMm));
    }

    [Fact]
    public void Without_a_latitude_the_way_out_is_said() =>
        Assert.Contains("--latitude", WeatherFile.Read(Stream(Head + "2026-03-01,20,10,0\n"), "a.csv", null).Problems[0].WayOut, StringComparison.Ordinal);

    [Fact]
    public void A_long_gap_is_refused_or_filled_from_the_normals()
    {
        var text = Head + "2026-03-01,20,10,0\n2026-03-09,21,11,0\n";
        var refused = Read(text, "a.csv");
        Assert.Equal("2026-03-02 to 2026-03-08: 7 days have no maximum temperature; up to 5 are bridged. Give the place monthly normals, from which they are filled, or a file without the gap.", refused.Problems[0].ToString());
        Assert.Equal(3, refused.Problems.Count);
        var filled = WeatherFile.Read(Stream(text), "a.csv", WithNormals);
        Assert.Equal(9, filled.Value!.Days.Count);
        Assert.Contains(filled.Value.Notes, static n => n.Severity == Severity.Warning && n.Message == "7 of 9 days filled with weather made from the normals.");
        Assert.Equal(filled.Value.Days, WeatherFile.Read(Stream(text), "a.csv", WithNormals).Value!.Days);
    }

    [Fact]
    public void A_file_without_rain_is_dry_with_a_warning_or_gets_made_rain()
    {
        var text = Head + string.Concat(Enumerable.Range(1, 28).Select(static d => FormattableString.Invariant($"2026-02-{d:00},20,10,\n")));
        var dry = Read(text, "a.csv").Value!;
        Assert.All(dry.Days, static d => Assert.Equal(0, d.RainMm));
        Assert.Contains(dry.Notes, static n => n.Field == "rain" && n.Severity == Severity.Warning);
        Assert.True(WeatherFile.Read(Stream(text), "a.csv", WithNormals).Value!.Days.Sum(static d => d.RainMm) > 0);
    }

    [Fact]
    public void Radiation_of_another_unit_is_found_out()
    {
        var rows = string.Concat(Enumerable.Range(1, 28).Select(static d => FormattableString.Invariant($"2026-12-{d:00},8,2,0,38\n")));
        Assert.Contains("more than the sun sends", First("date,max,min,rain,radiation\n" + rows), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.epw", "LOCATION,x\n", "line 1: It is not the LOCATION line")]
    [InlineData("a.epw", "hello\n", "line 1: It is not the LOCATION line")]
    [InlineData("a.dly", "XX000MADE01202403TMAX  100\n", "line 1: It is 26 characters long; a month has 269.")]
    [InlineData("a.json", "{}", "file: 'a.json' ends in none of")]
    [InlineData("a.csv", "XX000MADE01,20240301,TMAX,x,,,M,\n", "line 1, value: 'x' is not a whole number.")]
    [InlineData("a.csv", "XX000MADE01,20240231,TMAX,5,,,M,\n", "line 1, date: '20240231' is not a day.")]
    [InlineData("a.csv", "XX000MADE01,20240301,TMAX,5,,,M,\nXX000MADE01,20240301,TMAX,5,,,M,\n", "line 2: It has 2024-03-01 again, which is on line 1 already.")]
    [InlineData("a.csv", "XX000MADE01,20240301,TMIN,90,,,M,\nXX000MADE01,20240301,TMAX,50,,,M,\n", "line 2: The minimum, 9 °C, is above the maximum, 5 °C.")]
    [InlineData("a.csv", "XX000MADE01,20240301,PRCP,-5,,,M,\n", "line 1, rain: -0.5 mm is negative.")]
    public void Wrong_files_of_open_formats_are_named(string name, string text, string problem) => Assert.StartsWith(problem, First(text, name), StringComparison.Ordinal);

    [Fact]
    public void Wrong_lines_of_a_made_epw_file_are_named()
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Weather", "made-station.epw"));
        string Changed(int line, Func<string, string> change) => First(string.Join("\n", lines.Select((l, i) => i == line - 1 ? change(l) : l)), "a.epw");
        Assert.StartsWith("line 8: The eighth line is not", Changed(8, static _ => "x"), StringComparison.Ordinal);
        Assert.StartsWith("line 8: The file has not one record an hour.", Changed(8, static l => l.Replace("DATA PERIODS,1,1", "DATA PERIODS,1,4", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.StartsWith("line 20: It has 3 fields; an hour has 35.", Changed(20, static _ => "2019,7,1"), StringComparison.Ordinal);
        Assert.StartsWith("line 10, hour: Hour 1 of 2019-07-01 is there twice.", Changed(10, static l => l.Replace("2019,7,1,2,", "2019,7,1,1,", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.StartsWith("line 10, date: '2019,7,32", Changed(10, static l => l.Replace("2019,7,1,2,", "2019,7,32,2,", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.StartsWith("line 12: Field 7, 'warm', is not a number.", Changed(12, static l => string.Join(',', l.Split(',').Select((f, i) => i == 6 ? "warm" : f))), StringComparison.Ordinal);
    }

    // A typical year: January of one year, February of another.
    [Fact]
    public void Months_of_different_years_are_laid_on_one()
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Weather", "made-station.epw"));
        var hour = lines[8].Split(',');
        var text = new StringBuilder(string.Join("\n", lines[..8])).Append('\n');
        foreach (var day in Enumerable.Range(0, 365).Select(static i => new DateOnly(2001, 1, 1).AddDays(i)))
        {
            for (var h = 1; h <= 24; h++)
            {
                hour[0] = FormattableString.Invariant($"{(day.Month % 2 == 0 ? 1998 : 2007)}");
                (hour[1], hour[2], hour[3]) = (FormattableString.Invariant($"{day.Month}"), FormattableString.Invariant($"{day.Day}"), FormattableString.Invariant($"{h}"));
                text.AppendJoin(',', hour).Append('\n');
            }
        }

        var read = Read(text.ToString(), "a.epw");
        Assert.True(read.Ok, string.Join("\n", read.Problems));
        Assert.Equal((new DateOnly(2001, 1, 1), 365), (read.Value.Days[0].Date, read.Value.Days.Count));
        Assert.Contains(read.Value.Notes, static n => n.Message.Contains("typical year", StringComparison.Ordinal));
    }

    [Fact]
    public void A_day_beyond_the_month_is_named()
    {
        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Weather", "made-station.dly"));
        lines[0] = lines[0][..(21 + (29 * 8))] + "  100" + lines[0][(21 + (29 * 8) + 5)..];
        Assert.StartsWith("line 1, day 30: The month has no such day", First(string.Join("\n", lines), "a.dly"), StringComparison.Ordinal);
    }

    [Fact]
    public void Many_problems_stop_the_reading()
    {
        var read = Read(Head + string.Concat(Enumerable.Repeat("x,y\n", 5000)), "a.csv");
        Assert.Equal(50, read.Problems.Count);
        Assert.Contains("the rest was not read", read.Problems[^1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.csv")]
    [InlineData("a.epw")]
    [InlineData("a.dly")]
    public void A_picture_or_an_endless_line_is_no_weather(string name)
    {
        Assert.False(Read("\u0089PNG\0\0\0\rIHDR\0\0", name).Ok);
        Assert.False(Read(new string('x', 5_000_000), name).Ok);
    }

    // Whatever the bytes: an answer, no exception.
    [Fact]
    public void Any_bytes_get_an_answer() => Gen.Select(Gen.Byte.Array[0, 400], Gen.Int[0, 2]).Sample((bytes, kind) =>
    {
        using var stream = new MemoryStream(bytes);
        var read = WeatherFile.Read(stream, kind switch { 0 => "a.csv", 1 => "a.epw", _ => "a.dly" }, Somewhere);
        return read.Ok || read.Problems.Count > 0;
    });

    // Any one character of a good file put wrong: an answer, and never a figure outside its limits.
    [Theory]
    [InlineData("made-station.csv")]
    [InlineData("made-station.epw")]
    [InlineData("made-station.dly")]
    [InlineData("made-by-year.csv")]
    public void One_wrong_character_never_gives_impossible_weather(string file)
    {
        var good = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Weather", file));
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Char[" -,.;0123456789ABx\n#\0\u00fc"]).Sample((at, c) =>
        {
            var read = WeatherFile.Read(Stream(good[..at] + c + good[(at + 1)..]), file, Somewhere, file == "made-by-year.csv" ? "XX000MADE01" : null);
            Assert.True(!read.Ok || read.Value.Days.All(static d => d.MaxCelsius >= d.MinCelsius && d.RainMm >= 0 && d.MaxCelsius <= 60 && d.MinCelsius >= -90 && d.RadiationMj >= 0 && d.ReferenceEtMm is >= 0 and < 40));
        }, iter: 300);
    }

    // 40 MB of other stations run through without being held.
    [Fact]
    public void A_year_of_the_world_is_streamed()
    {
        using var endless = new Repeated("XX000MADE02,20240301,TMAX,100,,,M,0700\n", 1_000_000, "XX000MADE01,20240301,TMAX,180,,,M,\nXX000MADE01,20240301,TMIN,80,,,M,\nXX000MADE01,20240301,PRCP,0,,,M,\n");
        var before = GC.GetAllocatedBytesForCurrentThread();
        var read = WeatherFile.Read(endless, "a.csv", Somewhere, "XX000MADE01");
        var used = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Single(read.Value!.Days);
        Assert.True(used < 3_000_000, FormattableString.Invariant($"{used} bytes"));
    }

    private static string First(string text, string name = "a.csv")
    {
        var read = Read(text, name);
        Assert.False(read.Ok);
        return read.Problems[0].ToString();
    }

    private static Result<WeatherSeries> Read(string text, string name) => WeatherFile.Read(Stream(text), name, Somewhere);

    private static MemoryStream Stream(string text) => new(Encoding.UTF8.GetBytes(text));

    /// <summary>A line many times over, then an end, without ever being there whole.</summary>
    private sealed class Repeated(string line, int times, string end) : Stream
    {
        private readonly byte[] piece = Encoding.ASCII.GetBytes(line);
        private readonly byte[] last = Encoding.ASCII.GetBytes(end);
        private long at;

        private long Total => ((long)piece.Length * times) + last.Length;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => at; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            var done = 0;
            while (done < buffer.Length && at < Total)
            {
                var body = (long)piece.Length * times;
                var from = at < body ? piece.AsSpan((int)(at % piece.Length)) : last.AsSpan((int)(at - body));
                var n = Math.Min(from.Length, buffer.Length - done);
                from[..n].CopyTo(buffer[done..]);
                (done, at) = (done + n, at + n);
            }

            return done;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
