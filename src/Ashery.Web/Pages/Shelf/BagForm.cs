using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Shelf;

/// <summary>A bag as a form and back. The label is judged by the library; this only gathers its lines.</summary>
internal static class BagForm
{
    private const string Oxide = "oxide";
    private static readonly (string Field, LabelItem OnOxide, LabelItem OnElement)[] Main =
        [("n", LabelItem.N, LabelItem.N), ("p", LabelItem.P2O5, LabelItem.P), ("k", LabelItem.K2O, LabelItem.K)];

    /// <summary>The form for a new bag of a material, or of none that is known.</summary>
    public static Draft Fill(Material? material, string name) => Draft.With(
        ("name", material?.Name ?? name),
        ("basis", Oxide),
        ("kind", (material?.Kind ?? MaterialKind.Straight).ToString()),
        ("n", Percent(material, Nutrient.N)),
        ("p", Percent(material, Nutrient.P)),
        ("k", Percent(material, Nutrient.K)),
        ("more", material is null ? "" : More(material)),
        ("dissolves", material?.Dissolves == true ? "yes" : null));

    public static Draft Fill(Bag bag, Amounts amounts) => Fill(bag.Material, bag.Material.Name)
        .Set("stock", bag.Stock is { } stock ? amounts.FromGrams(stock.Grams) : "")
        .Set("size", bag.Size is { } size ? amounts.FromGrams(size.Grams) : "")
        .Set("price", bag.Price is { } price ? Figures.Number(price) : "")
        .Set("density", bag.Material.LiquidDensity is { } liquid ? Figures.Number(liquid) : bag.Material.BulkDensity is { } loose ? Figures.Number(loose.Typical) : "")
        .Set("liquid", bag.Material.IsLiquid ? "yes" : "");

    /// <summary>The bag, with notes on its label.</summary>
    /// <param name="typed">The form.</param>
    /// <param name="basis">Material of the catalogue; null for one it does not hold.</param>
    /// <param name="before">The bag as it was; null for a new one.</param>
    /// <param name="garden">For keys that are taken.</param>
    /// <param name="amounts">Units of the form.</param>
    public static Result<Bag> Read(Draft typed, Material? basis, Bag? before, Garden garden, Amounts amounts)
    {
        var read = new FieldReader(typed);
        var name = read.Text("name", "The name", 120);
        var lines = Lines(read, typed);
        var (stock, size, price) = (read.Optional("stock", 0, 1e6, "2.5"), read.Optional("size", 1e-4, 1e6, "5"), read.Optional("price", 0, 1e9, "7.50"));
        var density = read.Optional("density", 0.01, 5, "0.9");
        if (price is not null && size is null)
        {
            read.Add("size", "The size of the full bag is missing.", "A price means nothing without it.");
        }

        if (!read.Fine)
        {
            return Result.Fail<Bag>(read.Problems);
        }

        var material = basis is null
            ? Own(read, typed, name, lines, density, before, garden)
            : OfCatalogue(basis, name, lines, typed, before, garden);
        return material.Ok
            ? Result.Of(
                new Bag(
                    before?.Id ?? Ids.Free(name, "bag", garden.Shelf.Select(b => b.Id)),
                    material.Value,
                    stock is { } s ? new Mass(amounts.ToGrams(s)) : null,
                    price,
                    size is { } z ? new Mass(amounts.ToGrams(z)) : null),
                material.Problems)
            : Result.Fail<Bag>([.. material.Problems.Select(p => AtField(p, typed["basis"] != "element"))]);
    }

    /// <summary>Puts the library's problem with a label line beside the field it was typed in.</summary>
    private static Problem AtField(Problem problem, bool onOxide)
    {
        foreach (var (field, oxide, element) in Main)
        {
            if (problem.Field.EndsWith(", " + LabelItems.Symbol(onOxide ? oxide : element), StringComparison.Ordinal))
            {
                return problem with { Field = field };
            }
        }

        return problem with { Field = "more", Message = problem.Field is "label" ? problem.Message : $"{problem.Field}: {problem.Message}" };
    }

    private static List<LabelLine> Lines(FieldReader read, Draft typed)
    {
        var lines = new List<LabelLine>();
        foreach (var (field, oxide, element) in Main)
        {
            if (read.Optional(field, -1e9, 1e9, "12.5") is { } percent)
            {
                lines.Add(new LabelLine(typed["basis"] == "element" ? element : oxide, percent));
            }
        }

        if (typed.Has("more"))
        {
            var more = LabelReader.Parse(typed["more"], "more");
            read.AddRange(more.Problems.Select(p => p with { Field = "more" }));
            lines.AddRange(more.Ok ? more.Value : []);
        }

        if (lines.Count == 0 && read.Fine)
        {
            read.Add("n", "The label is empty.", "Write at least one figure, such as N 21.");
        }

        return lines;
    }

    private static Result<Material> OfCatalogue(Material basis, string name, List<LabelLine> lines, Draft typed, Bag? before, Garden garden)
    {
        // The catalogue's own label, left as it was filled in, is the catalogue's material and keeps its ranges.
        var shown = Fill(basis, name);
        if (Main.All(f => typed[f.Field] == shown[f.Field]) && typed["more"] == shown["more"] && typed["basis"] != "element")
        {
            return Result.Of(basis with { Name = name });
        }

        var taken = garden.Shelf.Where(b => b.Id != before?.Id).Select(b => b.Material.Id).ToList();
        return OwnBag.Of(basis, lines, taken.Contains(basis.Id) ? Ids.Free(basis.Id, "bag", taken) : basis.Id, name);
    }

    private static Result<Material> Own(FieldReader read, Draft typed, string name, List<LabelLine> lines, double? density, Bag? before, Garden garden)
    {
        var isLiquid = typed.Has("liquid");
        var taken = garden.Shelf.Where(b => b.Id != before?.Id).Select(b => b.Material.Id).Concat(MaterialCatalogue.Default.All.Select(m => m.Id));
        return OwnBag.Compound(
            before?.Material.Id ?? Ids.Free(name, "own-bag", taken),
            name,
            read.Choice("kind", MaterialKind.Straight),
            lines,
            typed.Has("dissolves"),
            isLiquid || density is null ? null : Spread.Exactly(density.Value),
            isLiquid ? density ?? 1 : null);
    }

    private static string Percent(Material? material, Nutrient n) => material is null ? "" : Figures.Number(Math.Round(material.Label.Percent(n), 3));

    private static string More(Material material)
    {
        var forms = material.Nitrogen;
        var lines = new (string Word, double Fraction)[]
        {
            ("NH4-N", forms.Ammonium), ("NO3-N", forms.Nitrate), ("urea-N", forms.Urea), ("organic-N", forms.Organic), ("slow-N", forms.SlowSynthetic),
        }.Where(f => f.Fraction > 0).Select(f => $"{f.Word} {Figures.Number(Math.Round(f.Fraction * 100, 3))}");
        var others = material.Label.Present.Where(n => n > Nutrient.K).Select(n => $"{LabelBasis.Symbol(n)} {Figures.Number(Math.Round(material.Label.Percent(n), 4))}");
        return string.Join("; ", lines.Concat(others));
    }
}
