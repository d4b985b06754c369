using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Gardens;
using Ashery.Problems;

namespace Ashery.Exchange.Materials;

/// <summary>Bags as a JSON file of their own, each written as in the garden file: what is typed there may be pasted here and the other way round.</summary>
public static class ShelfFile
{
    /// <summary>What <c>format</c> says in files of this edition.</summary>
    public const string Format = "ashery-shelf/1";

    /// <summary>Reads bags; all that is wrong comes back at once, each with a path such as <c>shelf[2].label.N</c>, or with the line where the text breaks off.</summary>
    public static Result<IReadOnlyList<Bag>> Read(string text)
    {
        var dto = AsheryJson.Read(text, ShelfFileJson.Shared.ShelfFileDto, "shelf");
        if (!dto.Ok)
        {
            return Result.Fail<IReadOnlyList<Bag>>(dto.Problems);
        }

        if (!string.Equals(dto.Value.Format, Format, StringComparison.Ordinal))
        {
            return Result.Fail<IReadOnlyList<Bag>>("format", $"This is not a shelf file of this edition ({Format}).", $"Put \"format\": \"{Format}\" at the top.");
        }

        return new GardenReader().ReadShelf(dto.Value.Shelf ?? []);
    }

    /// <summary>Reads a stream, refusing what is too large or not text before holding it.</summary>
    public static Result<IReadOnlyList<Bag>> Read(Stream stream)
    {
        try
        {
            using var guarded = new GuardedStream(stream, BagCsv.LargestBytes);
            using var reader = new StreamReader(guarded);
            return Read(reader.ReadToEnd());
        }
        catch (FileFaultException fault)
        {
            return fault.Fault == FileFault.TooLarge
                ? Result.Fail<IReadOnlyList<Bag>>("file", string.Create(CultureInfo.InvariantCulture, $"It is larger than {BagCsv.LargestBytes / (1024 * 1024)} MB; no shelf is."), "Check that it is the right file, or split it.")
                : Result.Fail<IReadOnlyList<Bag>>("file", "It is not a text file.", "Give a JSON file as written by the export.");
        }
    }

    /// <summary>Writes bags; reading them back gives the same bags.</summary>
    public static string Write(IEnumerable<Bag> bags) => AsheryJson.Write(
        new ShelfFileDto { Format = Format, Shelf = [.. bags.Select(GardenWriter.BagOf)] }, ShelfFileJson.Shared.ShelfFileDto);
}

[Description("Bags on a shelf.")]
public sealed record ShelfFileDto
{
    [Description("Always " + ShelfFile.Format + ".")]
    public string? Format { get; init; }

    public IReadOnlyList<BagDto>? Shelf { get; init; }
}

/// <summary>Source-generated JSON of the shelf file.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(ShelfFileDto))]
public sealed partial class ShelfFileJson : JsonSerializerContext
{
    /// <summary>In the form every JSON text here has; what is not known is left out.</summary>
    public static ShelfFileJson Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options)
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    });
}
