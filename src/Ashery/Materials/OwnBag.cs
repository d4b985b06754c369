using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Sources;

namespace Ashery.Materials;

/// <summary>Makes a material of a grower's own bag from what its label says.</summary>
public static class OwnBag
{
    /// <summary>Group of bags that no chart knows: judged by the ions they send into solution alone.</summary>
    public const string CompoundGroup = "OWN";

    private const int LongestId = 80;

    /// <summary>A bag of a catalogue material with its own label; what the label does not name is kept from the catalogue.</summary>
    public static Result<Material> Of(Material basis, IReadOnlyList<LabelLine> lines, string? id = null, string? name = null, string field = "label")
    {
        var check = LabelCheck.Check(lines, basis, field);
        if (!check.Ok)
        {
            return Result.Fail<Material>(check.Problems);
        }

        var label = check.Value;
        if (SaysTheSame(label, basis))
        {
            return Result.Of(basis with { Id = id ?? basis.Id, Name = name ?? basis.Name }, check.Problems);
        }

        var total = label.Label[Nutrient.N];
        var material = Relabel.Apply(basis, label.Label, [.. label.Typed], label.Nitrogen?.WithTotal(total), field, out var notes);
        return Result.Of(material with { Id = id ?? basis.Id, Name = name ?? basis.Name }, [.. check.Problems, .. notes, Relabel.Kept(basis)]);
    }

    /// <summary>
    /// A bag of something the catalogue does not hold: a compound, or a product of no known salt. Salt index and critical humidity stay
    /// unknown; the lime equivalent is Pierre's rule on the label; the hazards are those its nutrients can bring.
    /// </summary>
    public static Result<Material> Compound(
        string id, string name, MaterialKind kind, IReadOnlyList<LabelLine> lines, bool dissolves, Spread? bulkDensity = null, double? liquidDensity = null,
        string field = "label")
    {
        if (IdProblem(id) is { } wrong)
        {
            return Result.Fail<Material>(wrong);
        }

        var check = LabelCheck.Check(lines, basis: null, field);
        if (!check.Ok)
        {
            return Result.Fail<Material>(check.Problems);
        }

        var problems = new List<Problem>(check.Problems);
        var label = check.Value.Label;
        var isOrganic = kind is MaterialKind.OrganicMeal or MaterialKind.BulkyOrganic;
        var nitrogen = check.Value.Nitrogen?.WithTotal(label[Nutrient.N]) ?? Guess(label[Nutrient.N], isOrganic, field, problems);
        var ions = Ions(label, nitrogen);
        return Result.Of(
            new Material
            {
                Id = id,
                Name = name,
                Kind = kind,
                IsLiquid = liquidDensity is not null,
                Label = label,
                Nitrogen = nitrogen,
                BulkDensity = bulkDensity,
                LiquidDensity = liquidDensity,
                LimeEquivalent = new Figure(PierreRule.LimeEquivalent(label), "pierre1933", Provenance.Computed, "Pierre's rule on the typed label"),
                OsmolesPerKg = dissolves ? Osmoles.FromLabel(label, nitrogen, ions) : null,
                Hazards = HazardsOf(nitrogen, isOrganic),
                CompatibilityGroup = kind switch { MaterialKind.OrganicMeal => "ORG", MaterialKind.BulkyOrganic => "BULK", _ => CompoundGroup },
                Ions = ions,
                Dissolves = dissolves,
                SourceId = "label",
                Provenance = Provenance.Seen,
            },
            problems);
    }

    /// <summary>The whole label of a bag put on a catalogue material, unchecked: for a garden that was checked when it was made.</summary>
    public static Material WithLabel(Material basis, LabelAnalysis label) => Relabel.Apply(basis, label, Enum.GetValues<Nutrient>(), forms: null, "label", out _);

