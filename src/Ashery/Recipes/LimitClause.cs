using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>Reads one clause of the limit grammar into a draft.</summary>
internal static class LimitClause
{
    private const string Examples = "Write one like urea<=30%, Mg>=1%, salt-index<=80, without urea or organic-only.";

    /// <summary>Null when it was read; else what is wrong with it.</summary>
    public static Problem? Read(string clause, LimitDraft draft)
    {
        var tidy = clause.Replace("\u2264", "<=", StringComparison.Ordinal).Replace("\u2265", ">=", StringComparison.Ordinal);
        var lower = tidy.ToLowerInvariant();
        if (lower is "without" || lower.StartsWith("without ", StringComparison.Ordinal))
        {
            return Without(tidy["without".Length..], draft);
        }

        var sign = tidy.AsSpan().IndexOfAny('<', '>', '=');
        if (sign < 0)
        {
            return Flag(lower, clause, draft);
        }

        var name = tidy[..sign].Trim();
        var atMost = tidy[sign] == '<';
        var plain = tidy[sign] == '=';
        var value = tidy[(sign + 1)..].TrimStart('=').Trim();
        if (name.Equals("use", StringComparison.OrdinalIgnoreCase))
        {
            return Use(value, draft);
        }

        if (plain)
        {
            return new Problem(
                $"limit {Say.Quoted(name)}", "A limit needs <= or >=.", $"Write {Written(name)}<=... or {Written(name)}>=..., as in Mg>=1%.");
        }

        if (name.StartsWith("material ", StringComparison.OrdinalIgnoreCase))
        {
            return Material(name["material ".Length..].Trim(), atMost, value, draft);
        }

        return Figure(name, atMost, value, draft);
    }

    private static Problem? Flag(string lower, string clause, LimitDraft draft)
    {
        switch (lower)
        {
            case "organic-only":
                draft.OrganicOnly = true;
                return null;
            case "soluble-only":
                draft.SolubleOnly = true;
                return null;
            default:
                return new Problem("limit", $"{Say.Quoted(clause)} is not a limit known here.", Examples);
        }
    }

    private static Problem? Without(string rest, LimitDraft draft)
    {
        var ids = rest.Split([',', ' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (ids.Length == 0)
        {
            return new Problem("limit without", "No material is named.", "Name one, as in without urea.");
        }

        foreach (var id in ids)
        {
            if (BadId(id) is { } problem)
            {
                return problem;
            }

            draft.Without.Add(id.ToLowerInvariant());
        }

        return null;
    }

    private static Problem? Use(string value, LimitDraft draft)
    {
        BlendUse? use = value.ToLowerInvariant() switch
        {
            "dry-today" => BlendUse.DryToday,
            "dry-stored" => BlendUse.DryStored,
            "dissolved" => BlendUse.Dissolved,
            _ => null,
        };
        if (use is null)
        {
            return new Problem("limit use", $"{Say.Quoted(value)} is not a use known here.", "Write use=dry-today, use=dry-stored or use=dissolved.");
        }

        return draft.SetUse(use.Value);
    }

    private static Problem? Material(string id, bool atMost, string value, LimitDraft draft)
    {
        if (BadId(id) is { } problem)
        {
            return problem;
        }

        var amount = LimitAmount.Fraction(value, $"limit material {id}", "material neem-cake<=40%");
        return amount.Ok ? draft.SetMaterial(id.ToLowerInvariant(), atMost, amount.Value) : amount.Problems[0];
    }

    private static Problem? Figure(string name, bool atMost, string value, LimitDraft draft)
    {
        var lower = name.ToLowerInvariant();
        if (LimitFigure.Find(lower) is { } figure)
        {
            if (figure.IsAtMost != atMost)
            {
                return new Problem(
                    $"limit {lower}", $"{lower} takes {(figure.IsAtMost ? "<=" : ">=")} only.", $"Write it as in {figure.Example}.");
            }

            var read = figure.IsFraction
                ? LimitAmount.Fraction(value, $"limit {lower}", figure.Example)
                : PlainNumber.Read(value, $"limit {lower}", figure.Least, figure.Most, figure.Example);
            return read.Ok ? draft.Set(figure, read.Value) : read.Problems[0];
        }

        if (NutrientWord.Find(name) is { } word)
        {
            var read = LimitAmount.Fraction(value, $"limit {name}", "Mg>=1%");
            return read.Ok ? draft.SetContent(word.Nutrient, atMost, read.Value * word.LabelPerWritten) : read.Problems[0];
        }

        var looksLikeMaterial = lower.Contains('-', StringComparison.Ordinal) && BadId(lower) is null;
        return new Problem(
            "limit",
            $"{Say.Quoted(name)} is not something that can be limited.",
            looksLikeMaterial ? $"For a material write material {lower}<=40%." : Examples);
    }

    private static Problem? BadId(string id) =>
        id.Length is > 0 and <= 80 && id.All(static c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.')
            ? null
            : new Problem("limit", $"{Say.Quoted(id)} is not a material's key.", "Write it as the catalogue does, as in without potassium-chloride.");

    private static string Written(string name) => name.Length is > 0 and <= 40 && BadId(name) is null ? name : "Mg";
}
