using System.Globalization;
using Ashery.Problems;
using Ashery.Sources;

namespace Ashery.Crops;

/// <summary>All growing rules, as shipped or as the grower changed them. Planning and dosing read their figures from here.</summary>
public sealed class RuleBook
{
    private static readonly string[] Files = ["seasons", "intervals", "gates", "caps", "doses", "pots", "ways"];

    private static readonly Lazy<RuleBook> Shipped = new(
        static () => new(Files.SelectMany(static file => DataRows.Read($"data/rules/{file}.json", GrowingRuleRow.Read))));

    private readonly Dictionary<string, GrowingRule> byId;

    private RuleBook(IEnumerable<GrowingRule> rules)
    {
        All = [.. rules];
        byId = All.ToDictionary(static rule => rule.Id, StringComparer.Ordinal);
    }

    /// <summary>The rules of <c>data/rules</c>, read at first use.</summary>
    public static RuleBook Default => Shipped.Value;

    public IReadOnlyList<GrowingRule> All { get; }

    /// <summary>The rule of this id. One that does not exist is our own mistake, so it throws.</summary>
    public GrowingRule this[string id] => byId[id];

    /// <summary>The rule of this id, or null.</summary>
    public GrowingRule? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>
    /// The rules with the grower's changes, by rule id. A setting is <c>on</c>, <c>off</c>, one of the rule's choices, or
    /// <c>name=value</c> for a parameter; several are separated by commas: <c>reduce, factor=0.4</c>.
    /// </summary>
    /// <returns>The changed rules, or a problem for every setting that cannot be.</returns>
    public Result<RuleBook> With(IReadOnlyDictionary<string, string> changes)
    {
        var problems = new List<Problem>();
        var changed = new Dictionary<string, GrowingRule>(byId, StringComparer.Ordinal);
        foreach (var (id, settings) in changes)
        {
            if (!changed.TryGetValue(id, out var rule))
            {
                problems.Add(new($"rule {id}", "There is no such rule.", "Look its id up in the list of rules, or drop the change."));
                continue;
            }

            foreach (var setting in settings.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                rule = Apply(rule, setting, problems);
            }

            changed[id] = rule;
        }

        return problems.Count > 0 ? Result.Fail<RuleBook>(problems) : Result.Of(new RuleBook(All.Select(rule => changed[rule.Id])));
    }

    private static GrowingRule Apply(GrowingRule rule, string setting, List<Problem> problems)
    {
        if (setting is "on" or "off" && !rule.Choices.Contains(setting))
        {
            return rule with { IsOn = setting == "on" };
        }

        if (rule.Choices.Contains(setting))
        {
            return rule with { Choice = setting };
        }

        var equals = setting.IndexOf('=', StringComparison.Ordinal);
        var parameter = equals < 0 ? null : rule.Parameters.FirstOrDefault(p => p.Name.AsSpan().SequenceEqual(setting.AsSpan(0, equals).Trim()));
        if (parameter is null)
        {
            problems.Add(new($"rule {rule.Id}", $"The setting {setting} is not known.", $"Write {Ways(rule)}."));
            return rule;
        }

        if (!double.TryParse(setting.AsSpan(equals + 1), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !(value >= parameter.Min && value <= parameter.Max))
        {
            problems.Add(new(
                $"rule {rule.Id}, {parameter.Name}",
                string.Create(CultureInfo.InvariantCulture, $"It must be a number from {parameter.Min} to {parameter.Max} ({parameter.Unit})."),
                string.Create(CultureInfo.InvariantCulture, $"Write it with a decimal point, as {parameter.Name}={parameter.Value}.")));
            return rule;
        }

        return rule with { Parameters = [.. rule.Parameters.Select(p => p == parameter ? p with { Value = value } : p)] };
    }

    private static string Ways(GrowingRule rule)
    {
        var ways = new List<string> { "on", "off" };
        ways.AddRange(rule.Choices);
        ways.AddRange(rule.Parameters.Select(static p => string.Create(CultureInfo.InvariantCulture, $"{p.Name}={p.Value}")));
        return string.Join(", ", ways.Distinct(StringComparer.Ordinal));
    }
}