    /// <summary>True when a material is this catalogue material with no more than another label and name.</summary>
    public static bool IsRelabelled(Material material, Material basis) => basis == material with
    {
        Name = basis.Name,
        Label = basis.Label,
        LabelSpread = basis.LabelSpread,
        Nitrogen = basis.Nitrogen,
        SaltIndex = basis.SaltIndex,
        LimeEquivalent = basis.LimeEquivalent,
        OsmolesPerKg = basis.OsmolesPerKg,
        SourceId = basis.SourceId,
        Provenance = basis.Provenance,
    };

    /// <summary>What is wrong with an id, or null: lower-case letters and digits joined by hyphens.</summary>
    public static Problem? IdProblem(string id)
    {
        var good = id.Length is > 0 and <= LongestId && id[0] != '-' && id[^1] != '-';
        foreach (var c in id)
        {
            good &= char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-';
        }

        return good ? null : new Problem("id", $"'{NumberReader.Shown(id)}' cannot be an id.", "Use lower-case letters and digits joined by hyphens, such as my-rose-feed.");
    }

    private static bool SaysTheSame(CheckedLabel label, Material basis)
    {
        const double Dust = 1e-9;
        foreach (var n in label.Typed)
        {
            if (Math.Abs(label.Label[n] - basis.Label[n]) > Dust)
            {
                return false;
            }
        }

        return label.Nitrogen is not { } forms
            || (Math.Abs(forms.Ammonium - basis.Nitrogen.Ammonium) < Dust && Math.Abs(forms.Nitrate - basis.Nitrogen.Nitrate) < Dust
                && Math.Abs(forms.Urea - basis.Nitrogen.Urea) < Dust && Math.Abs(forms.Organic - basis.Nitrogen.Organic) < Dust
                && Math.Abs(forms.SlowSynthetic - basis.Nitrogen.SlowSynthetic) < Dust);
    }

    private static NitrogenForms Guess(double total, bool isOrganic, string field, List<Problem> problems)
    {
        if (total <= 0)
        {
            return default;
        }

        problems.Add(new Problem($"{field}, N", "The label gives no forms of nitrogen.",
            isOrganic ? "It is reckoned as organic nitrogen." : "It is reckoned as ammonium, the more acidifying case; type NH4-N, NO3-N and urea-N if the label gives them.",
            Severity.Warning));
        return isOrganic ? new NitrogenForms(0, 0, 0, total, 0) : new NitrogenForms(total, 0, 0, 0, 0);
    }

    private static HashSet<string> Ions(LabelAnalysis label, NitrogenForms nitrogen)
    {
        var ions = new HashSet<string>(StringComparer.Ordinal);
        Add(nitrogen.Ammonium, "ammonium");
        Add(nitrogen.Nitrate, "nitrate");
        Add(nitrogen.Urea, "urea");
        Add(label[Nutrient.P], "phosphate");
        Add(label[Nutrient.K], "potassium");
        Add(label[Nutrient.Ca], "calcium");
        Add(label[Nutrient.Mg], "magnesium");
        Add(label[Nutrient.S], "sulfate");
        Add(label[Nutrient.Cl], "chloride");
        Add(label[Nutrient.Na], "sodium");
        Add(label[Nutrient.Fe], "iron");
        Add(label[Nutrient.Mn], "manganese");
        Add(label[Nutrient.Zn], "zinc");
        Add(label[Nutrient.Cu], "copper");
        Add(label[Nutrient.B], "borate");
        Add(label[Nutrient.Mo], "molybdate");
        return ions;

        void Add(double content, string ion)
        {
            if (content > 0)
            {
                ions.Add(ion);
            }
        }
    }

    private static HazardSet HazardsOf(NitrogenForms nitrogen, bool isOrganic)
    {
        var hazards = isOrganic ? HazardSet.None.With(Hazard.OrganicFuel).With(Hazard.Dust) : HazardSet.None;
        hazards = nitrogen.Nitrate > 0 ? hazards.With(Hazard.Oxidiser) : hazards;
        return nitrogen.Ammonium > 0 ? hazards.With(Hazard.AmmoniaWithAlkali) : hazards;
    }
}
