using System.Globalization;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Json;
using Ashery.Problems;
using Ashery.Trials;
using Ashery.Trials.Chances;
using Ashery.Trials.Results;

namespace Ashery.Exchange.Trials;

/// <summary>A trial as a JSON file; docs/trial-file.md tells each field, schema: docs/schemas/trial-file.schema.json.</summary>
public static class TrialFile
{
    public const string Format = "ashery-trial/1";

    /// <summary>Two thousand pots fit well below it.</summary>
    public const int LongestText = 1024 * 1024;

    private const int LongestWord = 80;
    private const int MostResults = 20_000;

    /// <summary>Reads a trial, with or without a layout and results; everything that is wrong comes back at once, each with its field.</summary>
    public static Result<AnalysisRequest> Read(string text)
    {
        if (text.Length > LongestText)
        {
            return Result.Fail<AnalysisRequest>("trial", "The text is longer than 1 MB; no trial is.", "Check that it is the right file.");
        }

        if (HalfSigns.In(text, "trial") is { } half)
        {
            return Result.Fail<AnalysisRequest>(half);
        }

        var read = AsheryJson.Read(text, TrialJsonContext.Shared.TrialDto, "trial");
        if (!read.Ok)
        {
            return Result.Fail<AnalysisRequest>(read.Problems);
        }

        if (!string.Equals(read.Value.Format, Format, StringComparison.Ordinal))
        {
            return Result.Fail<AnalysisRequest>("format", $"This is not a trial file of this edition ({Format}).", $"Put \"format\": \"{Format}\" at the top.");
        }

        var fields = new FieldReader();
        var trial = Of(read.Value, fields);
        if (read.Value.Results?.Count > MostResults)
        {
            fields.Add(new("results", FormattableString.Invariant($"There are {read.Value.Results.Count} figures; {MostResults} is the limit."), "Keep to one trial."));
        }

        var readings = fields.HasErrors ? [] : fields.All(read.Value.Results, "results", (r, at) => Reading(r, at, fields));
        return fields.HasErrors
            ? Result.Fail<AnalysisRequest>([.. fields.Problems.Where(static p => p.Severity == Severity.Error)])
            : Result.Of(new AnalysisRequest(trial, readings));
    }

