using Ashery.Problems;

namespace Ashery.Materials;

/// <summary>Oxide and element taken for each other: the commonest slip in reading a foreign label.</summary>
internal static class LabelBases
{
    /// <summary>The same item twice, or both bases of a nutrient that do not agree.</summary>
    public static void Doubles(IReadOnlyList<LabelLine> lines, string field, List<Problem> problems)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (lines[i].Item == lines[j].Item)
                {
                    problems.Add(new Problem($"{field}, {LabelItems.Symbol(lines[i].Item)}", "It is given twice.", "Leave one of the two."));
                }
                else if (LabelItems.Twin(lines[i].Item) == lines[j].Item && Disagree(lines[i], lines[j]))
                {
                    problems.Add(new Problem(
                        $"{field}, {LabelItems.Symbol(lines[i].Item)}",
                        FormattableString.Invariant($"{lines[i].Percent:0.##} % {lines[i].Item} and {lines[j].Percent:0.##} % {lines[j].Item} are not the same content."),
                        FormattableString.Invariant($"{lines[j].Percent:0.##} % {lines[j].Item} is {InOther(lines[j]):0.##} % {lines[i].Item}: leave one of the two.")));
                }
            }
        }
    }

    /// <summary>A figure that fits this salt only if it was meant on the other basis: allowed, but asked about.</summary>
    public static void Confusions(IReadOnlyList<LabelLine> lines, Material basis, string field, List<Problem> problems)
    {
        foreach (var line in lines)
        {
            if (LabelItems.Twin(line.Item) is not { } twin || line.Percent <= 0)
            {
                continue;
            }

            var usual = basis.Label.Percent(LabelItems.NutrientOf(line.Item));
            var asTyped = line.Percent * LabelItems.ToLabelBasis(line.Item);
            var asTwin = line.Percent * LabelItems.ToLabelBasis(twin);
            var pure = basis.Pure?.Percent(LabelItems.NutrientOf(line.Item)) ?? double.PositiveInfinity;
            if (usual > 0 && IsFar(asTyped, usual) && asTwin <= pure + PureLimit.Rounding && (!IsFar(asTwin, usual) || !IsFar(asTwin, pure)))
            {
                problems.Add(new Problem(
                    $"{field}, {LabelItems.Symbol(line.Item)}",
                    FormattableString.Invariant($"{line.Percent:0.##} % {line.Item} is unusual for {basis.Name}; {line.Percent:0.##} % {twin} would be usual."),
                    $"If the bag prints {twin}, type it as {twin}.",
                    Severity.Warning));
            }
        }
    }

    // Three percent: oxide and element differ by 17 % (potassium) to 60 % (sulfur), grades of one salt by a few.
    private static bool IsFar(double a, double b) => Math.Abs(a - b) > 0.03 * b;

    private static bool Disagree(LabelLine a, LabelLine b)
    {
        var (x, y) = (a.Percent * LabelItems.ToLabelBasis(a.Item), b.Percent * LabelItems.ToLabelBasis(b.Item));
        return Math.Abs(x - y) > 0.1 + (0.01 * Math.Max(x, y));
    }

    private static double InOther(LabelLine line) =>
        line.Percent * LabelItems.ToLabelBasis(line.Item) / LabelItems.ToLabelBasis(LabelItems.Twin(line.Item)!.Value);
}
