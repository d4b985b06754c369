using System.CommandLine;
using Ashery.Exchange.Waters;
using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Cli.Frame;

/// <summary>The water a verb works with: <c>--water FILE|NAME|pure</c>, a water file or one of the waters that ship.</summary>
internal sealed class WaterSource
{
    /// <summary>Ids of the waters that ship, said here so that no verb reads them to show its help; a test compares.</summary>
    public const string Names = "rain, soft, moderate, hard, saline";

    private readonly ValueOption water;

    public WaterSource(Command command)
    {
        water = new ValueOption("--water", "FILE|NAME|pure", $"A water file (docs/schemas/water-file.schema.json) or a water that ships ({Names}); pure when left out")
        {
            Words = static () => SourceWaters.Default.All.Select(static w => w.Report.Id).Append("pure"),
        };
        command.Options.Add(water);
    }

    /// <summary>True when the words name a water.</summary>
    public bool IsNamed(Given given) => given.Has(water);

    /// <summary>The water; pure when none is named; null, with a problem kept, when it cannot be read.</summary>
    public SourceWater? Load(Given given)
    {
        if (!given.Has(water))
        {
            return SourceWater.Pure;
        }

        return given.Text(water) is { } word ? Named(given, word, Given.Field(water))?.Water : null;
    }

    /// <summary>A water by the word for it, with its reading; pure water has none. Null, with a problem kept, when there is no such water.</summary>
    public static (SourceWater Water, WaterReading? Reading, IReadOnlyList<Problem> Warnings)? Named(Given given, string word, string field)
    {
        if (SourceWaters.Default.Find(word) is { } shipped)
        {
            return (shipped, SourceWaters.Default.Example(word)?.Reading, []);
        }

        if (!LooksLikeFile(word))
        {
            var near = WrongWords.Meant(word, SourceWaters.Default.All.Select(static w => w.Report.Id).Append("pure"));
            given.Add(new Problem(
                field,
                $"{SafeText.Quoted(word)} is neither a file nor a water that ships.",
                (near is null ? string.Empty : $"Did you mean {near}? ") + $"Name a water file, or one of {Names}, pure."));
            return null;
        }

        if (given.Take(TextFile.Read(word, field)) is not { } text || given.Take(WaterFile.Read(text)) is not { } report)
        {
            return null;
        }

        // A file without a name is called by its own.
        var named = report.Name == "water" ? report with { Id = Path.GetFileNameWithoutExtension(word), Name = Path.GetFileNameWithoutExtension(word) } : report;
        var read = WaterReports.Read(named);
        return given.Take(read) is { } reading ? (reading.Water, reading, read.Problems) : null;
    }

    private static bool LooksLikeFile(string word) =>
        File.Exists(word) || Directory.Exists(word) || word.Contains('/', StringComparison.Ordinal) || word.Contains('\\', StringComparison.Ordinal)
        || word.EndsWith(".json", StringComparison.OrdinalIgnoreCase);
}
