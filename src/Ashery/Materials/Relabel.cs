using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>Puts another analysis on a material and carries along what hangs on it.</summary>
internal static class Relabel
{
    /// <summary>
    /// The material with the given nutrients replaced. Nitrogen forms as typed, or in the proportions they had. Salt index follows the strength;
    /// lime equivalent moves by the difference Pierre's rule sees between the labels; osmoles by that of the ions on them.
    /// </summary>
    public static Material Apply(
        Material basis, LabelAnalysis typed, Nutrient[] replaced, NitrogenForms? forms, string field, out List<Problem> notes)
    {
        notes = [];
        // An array of flags and no Contains: what is generic over an enum is compiled anew in every process.
        var isReplaced = new bool[Analysis.Count];
        foreach (var n in replaced)
        {
            isReplaced[(int)n] = true;
        }

        var fractions = new double[Analysis.Count];
        var spreads = new NutrientSpreads();
        for (var n = Nutrient.N; n <= Nutrient.Na; n++)
        {
            fractions[(int)n] = isReplaced[(int)n] ? typed[n] : basis.Label[n];
            if (!isReplaced[(int)n] && basis.LabelSpread.TryGetValue(n, out var spread))
            {
                spreads.Set(n, spread);
            }
        }

        var label = LabelAnalysis.FromArray(fractions);
        var nitrogen = forms ?? Forms(basis, label[Nutrient.N], field, notes);
        return basis with
        {
            Label = label,
            LabelSpread = spreads,
            Nitrogen = nitrogen,
            SaltIndex = Scaled(basis.SaltIndex, Strength(label), Strength(basis.Label)),
            LimeEquivalent = Moved(basis.LimeEquivalent, PierreRule.LimeEquivalent(label) - PierreRule.LimeEquivalent(basis.Label)),
            OsmolesPerKg = Osmotic(basis, label, nitrogen),
            SourceId = "label",
            Provenance = Provenance.Seen,
        };
    }

    /// <summary>What stays as the catalogue has it, said so that the grower can object.</summary>
    public static Problem Kept(Material material)
    {
        var kept = new List<string>();
        foreach (var n in material.Label.Present)
        {
            if (n is not (Nutrient.N or Nutrient.P or Nutrient.K))
            {
                kept.Add(FormattableString.Invariant($"{LabelBasis.Symbol(n)} {material.Label.Percent(n):0.##} %"));
            }
        }

        if (material.BulkDensity is { } density)
        {
            kept.Add(FormattableString.Invariant($"bulk density {density.Typical:0.##} g/mL"));
        }

        if (material.LiquidDensity is { } liquid)
        {
            kept.Add(FormattableString.Invariant($"density {liquid:0.##} g/mL"));
        }

        if (material.Solubility.Count > 0)
        {
            kept.Add("solubility");
        }

        return new Problem(
            material.Id,
            kept.Count == 0 ? "keeps nothing but its kind and hazards from the catalogue." : $"kept from the catalogue: {string.Join(", ", kept)}.",
            "Add the bag with its whole label where these differ.",
            Severity.Note);
    }

    private static NitrogenForms Forms(Material basis, double total, string field, List<Problem> notes)
    {
        if (basis.Nitrogen.Total > 0 || total <= 0)
        {
            return basis.Nitrogen.WithTotal(total);
        }

        notes.Add(new Problem(field, "the catalogue knows no form of its nitrogen.",
            basis.IsOrganic ? "It is reckoned as organic; type the forms if the label gives them." : "It is reckoned as ammonium; type the forms if the label gives them.",
            Severity.Warning));
        return basis.IsOrganic ? new NitrogenForms(0, 0, 0, total, 0) : new NitrogenForms(total, 0, 0, 0, 0);
    }

    private static double Strength(LabelAnalysis label) => label[Nutrient.N] + label[Nutrient.P] + label[Nutrient.K];

    private static Figure? Scaled(Figure? figure, double now, double before)
    {
        if (figure is null || before <= 0 || Math.Abs(now - before) < 1e-12)
        {
            return figure;
        }

        return new Figure(figure.Value * now / before, figure.SourceId, Provenance.Computed,
            FormattableString.Invariant($"{figure.Value} scaled by strength to the label"));
    }

    private static Figure? Moved(Figure? figure, double by) => figure is null || Math.Abs(by) < 1e-9
        ? figure
        : new Figure(figure.Value + by, figure.SourceId, Provenance.Computed,
            FormattableString.Invariant($"{figure.Value} moved to the label by Pierre's rule"));

    private static double? Osmotic(Material basis, LabelAnalysis label, NitrogenForms nitrogen)
    {
        var before = Osmoles.FromLabel(basis.Label, basis.Nitrogen, basis.Ions);
        return before > 0 ? basis.OsmolesPerKg * Osmoles.FromLabel(label, nitrogen, basis.Ions) / before : basis.OsmolesPerKg;
    }
}
