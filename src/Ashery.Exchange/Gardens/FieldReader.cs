using System.Globalization;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Sources;

namespace Ashery.Exchange.Gardens;

/// <summary>Reads single fields, collecting every problem with its path instead of stopping at the first.</summary>
internal sealed class FieldReader
{
    private readonly List<Problem> problems = [];

    public IReadOnlyList<Problem> Problems => problems;

    public bool HasErrors => problems.Exists(static p => p.Severity == Severity.Error);

    public static Figure? OwnFigure(double? value) => value is { } v ? new(v, "own-label", Provenance.Seen) : null;

    public void Add(Problem problem) => problems.Add(problem);

    public void AddRange(IEnumerable<Problem> more) => problems.AddRange(more);

    public void Missing(string path, string wayOut) => problems.Add(new(path, "This is missing.", wayOut));

    /// <summary>Reads every item of a list, each under its own path; items that cannot be read are left out.</summary>
    public List<T> All<TDto, T>(IReadOnlyList<TDto>? items, string path, Func<TDto, string, T?> read)
        where T : class
    {
        var all = new List<T>();
        for (var i = 0; i < (items?.Count ?? 0); i++)
        {
            var at = FormattableString.Invariant($"{path}[{i}]");
            if (items![i] is null)
            {
                Missing(at, "Take out the null.");
            }
            else if (read(items[i], at) is { } item)
            {
                all.Add(item);
            }
        }

        return all;
    }

    public string Text(string? text, string path, int longest)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            Missing(path, "Give a short text in double quotes.");
            return "?";
        }

        if (text.Length > longest)
        {
            problems.Add(new(path, FormattableString.Invariant($"This text has {text.Length} characters; {longest} is the limit."), "Shorten it."));
        }
        else if (text.Any(char.IsControl))
        {
            problems.Add(new(path, "This text holds control characters.", "Take out line breaks and other unprintable signs."));
        }

        return text;
    }

    public double Number(double? value, string path, double low, double high, string unit)
    {
        if (value is null)
        {
            Missing(path, FormattableString.Invariant($"Give a number from {low} to {high} {unit}.").Replace(" .", ".", StringComparison.Ordinal));
            return low;
        }

        return Optional(value, path, low, high, unit) ?? low;
    }

    public double? Optional(double? value, string path, double low, double high, string unit)
    {
        if (value is { } v && !(v >= low && v <= high))
        {
            problems.Add(new(
                path,
                FormattableString.Invariant($"{v} {unit} is outside {low} to {high}.").Replace("  ", " ", StringComparison.Ordinal),
                unit.Length == 0 ? "Check the figure." : $"Check the figure; it is read in {unit}."));
            return null;
        }

        return value;
    }

    public T Word<T>(string? word, string path, T? fallback = null)
        where T : struct, Enum
    {
        if (word is null && fallback is { } f)
        {
            return f;
        }

        foreach (var value in Enum.GetValues<T>())
        {
            if (string.Equals(value.ToString(), word, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        problems.Add(new(path, word is null ? "This is missing." : $"There is no \"{word}\" here.", "Use one of " + string.Join(", ", Enum.GetValues<T>().Select(GardenWriter.Word)) + "."));
        return default;
    }

    public IReadOnlySet<T> Words<T>(IReadOnlyList<string>? words, string path)
        where T : struct, Enum => words is null ? new HashSet<T>() : words.Select((w, i) => Word<T>(w, FormattableString.Invariant($"{path}[{i}]"))).ToHashSet();

    public DateOnly? Date(string? text, string path)
    {
        if (text is null)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && date.Year is >= 1900 and <= 2200)
        {
            return date;
        }

        problems.Add(new(path, $"\"{text}\" is not a date.", "Write dates as 2026-03-15."));
        return null;
    }

    public Spread Spread(SpreadDto dto, string path, double low, double high)
    {
        var typical = Number(dto.Typical, path + ".typical", low, high, "");
        var min = Optional(dto.Min, path + ".min", low, high, "") ?? typical;
        var max = Optional(dto.Max, path + ".max", low, high, "") ?? typical;
        if (!(min <= typical && typical <= max))
        {
            problems.Add(new(path, "The lowest, typical and highest figure are not in order.", "Put min below typical below max."));
        }

        return new(min, typical, max);
    }

    public LabelAnalysis Label(IReadOnlyDictionary<string, double>? percent, string path)
    {
        var fractions = new Dictionary<Nutrient, double>();
        foreach (var (symbol, value) in percent ?? new Dictionary<string, double>())
        {
            Nutrient? nutrient = Enum.GetValues<Nutrient>().Where(n => LabelBasis.Symbol(n) == symbol).Select(static n => (Nutrient?)n).FirstOrDefault();
            if (nutrient is not { } known)
            {
                problems.Add(new($"{path}.{symbol}", "There is no such nutrient on a label here.", "Use N, P2O5, K2O, Ca, Mg, S, Fe, Mn, Zn, Cu, B, Mo, Cl or Na."));
            }
            else if (Optional(value, $"{path}.{symbol}", 0, 100, "%") is { } v)
            {
                fractions[known] = v / 100;
            }
        }

        var sum = fractions.Values.Sum();
        if (sum > 1)
        {
            problems.Add(new(path, FormattableString.Invariant($"The contents add up to {sum * 100:0.##} %."), "A label cannot hold more than 100 %."));
        }

        return new LabelAnalysis(fractions);
    }

    public NitrogenForms Nitrogen(NitrogenDto? dto, string path)
    {
        double Part(double v, string name) => (Optional(v, $"{path}.{name}", 0, 100, "%") ?? 0) / 100;
        return dto is null
            ? default
            : new(Part(dto.Ammonium, "ammonium"), Part(dto.Nitrate, "nitrate"), Part(dto.Urea, "urea"), Part(dto.Organic, "organic"), Part(dto.SlowSynthetic, "slowSynthetic"));
    }
}
