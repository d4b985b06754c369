using System.Text.Json;
using Ashery.Cli.Tests.Frame;
using Command = Ashery.Cli.Tests.Frame.Command;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>Backup, restore, copy, export and import of a stored garden, as they are typed.</summary>
public sealed class MovingTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("ashery-moving-").FullName;

    [Fact]
    public void A_stored_garden_is_backed_up_and_restored()
    {
        Store();
        var backup = Json("backup", In("a.zip"));
        Assert.Equal(In("a.zip"), backup.GetProperty("file").GetString());
        Assert.Equal(0, Run("shelf", "--import", Bags("bag-two,urea,3kg,,\n")).Code);
        var restored = Json("restore", In("a.zip"));
        Assert.Equal(backup.GetProperty("contentHash").GetString(), restored.GetProperty("contentHash").GetString());
        Assert.True(File.Exists(restored.GetProperty("keptIn").GetString()));
        Assert.Contains("content ", Run("backup", In("b.zip")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Everything_is_exported_imported_and_copied()
    {
        Store();
        Assert.Equal(0, Run("export", In("out")).Code);
        Assert.True(File.Exists(Path.Combine(In("out"), "gardens", "home", "states.jsonl")));
        var elsewhere = Command.Run(Command.At(In("elsewhere")), "import", In("out"));
        Assert.Equal("", elsewhere.Errors);
        Assert.Contains("1 gardens, 1 states", elsewhere.Output, StringComparison.Ordinal);
        var hash = Json("backup", In("a.zip")).GetProperty("contentHash").GetString();
        Assert.Equal(hash, Json("copy", "--from", Path.Combine(In("home"), "garden.db"), "--to", In("copy.db")).GetProperty("contentHash").GetString());
    }

    [Fact]
    public void What_cannot_be_is_told()
    {
        Assert.Contains("no stored garden", Wrong("backup", In("a.zip")), StringComparison.Ordinal);
        Assert.Contains("no stored garden", Wrong("export", In("out")), StringComparison.Ordinal);
        Assert.Contains("No name is given", Wrong("backup"), StringComparison.Ordinal);
        Assert.Contains("There is no file", Wrong("restore", In("gone.zip")), StringComparison.Ordinal);
        Assert.Contains("There is no file or folder", Wrong("import", In("gone")), StringComparison.Ordinal);
        Assert.Contains("Both --from and --to", Wrong("copy", "--from", In("a.db")), StringComparison.Ordinal);
        Assert.Contains("There is no file", Wrong("copy", "--from", In("a.db"), "--to", In("b.db")), StringComparison.Ordinal);
        Store();
        File.WriteAllText(In("bad.zip"), "not a zip");
        Assert.Contains("damaged", Wrong("restore", In("bad.zip")), StringComparison.Ordinal);
        Assert.Contains("holds gardens already", Wrong("copy", "--from", Path.Combine(In("home"), "garden.db"), "--to", Path.Combine(In("home"), "garden.db")), StringComparison.Ordinal);
        Assert.Equal(0, Run("export", In("out")).Code);
        Assert.Contains("holds files already", Wrong("export", In("out")), StringComparison.Ordinal);
        Assert.Contains("records already", Wrong("import", In("out")), StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string In(string name) => Path.Combine(folder, name);

    private Printed Run(params string[] words) => Command.Run(Command.At(In("home")), words);

    private string Wrong(params string[] words)
    {
        var run = Run(words);
        Assert.Equal(2, run.Code);
        return run.Said;
    }

    private JsonElement Json(params string[] words)
    {
        var run = Run([.. words, "--json"]);
        Assert.True(run.Code == 0, run.Errors);
        return JsonDocument.Parse(run.Output).RootElement;
    }

    private string Bags(string lines)
    {
        File.WriteAllText(In("bags.csv"), "id,material,left,size,price\n" + lines);
        return In("bags.csv");
    }

    private void Store()
    {
        Assert.Equal(0, Run("shelf", "--demo", "--export-garden", In("garden.json")).Code);
        Assert.Equal(0, Run("shelf", "--import", In("garden.json")).Code);
    }
}
