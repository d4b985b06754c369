using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Materials;

/// <summary>A label that has been looked through.</summary>
/// <param name="Label">Contents on the label basis; the nutrients typed, all others zero.</param>
/// <param name="Nitrogen">Forms as typed, null when the label gives none.</param>
/// <param name="Typed">The nutrients the label names.</param>
public sealed record CheckedLabel(LabelAnalysis Label, NitrogenForms? Nitrogen, IReadOnlyList<Nutrient> Typed);

/// <summary>
/// Looks through a typed label for what cannot be: negative or endless figures, more than the pure salt holds, parts above 100 %, forms of
/// nitrogen that do not add up, oxide and element confused, traces in mg/kg typed as percent.
/// </summary>
public static class LabelCheck
{
    /// <summary>Points by which printed nitrogen forms may miss the printed total: each is rounded for itself.</summary>
    public const double FormsRounding = 0.25;

    /// <summary>Checks the lines against each other and, when the salt is known, against it.</summary>
    /// <param name="lines">As typed.</param>
    /// <param name="basis">What the bag holds, where known.</param>
    /// <param name="field">What to call the label in a problem.</param>
    public static Result<CheckedLabel> Check(IReadOnlyList<LabelLine> lines, Material? basis = null, string field = "label")
    {
        var problems = new List<Problem>();
        foreach (var line in lines)
        {
            LineProblems(line, basis, field, problems);
        }

        LabelBases.Doubles(lines, field, problems);
        if (HasError(problems))
        {
            return Result.Fail<CheckedLabel>(problems);
        }

        var forms = Forms(lines);
        var (label, typed) = Contents(lines, forms);
        Nitrogen(lines, forms, field, problems);
        Sum(label, field, problems);
        if (basis is not null)
        {
            problems.AddRange(PureLimit.Check(field, label, [.. typed], basis, basis.Name, lines));
            if (!HasError(problems))
            {
                LabelBases.Confusions(lines, basis, field, problems);
            }
        }

        return HasError(problems)
            ? Result.Fail<CheckedLabel>(problems)
            : Result.Of(new CheckedLabel(label, forms.Total > 0 ? forms : null, typed), problems);
    }

    private static bool HasError(List<Problem> problems) => problems.Exists(static p => p.Severity == Severity.Error);

    private static void LineProblems(LabelLine line, Material? basis, string field, List<Problem> problems)
    {
        var place = $"{field}, {LabelItems.Symbol(line.Item)}";
        if (NumberReader.Check(line.Percent, place, 0, double.MaxValue) is { } wrong)
        {
            problems.Add(wrong);
            return;
        }

        var isTrace = LabelItems.IsTrace(line.Item);
        if (line.Percent > 100)
        {
            problems.Add(isTrace
                ? new Problem(place, FormattableString.Invariant($"{line.Percent:0.##} % is more than the whole bag."), FormattableString.Invariant($"It looks like mg/kg: {line.Percent:0.##} mg/kg is {line.Percent / 10000:0.######} %."))
                : new Problem(place, FormattableString.Invariant($"{line.Percent:0.##} % is more than the whole bag."), "Type percent by weight, at most 100."));
        }
        else if (isTrace && line.Percent > 5 && basis?.Kind is not MaterialKind.TraceElement)
        {
            problems.Add(new Problem(place, FormattableString.Invariant($"{line.Percent:0.##} % of a trace element is more than a compound fertiliser holds."),
                FormattableString.Invariant($"If the label says mg/kg or ppm, write it so: {line.Percent:0.##} mg/kg."), Severity.Warning));
        }
    }

    private static NitrogenForms Forms(IReadOnlyList<LabelLine> lines)
    {
        double Of(LabelItem item) => lines.Where(l => l.Item == item).Sum(static l => l.Percent) / 100;
        return new NitrogenForms(Of(LabelItem.AmmoniumN), Of(LabelItem.NitrateN), Of(LabelItem.UreaN), Of(LabelItem.OrganicN), Of(LabelItem.SlowN));
    }

    private static (LabelAnalysis Label, IReadOnlyList<Nutrient> Typed) Contents(IReadOnlyList<LabelLine> lines, NitrogenForms forms)
    {
        var fractions = new double[Analysis.Count];
        var typed = new SortedSet<Nutrient>();
        foreach (var line in lines)
        {
            var n = LabelItems.NutrientOf(line.Item);
            typed.Add(n);
            if (!LabelItems.IsNitrogenForm(line.Item))
            {
                fractions[(int)n] = line.Percent / 100 * LabelItems.ToLabelBasis(line.Item);
            }
        }

        // A label that gives only the forms means their sum.
        if (!lines.Any(static l => l.Item == LabelItem.N))
        {
            fractions[(int)Nutrient.N] = forms.Total;
        }

        return (LabelAnalysis.FromArray(fractions), [.. typed]);
    }

    private static void Nitrogen(IReadOnlyList<LabelLine> lines, NitrogenForms forms, string field, List<Problem> problems)
    {
        var total = lines.FirstOrDefault(static l => l.Item == LabelItem.N)?.Percent;
        var sum = forms.Total * 100;
        if (total is null || sum <= 0 || Math.Abs(sum - total.Value) <= FormsRounding)
        {
            return;
        }

        problems.Add(sum > total
            ? new Problem($"{field}, N", FormattableString.Invariant($"The forms of nitrogen add up to {sum:0.##} %, more than the total of {total:0.##} %."),
                "Forms are parts of the total: check each figure.")
            : new Problem($"{field}, N", FormattableString.Invariant($"The forms of nitrogen add up to {sum:0.##} % of the total {total:0.##} %."),
                "The forms you typed are scaled up to the total; type the missing one if the label gives it.", Severity.Warning));
    }

    // Least mass the contents can have: phosphorus is always with oxygen, potassium may be a chloride and counts as the element.
    private static void Sum(LabelAnalysis label, string field, List<Problem> problems)
    {
        var primary = label.Percent(Nutrient.N) + label.Percent(Nutrient.P) + label.Percent(Nutrient.K);
        var all = primary - (label.Percent(Nutrient.K) * (1 - LabelBasis.PotassiumInK2O));
        for (var n = Nutrient.Ca; n <= Nutrient.Na; n++)
        {
            all += label.Percent(n);
        }

        var most = Math.Max(primary, all);
        if (most > 100 + PureLimit.Rounding)
        {
            problems.Add(new Problem(field, FormattableString.Invariant($"The contents add up to {most:0.#} % of the bag."), "Together they cannot pass 100 %: check each figure and its basis."));
        }
        else if (most <= 0)
        {
            problems.Add(new Problem(field, "Every figure on the label is zero.", "Type what the bag holds.", Severity.Warning));
        }
    }
}
