using System.Text;
using Ashery.Exchange.Materials;
using CsCheck;

namespace Ashery.Exchange.Tests.Materials;

public class HostileCsvTests
{
    private static readonly Gen<byte[]> Files = Gen.OneOf(
        Gen.Byte.Array[0, 300],
        Gen.Char["abcid,;\t\"'=NPK0123456789.\r\n- materialureaname\u00e9\u0000"].Array[0, 200].Select(c => Encoding.UTF8.GetBytes("material,N,name,left\n" + new string(c))));

    [Fact]
    public void Any_bytes_give_bags_or_problems() => Files.Sample(bytes =>
    {
        var read = BagCsv.Read(new MemoryStream(bytes));
        return read.Ok ? read.Value.Count > 0 : read.Problems.Count > 0 && read.Problems.All(p => p.Field.Length > 0 && p.WayOut.Length > 0);
    });

    [Fact]
    public void Any_bytes_as_json_give_bags_or_problems() => Files.Sample(bytes =>
    {
        var read = ShelfFile.Read(new MemoryStream(bytes));
        return read.Ok || read.Problems.Count > 0;
    });
}
