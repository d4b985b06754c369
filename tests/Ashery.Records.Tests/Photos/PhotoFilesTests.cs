using Ashery.Records.Photos;

namespace Ashery.Records.Tests.Photos;

public sealed class PhotoFilesTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("ashery-photos-").FullName;

    [Fact]
    public void What_was_kept_comes_back_under_its_hash()
    {
        var files = PhotoFiles.Beside(Path.Combine(folder, "garden.db"));
        Assert.Equal(Path.Combine(folder, "photos"), files.Folder);
        Assert.Empty(files.Names());
        var hash = files.Keep([1, 2, 3], [4]).Value!;

        // SHA-256 of the bytes 01 02 03, from the command sha256sum.
        Assert.Equal("039058c6f2c0cb492c533b0a4d14ef77cc0f78abccced5287d84a1a2011cfb81", hash);
        Assert.True(files.Has(hash));
        Assert.Equal([1, 2, 3], Read(files.Open(hash)));
        Assert.Equal([4], Read(files.Open(hash, small: true)));
        Assert.Equal(hash, files.Keep([1, 2, 3], [4]).Value);
        Assert.Equal([hash + "-small.jpg", hash + ".jpg"], files.Names());
    }

    [Fact]
    public void No_name_leads_out_of_the_folder()
    {
        var files = new PhotoFiles(folder);
        File.WriteAllText(Path.Combine(folder, "secret.jpg"), "x");
        foreach (var name in new[] { "secret", "../secret", "", new string('A', 64), new string('.', 64), "/etc/passwd" })
        {
            Assert.Null(files.Open(name));
            Assert.False(files.Has(name));
        }

        Assert.Empty(files.Names());
        Assert.False(PhotoFiles.IsName("../" + new string('a', 61) + ".jpg"));
    }

    /// <summary>What an end of power leaves behind is not a photograph, and does not stand in the way of the whole one.</summary>
    [Fact]
    public void An_unfinished_file_is_not_there()
    {
        var files = new PhotoFiles(folder);
        var hash = PhotoFiles.HashOf([1, 2, 3]);
        File.WriteAllBytes(Path.Combine(folder, hash + ".jpg.0123.part"), [1]);
        Assert.False(files.Has(hash));
        Assert.Empty(files.Names());
        Assert.True(files.Keep([1, 2, 3], [4]).Ok);
        Assert.Equal([1, 2, 3], Read(files.Open(hash)));
    }

    /// <summary>A file where the folder should be: nothing can be written, whoever runs the test.</summary>
    [Fact]
    public void Where_nothing_can_be_written_it_says_so_and_keeps_nothing()
    {
        var taken = Path.Combine(folder, "photos");
        File.WriteAllText(taken, "");
        var kept = new PhotoFiles(taken).Keep([1], [2]);
        Assert.False(kept.Ok);
        Assert.Contains("Nothing was kept", kept.Problems[0].Message, StringComparison.Ordinal);
        Assert.Equal("", File.ReadAllText(taken));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static byte[] Read(Stream? stream)
    {
        Assert.NotNull(stream);
        using (stream)
        {
            using var memory = new MemoryStream();
            stream.CopyTo(memory);
            return memory.ToArray();
        }
    }
}
