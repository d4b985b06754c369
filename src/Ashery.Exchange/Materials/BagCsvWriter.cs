using System.Globalization;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using CsvHelper;

namespace Ashery.Exchange.Materials;

/// <summary>Writes bags, and the catalogue as bags, to CSV. A name that a spreadsheet would run as a formula is written as text.</summary>
internal static class BagCsvWriter
{
    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with { Injection = CsvInjection.Escape };

    public static void Write(TextWriter writer, IEnumerable<Bag> bags)
    {
        using var csv = CsvWriter.Create(writer, Options, leaveOpen: true);
        foreach (var column in BagColumns.All)
        {
            csv.WriteField(column);
        }

        csv.EndRecord();
        foreach (var bag in bags)
        {
            Row(csv, bag);
        }
    }

    private static void Row(CsvWriter csv, Bag bag)
    {
        var m = bag.Material;
        var known = MaterialCatalogue.Default.Find(m.Id) is not null;
        csv.WriteField(bag.Id);
        csv.WriteField(known ? m.Id : string.Empty);
        csv.WriteField(m.Name);
        csv.WriteField(Word(m.Kind));
        foreach (var item in BagColumns.Items)
        {
            csv.WriteField(Percent(Fraction(m, item)));
        }

        csv.WriteField(Number(m.BulkDensity?.Typical));
        csv.WriteField(Number(m.LiquidDensity));
        csv.WriteField(m.Dissolves ? "yes" : "no");
        csv.WriteField(Number(m.SaltIndex?.Value));
        csv.WriteField(Number(m.LimeEquivalent?.Value));
        csv.WriteField(Grams(bag.Stock?.Grams));
        csv.WriteField(Grams(bag.Size?.Grams));
        csv.WriteField(Number(bag.Price));
        csv.EndRecord();
    }

    private static double Fraction(Material m, LabelItem item) => item switch
    {
        LabelItem.AmmoniumN => m.Nitrogen.Ammonium,
        LabelItem.NitrateN => m.Nitrogen.Nitrate,
        LabelItem.UreaN => m.Nitrogen.Urea,
        LabelItem.OrganicN => m.Nitrogen.Organic,
        LabelItem.SlowN => m.Nitrogen.SlowSynthetic,
        _ => m.Label[LabelItems.NutrientOf(item)],
    };

    private static string Percent(double fraction) => fraction > 0 ? Number(fraction * 100) : string.Empty;

    // Twelve significant digits take off what a factor of a hundred leaves in the last places.
    private static string Number(double? value) => value is { } v ? double.Parse(v.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).ToString("R", CultureInfo.InvariantCulture) : string.Empty;

    private static string Grams(double? grams) => grams is { } g ? Number(g) + " g" : string.Empty;

    private static string Word(MaterialKind kind)
    {
        var name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
