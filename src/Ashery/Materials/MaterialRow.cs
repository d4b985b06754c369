using System.Globalization;
using System.Text.Json;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Sources;
using static Ashery.Materials.RowJson;

namespace Ashery.Materials;

/// <summary>Turns a row of data/materials into a <see cref="Material"/>. A row that cannot be read is our own mistake and throws.</summary>
internal static class MaterialRow
{
    public static Material Read(JsonElement row)
    {
        var label = Label(row, out var spread, out var provenance, out var source);
        var nitrogen = Nitrogen(row);
        var pure = row.TryGetProperty("pure", out var p) ? Percents(p) : null;
        var formula = Text(row, "formula");
        var molarMass = Number(row, "molarMass");
        var ions = Ions(row);
        var dissolves = row.GetProperty("dissolves").GetBoolean();
        return new Material
        {
            Id = Text(row, "id")!,
            Name = Text(row, "name")!,
            OtherNames = Texts(row, "otherNames"),
            Kind = MaterialWords.Kind(Text(row, "kind")!),
            IsLiquid = Flag(row, "liquid"),
            Formula = formula,
            MolarMass = molarMass,
            Cas = Text(row, "cas"),
            Label = label,
            LabelSpread = spread,
            Pure = pure,
            PureIsLimit = !row.TryGetProperty("pureIsLimit", out var limit) || limit.GetBoolean(),
            TechnicalGrade = Text(row, "technicalGrade"),
            Nitrogen = nitrogen,
            BulkDensity = Density(row),
            LiquidDensity = row.TryGetProperty("liquidDensity", out var d) ? Number(d, "value") : null,
            SaltIndex = Chosen(row, "saltIndex"),
            LimeEquivalent = Chosen(row, "limeEquivalent") ?? Rule(row, label),
            CriticalRelativeHumidity = Chosen(row, "criticalHumidity"),
            Solubility = Solubility(row, formula),
            OsmolesPerKg = dissolves || Flag(row, "osmotic") ? Osmotic(row, molarMass, label, pure, nitrogen, ions) : null,
            CarbonToNitrogen = row.TryGetProperty("carbonToNitrogen", out var cn) ? Number(cn, "typical") : null,
            Moisture = row.TryGetProperty("moisture", out var m) ? Number(m, "typical") ?? 0 : 0,
            Hazards = Hazards(row),
            HazardWords = Texts(row, "hazardWords"),
            CompatibilityGroup = Text(row, "group")!,
            Ions = ions,
            Dissolves = dissolves,
            Notes = Texts(row, "notes"),
            Regulations = Texts(row, "regulations"),
            SourceId = source,
            Provenance = provenance,
        };
    }

    private static HazardSet Hazards(JsonElement row)
    {
        var hazards = HazardSet.None;
        foreach (var word in Texts(row, "hazards"))
        {
            hazards = hazards.With(MaterialWords.Hazard(word));
        }

        return hazards;
    }

    // The analysis in use is the typical column. Its source is that of the row's first nutrient, and its provenance the weakest of all.
    private static LabelAnalysis Label(JsonElement row, out NutrientSpreads spread, out Provenance weakest, out string source)
    {
        var fractions = new double[Analysis.Count];
        spread = new NutrientSpreads();
        weakest = Sources.Provenance.Seen;
        source = "stoich";
        foreach (var item in row.GetProperty("label").EnumerateObject())
        {
            var nutrient = MaterialWords.Nutrient(item.Name);
            var typical = Number(item.Value, "typical") ?? 0;
            fractions[(int)nutrient] = typical / 100;
            var (min, max) = (Number(item.Value, "min"), Number(item.Value, "max"));
            if (min is not null && max is not null)
            {
                spread.Set(nutrient, new Spread(min.Value / 100, typical / 100, max.Value / 100));
            }

            if (spread.Count <= 1 && source == "stoich")
            {
                source = Text(item.Value, "source")!;
            }

            weakest = (Provenance)Math.Min((int)weakest, (int)How(item.Value));
        }

        if (source == "stoich")
        {
            weakest = Sources.Provenance.Computed;
        }

        return LabelAnalysis.FromArray(fractions);
    }

