using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;

namespace Ashery.Exchange.Materials;

/// <summary>
/// Bags as CSV, one a line: a catalogue material with this bag's label, or a compound by its label alone. It carries what a label and a shelf
/// hold; hazards, ions and the rest follow from the material. The garden file carries everything.
/// </summary>
public static class BagCsv
{
    /// <summary>Largest file, bytes. What is longer is refused before it is read.</summary>
    public const long LargestBytes = 4 * 1024 * 1024;

    /// <summary>Most bags in a file.</summary>
    public const int MostBags = 5000;

    /// <summary>Reads bags; all that is wrong comes back at once, each with line and column.</summary>
    public static Result<IReadOnlyList<Bag>> Read(Stream stream, MaterialCatalogue? catalogue = null) =>
        new BagCsvReader(catalogue ?? MaterialCatalogue.Default).Read(stream);

    /// <summary>Reads a file; one that cannot be opened is a problem, not an exception.</summary>
    public static Result<IReadOnlyList<Bag>> ReadFile(string path, MaterialCatalogue? catalogue = null)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read);
            return Read(stream, catalogue);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Result.Fail<IReadOnlyList<Bag>>("file", $"'{Path.GetFileName(path)}' cannot be read.", "Check the name and that you may read it.");
        }
    }

    /// <summary>Writes bags with their whole labels; reading it back gives the same bags.</summary>
    public static void Write(TextWriter writer, IEnumerable<Bag> bags) => BagCsvWriter.Write(writer, bags);

    /// <summary>Writes materials, for looking through in a spreadsheet or as a start for own bags.</summary>
    public static void WriteMaterials(TextWriter writer, IEnumerable<Material> materials) =>
        BagCsvWriter.Write(writer, materials.Select(static m => new Bag(m.Id, m, Stock: null, Price: null, Size: null)));
}
