using System.Text.Json;
using Ashery.Cli.Tests.BadInput;
using Ashery.Cli.Tests.Frame;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>Batches into the stored journal and out of it again; what is wrong is named and writes nothing.</summary>
public class StockTests
{
    [Fact]
    public void A_batch_that_is_saved_stands_in_the_stock_and_is_traced_and_recalled()
    {
        using var folder = new TemporaryFolder();
        var at = Command.At(folder.Path);
        Assert.Equal(0, Command.Run(at, "shelf", "--import", folder.Write("garden.json", GardenFile.Write(DemoGarden.Create(Command.Today)))).Code);
        string[] weighed = ["batch", "terrace-blend", "--weighed", "ammonium-sulfate=55", "--weighed", "potassium-nitrate=36", "--weighed", "map-technical=9"];
        Assert.Equal(0, Command.Run(at, weighed).Code);
        Assert.Empty(Of(Command.Run(at, "stock", "--json")).GetProperty("batches").EnumerateArray());

        var saved = Command.Run(at, [.. weighed, "--save", "--json"]);
        Assert.Equal((0, string.Empty), (saved.Code, saved.Errors));
        var lot = Of(saved).GetProperty("lot").GetString()!;
        Assert.Equal("260410-01", lot);
        var stock = Of(Command.Run(at, "stock", "--json"));
        Assert.Equal(100, Assert.Single(stock.GetProperty("batches").EnumerateArray()).GetProperty("left").GetDouble());
        Assert.Equal(1864, stock.GetProperty("lines").EnumerateArray().First(l => l.GetProperty("id").GetString() == "potassium-nitrate").GetProperty("left").GetDouble(), 1e-9);
        Assert.Equal("260410-02", Of(Command.Run(at, [.. weighed, "--json"])).GetProperty("lot").GetString());
        Assert.Equal(3, Of(Command.Run(at, "batch", "--trace", lot, "--json")).GetProperty("bags").GetArrayLength());
        Assert.Single(Of(Command.Run(at, "batch", "--recall", lot, "--json")).GetProperty("batches").EnumerateArray());
    }

    [Theory]
    [InlineData("batch --demo", "No feed is named")]
    [InlineData("batch terrace-blend --demo", "How much")]
    [InlineData("batch nothing --grams 100 --demo", "not a feed of this garden")]
    [InlineData("batch nothing --weighed map-technical=1 --demo", "not a feed of this garden")]
    [InlineData("batch terrace-blend tide-mix --grams 100 --demo", "One thing at a time")]
    [InlineData("batch terrace-blend --trace x --demo", "One thing at a time")]
    [InlineData("batch --trace x --recall y --demo", "One thing at a time")]
    [InlineData("batch terrace-blend --grams 0 --demo", "not above zero")]
    [InlineData("batch terrace-blend --grams NaN --demo", "")]
    [InlineData("batch terrace-blend --grams 1e9 --demo", "")]
    [InlineData("batch terrace-blend --grams 5,5 --demo", "")]
    [InlineData("batch terrace-blend --grams 100 --save --demo", "Nothing was weighed")]
    [InlineData("batch terrace-blend --weighed urea --demo", "not a bag with its grams")]
    [InlineData("batch terrace-blend --weighed unobtainium=5 --demo", "not on the shelf")]
    [InlineData("batch terrace-blend --weighed map-technical=-5 --demo", "negative")]
    [InlineData("batch terrace-blend --weighed map-technical=0 --demo", "")]
    [InlineData("batch terrace-blend --weighed map-technical@nolot=5 --demo", "No bag of map-technical has the lot")]
    [InlineData("batch terrace-blend --weighed map-technical=5 --save --demo", "Only the stored garden")]
    [InlineData("batch terrace-blend --grams 100 --on 2026-13-01 --demo", "")]
    [InlineData("stock --demo --from 2026-05-01 --to 2026-04-01", "ends before it begins")]
    [InlineData("stock --demo --from yesterday", "")]
    [InlineData("stock", "no stored garden")]
    public void What_is_wrong_is_named(string line, string said)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Contains(said, run.Said, StringComparison.Ordinal);
        WrongWordsTests.NeverATrace(run);
    }

    [Theory]
    [InlineData("\u001b[31mred\u001b[0m")]
    [InlineData("'; DROP TABLE entry; --")]
    [InlineData("../../../etc/passwd")]
    [InlineData("%s{0}")]
    public void Hostile_lots_are_lots_nobody_has(string lot)
    {
        foreach (var way in new[] { "--trace", "--recall" })
        {
            var run = Command.Run("batch", way, lot, "--demo");
            Assert.Equal(1, run.Code);
            Assert.DoesNotContain(run.Output, static c => char.IsControl(c) && c != '\n');
            WrongWordsTests.NeverATrace(run);
        }
    }

    private static JsonElement Of(Printed run) => JsonDocument.Parse(run.Output).RootElement;
}
