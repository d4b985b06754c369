using System.Text.Json;
using Ashery.Exchange.Journal;
using Ashery.Journal;
using CsCheck;

namespace Ashery.Exchange.Tests.Journal;

public sealed class JournalJsonTests
{
    private const string Id = "0b8f1f0e-6f0c-4f39-9d8e-2f4f6a1d0c11";

    // The writer is not its own judge: the general reader of the base library takes the text apart.
    [Fact]
    public void An_entry_is_written_as_the_documentation_shows()
    {
        var entry = new Entry
        {
            Id = Guid.Parse(Id),
            Day = new(2027, 4, 3),
            Time = new(6, 30),
            Pots = ["by-the-door"],
            Note = "drip tray dry",
            Facts = new Measured(MeasuredKind.LeachateEc, 1.9),
        };
        using var read = JsonDocument.Parse(JournalJson.WriteLine(entry));
        var root = read.RootElement;
        Assert.Equal(Id, root.GetProperty("id").GetString());
        Assert.Equal("2027-04-03", root.GetProperty("day").GetString());
        Assert.Equal("06:30:00", root.GetProperty("time").GetString());
        Assert.Equal("measured", root.GetProperty("facts").GetProperty("kind").GetString());
        Assert.Equal("leachateEc", root.GetProperty("facts").GetProperty("what").GetString());
        Assert.Equal(1.9, root.GetProperty("facts").GetProperty("value").GetDouble());
        Assert.DoesNotContain("\n", JournalJson.WriteLine(entry), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_written_reads_back() => RandomEntries.Any.Sample(
        static entry =>
        {
            Assert.Empty(EntryRules.Check(entry));
            var line = JournalJson.WriteLine(entry);
            Assert.Equal(line, JournalJson.WriteLine(JournalJson.ReadKept(line)));
            var read = JournalJson.Read(JournalJson.Write(entry));
            Assert.True(read.Ok, string.Join(' ', read.Problems));
            Assert.Equal(line, JournalJson.WriteLine(read.Value));
            Assert.Equal(entry.Facts.GetType(), read.Value.Facts.GetType());
        },
        iter: 500);

    [Fact]
    public void Every_kind_has_a_word_and_is_drawn_here()
    {
        var kinds = typeof(EntryFacts).Assembly.GetTypes().Where(static t => t.IsSubclassOf(typeof(EntryFacts))).ToList();
        Assert.Equal(kinds.Count, EntryKind.All.Count);
        var drawn = new HashSet<string>();
        RandomEntries.Any.Sample(e => { lock (drawn) { drawn.Add(EntryKind.Of(e.Facts)); } }, iter: 2000);
        Assert.Superset(EntryKind.All.ToHashSet(), drawn);
    }

    [Theory]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"measured","what":"leachateEc","value":65}}""", "value")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"measured","what":"leachatePh","value":6.5}}""", "pots")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"dance"}}""", "entry")]
    [InlineData("""{"id":"ID","day":"3 April","facts":{"kind":"sighting","what":"mites","severity":1}}""", "entry")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"sighting","what":"mites","severity":9}}""", "severity")]
    [InlineData("""{"id":"ID","day":"2027-04-03","mood":1,"facts":{"kind":"sighting","what":"mites","severity":1}}""", "entry")]
    [InlineData("""{"id":"00000000-0000-0000-0000-000000000000","day":"2027-04-03","facts":{"kind":"sighting","what":"mites","severity":1}}""", "id")]
    [InlineData("""{"id":"ID","day":"2027-04-03"}""", "entry")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":null}""", "entry")]
    [InlineData("""{"id":"ID","day":"2027-04-03","pots":[null],"facts":{"kind":"sighting","what":"mites","severity":1}}""", "pots")]
    [InlineData("""{"id":"ID","day":"2027-04-03","note":"a\u0000b","facts":{"kind":"sighting","what":"mites","severity":1}}""", "note")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"batchMade","lot":"a","feedId":"f","weighings":[]}}""", "weighings")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"batchMade","lot":"a","feedId":"f","weighings":[null]}}""", "weighings")]
    [InlineData("""{"id":"ID","day":"2027-04-03","facts":{"kind":"photograph","hash":"../../x","width":1,"height":1}}""", "hash")]
    [InlineData("null", "entry")]
    [InlineData("[]", "entry")]
    [InlineData("", "entry")]
    [InlineData("""{"note":"\ud800"}""", "entry")]
    public void What_is_wrong_is_named(string text, string field)
    {
        var read = JournalJson.Read(text.Replace("ID", Id, StringComparison.Ordinal));
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Field.StartsWith(field, StringComparison.Ordinal));
        Assert.All(read.Problems, static p => Assert.NotEmpty(p.WayOut));
    }
}