    /// <summary>The sample of <c>data/demo</c>, a worked example of the format with made figures.</summary>
    public static string Sample()
    {
        using var stream = typeof(Trial).Assembly.GetManifestResourceStream("data/demo/railing.trial.json")
            ?? throw new InvalidOperationException("The sample trial is not part of the library.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Writes a trial, with what was written down so far; reading it back gives the same.</summary>
    public static string Write(Trial trial, IReadOnlyList<TrialReading>? readings = null) => AsheryJson.Write(
        new TrialDto
        {
            Format = Format,
            Name = trial.Name,
            Measure = new() { Kind = Word(trial.Measure.Kind), Name = trial.Measure.Name, Unit = trial.Measure.Unit.Length > 0 ? trial.Measure.Unit : null, Summary = Word(trial.Measure.Summary) },
            Feeds = [.. trial.Treatments.Select(static t => new TreatmentDto { Id = t.Id, Name = t.Name, Control = t.IsControl, Code = t.Code, Factors = t.Factors.Count > 0 ? t.Factors : null })],
            Wish = new() { Mean = trial.Wish.Mean, Difference = Percent(trial.Wish.Difference), Spread = Percent(trial.Wish.Spread), Power = Percent(trial.Wish.Power), Alpha = Percent(trial.Wish.Alpha) },
            Pots = trial.Pots.Count > 0 ? [.. trial.Pots.Select(static p => new TrialPotDto { Id = p.Id, Name = p.Name.Length > 0 ? p.Name : null, Litres = p.Litres, Place = p.Place })] : null,
            Seed = trial.Seed,
            Blind = trial.Blind,
            Looks = trial.Looks,
            Spending = Word(trial.Spending),
            Layout = trial.Layout.Count > 0 ? [.. trial.Layout.Select(static p => new TrialPlaceDto { Pot = p.Pot, Block = p.Block > 0 ? p.Block : null, Feed = p.Treatment })] : null,
            Results = readings?.Count > 0 ? [.. readings.Select(static r => new TrialReadingDto { Pot = r.Pot, Date = r.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Value = r.Value })] : null,
        },
        TrialJsonContext.Files.TrialDto);

    /// <summary>A short key from a name: lower-case letters, digits and hyphens.</summary>
    public static string Key(string name)
    {
        var key = new string([.. name.Trim().ToLowerInvariant().Select(static c => char.IsLetterOrDigit(c) ? c : '-')]).Trim('-');
        while (key.Contains("--", StringComparison.Ordinal))
        {
            key = key.Replace("--", "-", StringComparison.Ordinal);
        }

        return key.Length > 0 ? key : "feed";
    }

    // A part as percent without the dust of binary fractions.
    private static double Percent(double part) => Math.Round(part * 100, 9);

    internal static string Word<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    private static Trial Of(TrialDto dto, FieldReader fields)
    {
        if (dto.Measure is null)
        {
            fields.Missing("measure", "Say what is counted or measured, as in { \"kind\": \"count\", \"name\": \"open flowers\" }.");
        }

        if (dto.Feeds is null)
        {
            fields.Missing("feeds", "Name two feeds or more, as in [ { \"name\": \"plain water\", \"control\": true }, { \"name\": \"spring mix\" } ].");
        }

        var kind = fields.Word<MeasureKind>(dto.Measure?.Kind, "measure.kind", dto.Measure is null ? MeasureKind.Count : null);
        var measure = new TrialMeasure(kind, fields.Text(dto.Measure?.Name ?? "figure", "measure.name", LongestWord), dto.Measure?.Unit is { } unit ? fields.Text(unit, "measure.unit", 20) : "");
        measure = dto.Measure?.Summary is { } summary ? measure with { Summary = fields.Word<PotSummary>(summary, "measure.summary") } : measure;
        var wish = new TrialWish();
        var said = dto.Wish ?? new();
        return new Trial
        {
            Name = fields.Text(dto.Name, "name", LongestWord),
            Measure = measure,
            Treatments = fields.All(dto.Feeds, "feeds", (f, at) => Feed(f, at, fields)),
            Wish = wish with
            {
                Mean = said.Mean ?? wish.Mean,
                Difference = said.Difference / 100 ?? wish.Difference,
                Spread = said.Spread / 100 ?? wish.Spread,
                Power = said.Power / 100 ?? wish.Power,
                Alpha = said.Alpha / 100 ?? wish.Alpha,
            },
            Pots = Limited(dto.Pots, "pots", fields, (p, at) => new TrialPot(fields.Text(p.Id, at + ".id", LongestWord), p.Name is { } name ? fields.Text(name, at + ".name", LongestWord) : "", fields.Optional(p.Litres, at + ".litres", 0.02, 2000, "L"), p.Place is { } place ? fields.Text(place, at + ".place", LongestWord) : null)),
            Seed = dto.Seed ?? 1,
            Blind = dto.Blind,
            Looks = dto.Looks ?? 1,
            Spending = fields.Word<SpendingRule>(dto.Spending, "spending", SpendingRule.OBrienFleming),
            Layout = Limited(dto.Layout, "layout", fields, (p, at) => new TrialPlace(fields.Text(p.Pot, at + ".pot", LongestWord), (int)(fields.Optional(p.Block, at + ".block", 0, Trial.MostPots, "") ?? 0), fields.Text(p.Feed, at + ".feed", LongestWord))),
        };
    }

    private static TrialReading Reading(TrialReadingDto dto, string at, FieldReader fields)
    {
        if (dto.Value is null)
        {
            fields.Missing(at + ".value", "Give the figure, or leave the whole line out.");
        }

        return new(fields.Text(dto.Pot, at + ".pot", LongestWord), dto.Value ?? 0, fields.Date(dto.Date, at + ".date"));
    }

    private static Treatment Feed(TreatmentDto dto, string at, FieldReader fields)
    {
        var name = fields.Text(dto.Name ?? dto.Id, at + ".name", LongestWord);
        var factors = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (factor, level) in dto.Factors ?? new Dictionary<string, string>())
        {
            factors[fields.Text(factor, at + ".factors", 20)] = fields.Text(level, $"{at}.factors.{factor}", 20);
        }

        return new(dto.Id is { } id ? fields.Text(id, at + ".id", LongestWord) : Key(name), name, dto.Control)
        {
            Code = dto.Code is { } code ? fields.Text(code, at + ".code", 8) : null,
            Factors = factors,
        };
    }

    private static List<T> Limited<TDto, T>(IReadOnlyList<TDto>? items, string path, FieldReader fields, Func<TDto, string, T> read)
        where T : class
    {
        if (items?.Count > Trial.MostPots)
        {
            fields.Add(new(path, string.Create(CultureInfo.InvariantCulture, $"There are {items.Count} entries; {Trial.MostPots} is the limit."), "Take some out."));
            return [];
        }

        return fields.All(items, path, read);
    }
}
