using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Quantities;
using Ashery.Records.Rows;
using Ashery.Sources;

namespace Ashery.Records.Mapping;

/// <summary>A bag as rows and back.</summary>
internal static class BagMapping
{
    private const string SaltIndex = "saltIndex";
    private const string LimeEquivalent = "limeEquivalent";
    private const string CriticalHumidity = "criticalRelativeHumidity";
    private const string OtherNames = "otherName";
    private const string Hazards = "hazard";
    private const string HazardWords = "hazardWords";
    private const string Ions = "ion";
    private const string Notes = "note";
    private const string Regulations = "regulation";

    public static BagRow ToRow(Bag bag, int position)
    {
        var m = bag.Material;
        var row = new BagRow
        {
            Position = position,
            BagId = bag.Id,
            StockGrams = bag.Stock?.Grams,
            Price = bag.Price,
            SizeGrams = bag.Size?.Grams,
            MaterialId = m.Id,
            MaterialName = m.Name,
            Kind = m.Kind.ToString(),
            IsLiquid = m.IsLiquid,
            Formula = m.Formula,
            MolarMass = m.MolarMass,
            HasPure = m.Pure is not null,
            PureIsLimit = m.PureIsLimit,
            Cas = m.Cas,
            TechnicalGrade = m.TechnicalGrade,
            NitrogenAmmonium = m.Nitrogen.Ammonium,
            NitrogenNitrate = m.Nitrogen.Nitrate,
            NitrogenUrea = m.Nitrogen.Urea,
            NitrogenOrganic = m.Nitrogen.Organic,
            NitrogenSlow = m.Nitrogen.SlowSynthetic,
            BulkDensityMin = m.BulkDensity?.Min,
            BulkDensityTypical = m.BulkDensity?.Typical,
            BulkDensityMax = m.BulkDensity?.Max,
            LiquidDensity = m.LiquidDensity,
            OsmolesPerKg = m.OsmolesPerKg,
            CarbonToNitrogen = m.CarbonToNitrogen,
            Moisture = m.Moisture,
            CompatibilityGroup = m.CompatibilityGroup,
            Dissolves = m.Dissolves,
            SourceId = m.SourceId,
            Provenance = m.Provenance.ToString(),
        };
        row.Contents.AddRange(Contents(m.Label, ofPure: false));
        row.Contents.AddRange(Contents(m.Pure, ofPure: true));
        row.Spreads.AddRange(m.LabelSpread.Select(s => new BagSpreadRow
        {
            Nutrient = s.Key.ToString(), Min = s.Value.Min, Typical = s.Value.Typical, Max = s.Value.Max,
        }));
        AddFigure(row, SaltIndex, m.SaltIndex);
        AddFigure(row, LimeEquivalent, m.LimeEquivalent);
        AddFigure(row, CriticalHumidity, m.CriticalRelativeHumidity);
        row.Solubility.AddRange(m.Solubility.Select((s, i) => new BagSolubilityRow
        {
            Position = i, Celsius = s.Celsius, GramsPerKgWater = s.GramsPerKgWater,
        }));
        AddWords(row, OtherNames, m.OtherNames);
        AddWords(row, Hazards, m.Hazards.Select(h => h.ToString()));
        AddWords(row, HazardWords, m.HazardWords);
        AddWords(row, Ions, m.Ions);
        AddWords(row, Notes, m.Notes);
        AddWords(row, Regulations, m.Regulations);
        return row;
    }

    public static Bag FromRow(BagRow row) => new(
        row.BagId,
        new Material
        {
            Id = row.MaterialId,
            Name = row.MaterialName,
            OtherNames = Words(row, OtherNames),
            Kind = Enum.Parse<MaterialKind>(row.Kind),
            IsLiquid = row.IsLiquid,
            Formula = row.Formula,
            MolarMass = row.MolarMass,
            Label = Analysis(row, ofPure: false),
            LabelSpread = row.Spreads.ToDictionary(s => Enum.Parse<Nutrient>(s.Nutrient), s => new Spread(s.Min, s.Typical, s.Max)),
            Pure = row.HasPure ? Analysis(row, ofPure: true) : null,
            PureIsLimit = row.PureIsLimit,
            Cas = row.Cas,
            TechnicalGrade = row.TechnicalGrade,
            Nitrogen = new NitrogenForms(
                row.NitrogenAmmonium, row.NitrogenNitrate, row.NitrogenUrea, row.NitrogenOrganic, row.NitrogenSlow),
            BulkDensity = row is { BulkDensityMin: { } min, BulkDensityTypical: { } typical, BulkDensityMax: { } max }
                ? new Spread(min, typical, max)
                : null,
            LiquidDensity = row.LiquidDensity,
            SaltIndex = Figure(row, SaltIndex),
            LimeEquivalent = Figure(row, LimeEquivalent),
            CriticalRelativeHumidity = Figure(row, CriticalHumidity),
            Solubility = [.. row.Solubility.OrderBy(s => s.Position).Select(s => new SolubilityPoint(s.Celsius, s.GramsPerKgWater))],
            OsmolesPerKg = row.OsmolesPerKg,
            CarbonToNitrogen = row.CarbonToNitrogen,
            Moisture = row.Moisture,
            Hazards = Words(row, Hazards).Select(Enum.Parse<Hazard>).ToHashSet(),
            HazardWords = Words(row, HazardWords),
            CompatibilityGroup = row.CompatibilityGroup,
            Ions = Words(row, Ions).ToHashSet(),
            Dissolves = row.Dissolves,
            Notes = Words(row, Notes),
            Regulations = Words(row, Regulations),
            SourceId = row.SourceId,
            Provenance = Enum.Parse<Provenance>(row.Provenance),
        },
        row.StockGrams is { } stock ? new Mass(stock) : null,
        row.Price,
        row.SizeGrams is { } size ? new Mass(size) : null);

    private static IEnumerable<BagContentRow> Contents(LabelAnalysis? analysis, bool ofPure) =>
        analysis?.Present.Select(n => new BagContentRow { OfPure = ofPure, Nutrient = n.ToString(), Fraction = analysis[n] }) ?? [];

    private static LabelAnalysis Analysis(BagRow row, bool ofPure) => new(
        row.Contents.Where(c => c.OfPure == ofPure).ToDictionary(c => Enum.Parse<Nutrient>(c.Nutrient), c => c.Fraction));

    private static void AddFigure(BagRow row, string which, Figure? figure)
    {
        if (figure is not null)
        {
            row.Figures.Add(new BagFigureRow
            {
                Which = which,
                Value = figure.Value,
                SourceId = figure.SourceId,
                Provenance = figure.Provenance.ToString(),
                Note = figure.Note,
            });
        }
    }

    private static Figure? Figure(BagRow row, string which) => row.Figures.Find(f => f.Which == which) is { } f
        ? new Figure(f.Value, f.SourceId, Enum.Parse<Provenance>(f.Provenance), f.Note)
        : null;

    private static void AddWords(BagRow row, string list, IEnumerable<string> words) =>
        row.Words.AddRange(words.Select((w, i) => new BagWordRow { List = list, Position = i, Text = w }));

    private static List<string> Words(BagRow row, string list) =>
        [.. row.Words.Where(w => w.List == list).OrderBy(w => w.Position).Select(w => w.Text)];
}
