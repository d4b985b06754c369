using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Can;

/// <summary>The form of the can, which lives in the address, as a request to the library.</summary>
internal sealed class CanDesk(Garden garden)
{
    /// <summary>Most rows of materials.</summary>
    public const int MostRows = 12;

    // What the catalogue has for a can, found once: half of it is organic meals and lime.
    private static readonly Lazy<IReadOnlyList<Material>> Dissolving = new(static () =>
        [.. MaterialCatalogue.Default.All.Where(static m => MaterialInWater.Of(m).Ok).OrderBy(static m => m.Name, StringComparer.OrdinalIgnoreCase)]);

    /// <summary>What the form shows before anything was asked.</summary>
    public Draft Beginning()
    {
        var feed = garden.Feeds.FirstOrDefault(f => f.Dissolves)?.Id;
        var draft = Draft.With(
            ("water", WaterChoice.Usual(garden)), ("crop", MostGrown()), ("celsius", Figures.Number(new Amounts(garden.Settings.UsUnits).FromCelsius(20))), ("air", "closed"));
        return feed is null ? draft.Set("m", "potassium-nitrate", "mkp").Set("g", "0.6", "0.2") : draft.Set("feed", feed).Set("strength", "1 g/L");
    }

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public Draft Complete(Draft typed)
    {
        foreach (var (name, usual) in new[] { ("water", WaterChoice.Usual(garden)), ("celsius", Figures.Number(new Amounts(garden.Settings.UsUnits).FromCelsius(20))), ("air", "closed") })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, usual);
        }

        return typed;
    }

    public string? MostGrown() => garden.Pots.GroupBy(p => p.CropId).OrderByDescending(g => g.Sum(p => p.Count)).Select(g => g.Key).FirstOrDefault();

    /// <summary>Bags first, then what the catalogue has for a can.</summary>
    public IReadOnlyList<(string Value, string Text)> Materials()
    {
        var bags = garden.Shelf.Where(b => MaterialInWater.OfBag(b.Material).Ok).ToList();
        return
        [
            .. bags.Select(b => (b.Id, $"My bag: {b.Material.Name}")),
            .. Dissolving.Value.Where(m => bags.TrueForAll(b => b.Id != m.Id)).Select(m => (m.Id, m.Name)),
        ];
    }

    /// <summary>The request; problems at the fields <c>water</c>, <c>m0</c>, <c>g0</c>, <c>feed</c>, <c>strength</c>, <c>celsius</c>.</summary>
    public Result<CanRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var water = WaterChoice.Find(garden, typed.Has("water") ? typed["water"] : WaterChoice.Usual(garden));
        read.AddRange(water.Problems.Where(static p => p.Severity == Severity.Error));
        var amounts = new Amounts(garden.Settings.UsUnits);
        var celsius = amounts.ToCelsius(read.Optional("celsius", amounts.FromCelsius(Speciation.Coldest), amounts.FromCelsius(Speciation.Warmest), "18") ?? amounts.FromCelsius(20));
        var parts = typed.Has("feed") ? OfFeed(read, typed) : OfRows(read, typed);
        if (read.Fine && parts.Count == 0)
        {
            read.Add("m0", "Nothing is in the can yet.", "Choose a material and write its grams in a litre.");
        }

        parts = Strength(read, typed, parts);

        return read.Fine && water.Ok
            ? Result.Of(CanRequest.In(water.Value, parts, celsius, typed["air"] == "open" ? Air.Open : Air.Closed), read.Problems)
            : Result.Fail<CanRequest>(read.Problems);
    }

    /// <summary>Which field of the form a problem of the library belongs to.</summary>
    public static Problem AtField(Problem problem) => problem.Field.StartsWith("add", StringComparison.Ordinal) ? problem with { Field = "m0" } : problem;

    public static Crop? Crop(Draft typed) => CropCatalogue.Default.Find(typed["crop"]);

    private List<CanAddition> OfRows(FieldReader read, Draft typed)
    {
        var additions = new List<CanAddition>();
        var names = typed.All("m");
        var grams = typed.All("g");
        for (var i = 0; i < Math.Min(MostRows, Math.Max(names.Count, grams.Count)); i++)
        {
            var name = i < names.Count ? names[i] : "";
            var figure = i < grams.Count ? grams[i] : "";
            var row = Figures.Number(i);
            if (name.Length == 0 && figure.Length == 0)
            {
                continue;
            }

            if (name.Length == 0)
            {
                read.Add("m" + row, "A material is missing.", "Choose one, or empty its grams.");
                continue;
            }

            // A row that is being written: the others still count.
            if (figure.Length == 0)
            {
                read.AddRange([new Problem("m" + row, "Its grams are missing.", "Write them to have it counted.", Severity.Note)]);
                continue;
            }

            var amount = Quantities.NumberReader.Positive(figure, "g" + row, CanMaker.MostGrams, "0.5");
            read.AddRange(amount.Problems);
            if (Material(read, name, "m" + row) is { } material && amount.Ok)
            {
                if (additions.Exists(a => a.Material.Id == material.Id))
                {
                    read.Add("m" + row, $"{material.Name} is named twice.", "Name it once with the grams added up.");
                }

                additions.Add(new(material, amount.Value));
            }
        }

        return additions;
    }

    private IReadOnlyList<CanAddition> OfFeed(FieldReader read, Draft typed)
    {
        if (garden.Feeds.FirstOrDefault(f => f.Id == typed["feed"]) is not { } feed)
        {
            read.Add("feed", "That feed is not kept any more.", "Choose another, or materials.");
            return [];
        }

        var parts = GardenCan.Parts(garden, feed);
        read.AddRange(parts.Ok ? [] : parts.Problems.Select(static p => p with { Field = "feed" }));
        return parts.Ok ? parts.Value : [];
    }

    private static IReadOnlyList<CanAddition> Strength(FieldReader read, Draft typed, IReadOnlyList<CanAddition> parts)
    {
        var text = typed["strength"];
        if (text.Length == 0 && !typed.Has("feed"))
        {
            return parts;
        }

        text = text.Length == 0 ? "1 g/L" : text;
        if (typed.Has("feed") && text.StartsWith("1:", StringComparison.Ordinal))
        {
            read.Add("strength", "An injector needs the grams of its stock.", "Write what leaves it, as 1 g/L, or choose materials with the grams of the stock.");
            return parts;
        }

        // Read even where a row is wrong, so that everything wrong is told at once.
        var wanted = CanWords.Strength(text, parts.Sum(static p => p.Grams));
        if (wanted.Ok && !read.Fine)
        {
            return parts;
        }

        var scaled = wanted.Ok ? wanted.Value.Apply(parts) : Result.Fail<IReadOnlyList<CanAddition>>(wanted.Problems);
        read.AddRange(scaled.Problems.Where(static p => p.Severity == Severity.Error));
        return scaled.Ok ? scaled.Value : parts;
    }

    private MaterialInWater? Material(FieldReader read, string id, string field)
    {
        var made = GardenCan.Material(garden, id);
        read.AddRange(made.Ok ? [] : made.Problems.Select(p => p with { Field = field }));
        return made.Value;
    }
}