    private static NitrogenForms Nitrogen(JsonElement row)
    {
        if (!row.TryGetProperty("nitrogen", out var forms))
        {
            return default;
        }

        double Form(string key) => forms.TryGetProperty(key, out var f) ? (Number(f, "typical") ?? 0) / 100 : 0;
        return new NitrogenForms(Form("ammonium"), Form("nitrate"), Form("urea"), Form("organic"), Form("slowSynthetic"));
    }

    private static LabelAnalysis Percents(JsonElement table)
    {
        var fractions = new double[Analysis.Count];
        foreach (var item in table.EnumerateObject())
        {
            fractions[(int)MaterialWords.Nutrient(item.Name)] = item.Value.GetDouble() / 100;
        }

        return LabelAnalysis.FromArray(fractions);
    }

    private static Spread? Density(JsonElement row)
    {
        if (!row.TryGetProperty("bulkDensity", out var list))
        {
            return null;
        }

        var first = list[0];
        var typical = Number(first, "typical")!.Value;
        return new Spread(Number(first, "min") ?? typical, typical, Number(first, "max") ?? typical);
    }

    // The first row of a list is the one in use; what others print goes into its note.
    private static Figure? Chosen(JsonElement row, string key)
    {
        if (!row.TryGetProperty(key, out var list) || list.GetArrayLength() == 0 || Flag(list[0], "other"))
        {
            return null;
        }

        var first = list[0];
        var value = Number(first, "value")!.Value;
        var note = Text(first, "note");
        for (var i = 1; i < list.GetArrayLength(); i++)
        {
            var other = list[i];
            if (Number(other, "value") is { } differs && Math.Abs(differs - value) > 1e-9)
            {
                var also = FormattableString.Invariant($"{differs} in {Text(other, "source")}");
                note = note is null ? also : $"{note}; {also}";
            }
        }

        return new Figure(value, Text(first, "source")!, How(first), note);
    }

    // Moist composts hold lime and other bases that the label does not name: the rule would call them acid, so they stay unknown.
    private static Figure? Rule(JsonElement row, LabelAnalysis label) =>
        string.Equals(Text(row, "group"), "BULK", StringComparison.Ordinal) && label[Nutrient.Ca] <= 0
            ? null
            : new Figure(Math.Round(PierreRule.LimeEquivalent(label), 4), "pierre1933", Sources.Provenance.Computed, "Pierre's rule on the label's analysis");

    private static HashSet<string> Ions(JsonElement row)
    {
        var ions = new HashSet<string>(Texts(row, "ions"), StringComparer.Ordinal);
        if (row.TryGetProperty("inWater", out var parts))
        {
            foreach (var part in parts.EnumerateObject())
            {
                ions.Add(part.Name);
            }
        }

        return ions;
    }

    private static double? Osmotic(
        JsonElement row, double? molarMass, LabelAnalysis label, LabelAnalysis? pure, NitrogenForms nitrogen, HashSet<string> ions)
    {
        if (molarMass is null || !row.TryGetProperty("inWater", out var parts))
        {
            return Osmoles.FromLabel(label, nitrogen, ions);
        }

        var particles = 0.0;
        foreach (var part in parts.EnumerateObject())
        {
            particles += part.Value.GetDouble();
        }

        return Osmoles.PerKg(particles, molarMass.Value, pure is null ? 1 : Purity.Of(label, pure));
    }

    private static SolubilityPoint[] Solubility(JsonElement row, string? formula)
    {
        if (!row.TryGetProperty("solubility", out var list))
        {
            return [];
        }

        var first = list[0];
        var species = Text(first, "species")!;
        var form = species == "as sold" || formula is null ? 1 : Hydrate.FormInProduct(species, formula);
        var at = first.GetProperty("at");
        var points = new SolubilityPoint[at.GetPropertyCount()];
        var count = 0;
        foreach (var point in at.EnumerateObject())
        {
            if (Hydrate.Convert(point.Value.GetDouble(), form) is { } grams)
            {
                points[count++] = new SolubilityPoint(double.Parse(point.Name, CultureInfo.InvariantCulture), grams);
            }
        }

        return points.Length == count ? points : points[..count];
    }
}
