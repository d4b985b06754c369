using System.Text;
using Ashery.Exchange.Materials;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Exchange.Tests.Materials;

public class BagCsvTests
{
    private static readonly MaterialCatalogue Catalogue = MaterialCatalogue.Default;

    [Fact]
    public void The_whole_catalogue_goes_out_and_comes_back()
    {
        var text = new StringWriter();
        BagCsv.WriteMaterials(text, Catalogue.All);
        var back = Read(text.ToString());
        Assert.True(back.Ok, string.Join('\n', back.Problems));
        Assert.Equal(Catalogue.All.Select(m => m.Id), back.Value.Select(b => b.Id));
        Assert.Equal(Catalogue.All, back.Value.Select(b => b.Material));
    }

    [Fact]
    public void Own_bags_go_out_and_come_back()
    {
        var sulfate = OwnBag.Of(Catalogue.Find("ammonium-sulfate")!, Lines("N 20.5; S 23.5"), name: "=Shed's \"best\"; sulfate,\tblue").Value!;
        sulfate = sulfate with { Name = "=Shed's \"best\"; sulfate, blue" };
        var compound = OwnBag.Compound("rose-feed", "Rose <b>feed</b>", MaterialKind.Straight, Lines("NH4-N 7; NO3-N 5; P2O5 8; K2O 16; MgO 3"), dissolves: true).Value!;
        Bag[] bags =
        [
            new("shed-sulfate", sulfate, new Mass(2500), 3.2, new Mass(5000)),
            new("rose-feed", compound, new Mass(0), null, null),
        ];
        var text = new StringWriter();
        BagCsv.Write(text, bags);
        Assert.Contains("'=Shed", text.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("\n=", text.ToString(), StringComparison.Ordinal);

        var back = Read(text.ToString()).Value!;
        for (var i = 0; i < bags.Length; i++)
        {
            Assert.Equal((bags[i].Id, bags[i].Stock, bags[i].Price, bags[i].Size), (back[i].Id, back[i].Stock, back[i].Price, back[i].Size));
            Assert.Equal(bags[i].Material.Name, back[i].Material.Name);
            Assert.Equal(bags[i].Material.Ions.Order(), back[i].Material.Ions.Order());
            Assert.Equal(bags[i].Material.Hazards.Order(), back[i].Material.Hazards.Order());
            Assert.Equal(bags[i].Material.LimeEquivalent!.Value, back[i].Material.LimeEquivalent!.Value, 9);
            foreach (var n in Enum.GetValues<Nutrient>())
            {
                Assert.Equal(bags[i].Material.Label[n], back[i].Material.Label[n], 12);
            }
        }
    }

    [Theory]
    [InlineData("material,N\nurea,46.5", "urea", 0.465)]
    [InlineData("material;N;left\nurea;46.5;2 kg", "urea", 0.465)]
    [InlineData("MATERIAL\tn\nurea\t46.5\n\n", "urea", 0.465)]
    [InlineData("\uFEFFmaterial,N\r\nurea,46.5\r\n", "urea", 0.465)]
    [InlineData("id,NH4-N,NO3-N,MgO\nmy-feed,3,4,2", "my-feed", 0.07)]
    public void Reads_what_spreadsheets_write(string text, string id, double nitrogen)
    {
        var bag = Assert.Single(Read(text).Value!);
        Assert.Equal(id, bag.Id);
        Assert.Equal(nitrogen, bag.Material.Label[Nutrient.N], 12);
    }

    [Theory]
    [InlineData("", "line 1", "neither an 'id' nor a 'material'")]
    [InlineData("material,N\n", "file", "no bag")]
    [InlineData("foo,bar\n1,2", "line 1", "'foo' is not known")]
    [InlineData("material,N,n\nurea,46,46", "line 1", "there twice")]
    [InlineData("material,N\nureaa,46", "line 2, material", "not in the catalogue")]
    [InlineData("material,N\nurea,46\nurea,45", "line 3, id", "on line 2 already")]
    [InlineData("material;N\nurea;46,5", "line 2, N", "comma")]
    [InlineData("material,N\nurea,46,5", "line 2", "3 fields")]
    [InlineData("material,N\nurea,abc", "line 2, N", "not a number")]
    [InlineData("material,N\nurea,NaN", "line 2, N", "not a")]
    [InlineData("material,N\nurea,-1", "line 2, N", "negative")]
    [InlineData("material,N\nurea,48", "line 2, N", "more than the pure salt holds")]
    [InlineData("material,K\npotassium-sulfate,50", "line 2, K", "more than the pure salt holds")]
    [InlineData("id,N,P2O5,K2O\nx,50,40,30", "line 2", "add up to")]
    [InlineData("id,name\nx,Something", "line 2", "Neither a material")]
    [InlineData("material,left\nurea,5 stone", "line 2, left", "not a unit")]
    [InlineData("material,left\nurea,5", "line 2, left", "no unit")]
    [InlineData("material,size\nurea,0 g", "line 2, size", "not above zero")]
    [InlineData("material,price\nurea,cheap", "line 2, price", "not a number")]
    [InlineData("id,N\nNo Good,5", "line 2, id", "cannot be an id")]
    [InlineData("id,kind,N\nx,magic,5", "line 2, kind", "not a kind")]
    [InlineData("material,name\nurea,\"open", "line 2", "quotes")]
    public void Errors_name_the_line_and_the_field(string text, string field, string words)
    {
        var read = Read(text);
        Assert.False(read.Ok);
        Assert.Contains(read.Problems, p => p.Field == field && p.Message.Contains(words, StringComparison.Ordinal) && p.WayOut.Length > 0);
    }

    [Fact]
    public void A_binary_file_is_refused()
    {
        var read = BagCsv.Read(new MemoryStream([0x50, 0x4B, 3, 4, 0, 0, 0, 0, 8, 0]));
        Assert.Contains("not a text file", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_encoding_is_explained()
    {
        var read = BagCsv.Read(new MemoryStream([.. "material,name\nurea,D"u8, 0xFC, .. "nger\n"u8]));
        Assert.Contains(read.Problems, p => p.Field == "line 2, name" && p.Message.Contains("UTF-8", StringComparison.Ordinal));
    }

    [Fact]
    public void Two_hundred_megabytes_that_say_so_are_not_read_at_all()
    {
        using var stream = new Endless(200L * 1024 * 1024, seekable: true);
        var read = BagCsv.Read(stream);
        Assert.Contains("larger than 4 MB", Assert.Single(read.Problems).Message, StringComparison.Ordinal);
        Assert.Equal(0, stream.Given);
    }

    [Fact]
    public void Two_hundred_megabytes_from_a_pipe_stop_at_the_limit()
    {
        using var stream = new Endless(200L * 1024 * 1024, seekable: false);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var read = BagCsv.Read(stream);
        Assert.False(read.Ok);
        Assert.True(stream.Given < 5 * 1024 * 1024, FormattableString.Invariant($"{stream.Given} bytes were taken"));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 64L * 1024 * 1024);
    }

    [Fact]
    public void Problems_stop_at_fifty() =>
        Assert.Equal(51, Read("material,N\n" + string.Concat(Enumerable.Repeat("nothing,1\n", 500))).Problems.Count);

    [Fact]
    public void Hostile_text_stays_text()
    {
        var bag = Assert.Single(Read("material,name\nurea,\"<script>alert(1)</script>'; DROP TABLE bags; --\"").Value!);
        Assert.Equal("<script>alert(1)</script>'; DROP TABLE bags; --", bag.Material.Name);
    }

    [Fact]
    public void A_file_that_is_not_there_is_a_problem() => Assert.Equal("file", BagCsv.ReadFile("no-such-file.csv").Problems[0].Field);

    private static Result<IReadOnlyList<Bag>> Read(string text) => BagCsv.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));

    private static IReadOnlyList<LabelLine> Lines(string label) => LabelReader.Parse(label).Value!;

    /// <summary>Rows of a CSV made up as they are asked for.</summary>
    private sealed class Endless(long length, bool seekable) : Stream
    {
        private static readonly byte[] Start = "material,N\n"u8.ToArray();
        private static readonly byte[] Row = "urea,46.000000000000000000000\n"u8.ToArray();

        public long Given { get; private set; }

        public override bool CanRead => true;

        public override bool CanSeek => seekable;

        public override bool CanWrite => false;

        public override long Length => length;

        public override long Position { get => Given; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var n = (int)Math.Min(count, length - Given);
            for (var i = 0; i < n; i++)
            {
                var at = Given + i;
                buffer[offset + i] = at < Start.Length ? Start[at] : Row[(at - Start.Length) % Row.Length];
            }

            Given += n;
            return n;
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
