using System.Globalization;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using CsvHelper;

namespace Ashery.Exchange.Materials;

/// <summary>Reads bags from CSV row by row; every problem names the line and the column.</summary>
internal sealed class BagCsvReader(MaterialCatalogue catalogue)
{
    /// <summary>After so many problems the file is plainly another one.</summary>
    private const int MostProblems = 50;

    // A record is one bag: longer than this it is a quote that was never closed.
    private static readonly CsvReaderOptions Options = CsvReaderOptions.Default with
    {
        TrackLineNumbers = true,
        MaxRecordSize = 64 * 1024,
        MalformedData = CsvMalformedDataHandling.Throw,
        AllowLineBreaksInQuotes = false,
    };

    private readonly List<Problem> problems = [];
    private readonly List<Bag> bags = [];
    private readonly Dictionary<string, long> linesById = new(StringComparer.Ordinal);

    public Result<IReadOnlyList<Bag>> Read(Stream stream)
    {
        try
        {
            using var guarded = new GuardedStream(stream, BagCsv.LargestBytes);
            using var csv = CsvReader.Create(guarded, Options, leaveOpen: true);
            csv.ReadHeader();
            if (Header(csv))
            {
                Rows(csv);
            }
        }
        catch (FileFaultException fault)
        {
            problems.Clear();
            problems.Add(Fault(fault.Fault));
        }
        catch (CsvFormatException wrong)
        {
            problems.Add(new Problem(Line(wrong.LineNumber), "The quotes of this line do not match, or it is far too long for one bag.", "Open and close every quoted text on its own line."));
        }

        if (problems.Exists(static p => p.Severity == Severity.Error))
        {
            return Result.Fail<IReadOnlyList<Bag>>(problems);
        }

        return bags.Count == 0
            ? Result.Fail<IReadOnlyList<Bag>>("file", "There is no bag in it.", "Put one bag on each line below the header.")
            : Result.Of<IReadOnlyList<Bag>>(bags, problems);
    }

    private static Problem Fault(FileFault fault) => fault == FileFault.TooLarge
        ? new Problem("file", string.Create(CultureInfo.InvariantCulture, $"It is larger than {BagCsv.LargestBytes / (1024 * 1024)} MB; no shelf is."), "Check that it is the right file, or split it.")
        : new Problem("file", "It is not a text file.", "In a spreadsheet, save it as CSV UTF-8.");

    private static string Line(long number) => string.Create(CultureInfo.InvariantCulture, $"line {number}");

    private bool Header(CsvReader csv)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var header in csv.Headers)
        {
            var name = header.Trim();
            if (!BagColumns.IsPlain(name) && LabelItems.Find(name) is null)
            {
                problems.Add(new Problem("line 1", $"The column '{NumberReader.Shown(name)}' is not known.", $"Columns are {string.Join(", ", BagColumns.All)}; oxides such as CaO may stand for elements."));
            }
            else if (!seen.Add(name))
            {
                problems.Add(new Problem("line 1", $"The column '{NumberReader.Shown(name)}' is there twice.", "Leave one of the two."));
            }
        }

        if (!seen.Contains(BagColumns.Id) && !seen.Contains(BagColumns.Material))
        {
            problems.Add(new Problem("line 1", "There is neither an 'id' nor a 'material' column.", $"Start the file with a header, such as {BagColumns.Material},N,P2O5,K2O,{BagColumns.Left}."));
        }

        return problems.Count == 0;
    }

    private void Rows(CsvReader csv)
    {
        while (csv.Read())
        {
            if (bags.Count >= BagCsv.MostBags)
            {
                problems.Add(new Problem(Line(csv.LineNumber), string.Create(CultureInfo.InvariantCulture, $"There are more than {BagCsv.MostBags} bags."), "Split the file."));
                return;
            }

            if (problems.Count >= MostProblems)
            {
                problems.Add(new Problem(Line(csv.LineNumber), string.Create(CultureInfo.InvariantCulture, $"There are {MostProblems} problems up to here; the rest was not read."), "Put these right first."));
                return;
            }

            var line = csv.LineNumber;
            var place = Line(line);
            if (csv.FieldCount > csv.Headers.Count)
            {
                problems.Add(new Problem(place, string.Create(CultureInfo.InvariantCulture, $"It has {csv.FieldCount} fields, the header has {csv.Headers.Count}."), "Put text that holds a comma in double quotes, and write decimals with a point."));
                continue;
            }

            if (new BagCsvRow(csv, catalogue, place, problems).Read() is not { } bag)
            {
                continue;
            }

            if (linesById.TryAdd(bag.Id, line))
            {
                bags.Add(bag);
            }
            else
            {
                problems.Add(new Problem($"{place}, {BagColumns.Id}", string.Create(CultureInfo.InvariantCulture, $"'{bag.Id}' is on line {linesById[bag.Id]} already."), "Give each bag an id of its own."));
            }
        }
    }
}
