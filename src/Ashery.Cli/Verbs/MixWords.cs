using Ashery.Cli.Frame;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Recipes;

namespace Ashery.Cli.Verbs;

/// <summary>The words of a mix: wish, materials, limits, batch and measuring. <c>mix</c> and <c>card</c> share them.</summary>
internal sealed class MixWords
{
    private static readonly string[] Ranks = ["typical", "percentile95"];
    private static readonly string[] LimitStarts =
        ["urea<=", "ammoniacal<=", "chloride<=", "salt-index<=", "acidity<=", "cost<=", "strength>=", "material ", "without ", "organic-only", "soluble-only", "use=dry-today", "use=dry-stored", "use=dissolved"];

    private readonly ValueOption ratio;
    private readonly ValueOption grade;
    private readonly ValueOption crop;
    private readonly ValueOption from;
    private readonly ValueOption price;
    private readonly ValueOption batch;
    private readonly ValueOption step;
    private readonly ValueOption scoop;
    private readonly ValueOption atMost;
    private readonly ValueOption best;
    private readonly ValueOption limit;
    private readonly ValueOption rank;
    private readonly ValueOption draws;
    private readonly ValueOption seed;
    private readonly List<Problem> notes = [];

    public MixWords(Verb verb)
    {
        ValueOption Add(ValueOption option)
        {
            verb.Command.Options.Add(option);
            return option;
        }

        ratio = Add(new ValueOption("--ratio", "N:P:K", "Wanted N : P2O5 : K2O, such as 3:1:2; more nutrients may follow by name"));
        grade = Add(new ValueOption("--grade", "N-P-K", "Percent of N, P2O5 and K2O to reach at least, such as 10-5-10"));
        crop = Add(new ValueOption("--crop", "ID", "The ratio of a crop of the catalogue") { Words = MixVerb.CropIds });
        from = Add(new ValueOption("--from", "A,B,...", "Materials to mix, each by its id, with another label as in urea=46-0-0") { Repeatable = true, Words = MixVerb.MaterialIds });
        price = Add(new ValueOption("--price", "ID=NUMBER", "Price a kg of a material of --from; may be repeated") { Repeatable = true });
        batch = Add(new ValueOption("--batch", "MASS", "Mass to mix: exactly 120g, or a window as 40g..60g"));
        step = Add(new ValueOption("--step", "MASS", "Weigh in whole steps of a scale, such as 1g"));
        scoop = Add(new ValueOption("--scoop", "VOLUME", "Measure in whole level scoops, such as 5mL, or a scoop of the garden by name"));
        atMost = Add(new ValueOption("--at-most", "NUMBER", "Most materials in a blend (4)"));
        best = Add(new ValueOption("--best", "NUMBER", "How many blends (20)"));
        limit = Add(new ValueOption("--limit", "LIMIT", "A limit, see above; may be repeated") { Repeatable = true, Words = static () => LimitStarts });
        rank = Add(new ValueOption("--rank", "HOW", "Order by the error of typical analyses, or of its 95th percentile over draws: typical, percentile95") { Words = static () => Ranks });
        draws = Add(new ValueOption("--draws", "NUMBER", "Draws over label ranges and scoop errors (0; 10000 with --rank percentile95)"));
        seed = Add(new ValueOption("--seed", "NUMBER", "Seed of the draws (1)"));
    }

    /// <summary>What was taken for granted while reading materials.</summary>
    public IReadOnlyList<Problem> Notes => notes;

    /// <summary>The garden that was loaded for its shelf or scoops; null when none was needed.</summary>
    public Garden? Garden { get; private set; }

    /// <summary>Null, with problems kept, when something is wrong.</summary>
    public MixRequest? Read(Given given, Terminal terminal, GardenSource source)
    {
        var wish = Wish(given);
        var limits = given.Take(LimitReader.Parse(given.Texts(limit)));
        var byPercentile = given.Word(rank, Ranks) == "percentile95";
        var window = Batch(given);
        if (!given.Has(from) || source.IsNamed(given) || NamesAScoop(given))
        {
            Garden = source.Load(given, terminal);
        }

        var offers = Offers(given, Garden);
        var measuring = Measure(given, Garden);
        var request = new
        {
            AtMost = given.Whole(atMost, usual: 4, least: 1, most: 8),
            Best = given.Whole(best, usual: 20, least: 1, most: 1000),
            Draws = given.Whole(draws, usual: byPercentile ? 10_000 : 0, least: 0, most: 1_000_000),
            Seed = given.Whole(seed, usual: 1, least: 0, most: int.MaxValue),
        };
        return given.Wrong || wish is null || limits is null ? null : new MixRequest
        {
            Wish = wish,
            Offers = offers,
            Limits = limits,
            Batch = window,
            Measuring = measuring,
            AtMost = request.AtMost,
            Best = request.Best,
            Draws = request.Draws,
            Seed = request.Seed,
            Rank = byPercentile ? RankBy.Percentile95 : RankBy.TypicalAnalysis,
        };
    }

    private Wish? Wish(Given given)
    {
        var wishes = new[] { ratio, grade, crop }.Where(given.Has).ToList();
        if (wishes.Count != 1)
        {
            given.Add(wishes.Count == 0
                ? new Problem("wish", "Nothing is wanted yet.", "Give --ratio 3:1:2, --grade 10-5-10 or --crop fuchsia.")
                : new Problem("wish", $"{string.Join(" and ", wishes.Select(static w => w.Name))} are given together.", "Give one of them."));
            return null;
        }

        if (given.Text(wishes[0]) is not { } text)
        {
            return null;
        }

        if (wishes[0] == crop)
        {
            return MaterialWords.Crop(given, "crop", text) is { } known ? WishReader.ForCrop(known) : null;
        }

        return given.Take(wishes[0] == ratio ? WishReader.ParseRatio(text) : WishReader.ParseGrade(text));
    }

    private List<Offer> Offers(Given given, Garden? garden)
    {
        if (!given.Has(from))
        {
            return garden is null ? [] : [.. garden.Shelf.Select(static bag => bag.ToOffer())];
        }

        var prices = Prices(given);
        var offers = new List<Offer>();
        foreach (var word in given.Texts(from).SelectMany(static t => t.Split(',', StringSplitOptions.TrimEntries)))
        {
            if (word.Length == 0)
            {
                given.Add(new Problem("from", "There is an empty place in the list.", "Part the materials by one comma, as in --from urea,mkp; write decimals with a point."));
                return [];
            }

            var read = InlineMaterial.Parse(word, MaterialCatalogue.Default);
            if (given.Take(read) is not { } material)
            {
                continue;
            }

            notes.AddRange(read.Problems);

            if (offers.Exists(o => o.Material.Id == material.Id))
            {
                given.Add(new Problem("from", $"{SafeText.Quoted(material.Id)} is given twice.", "Name each material once."));
            }

            prices.Remove(material.Id, out var kg);
            offers.Add(new Offer(material, kg));
        }

        foreach (var (id, _) in prices)
        {
            given.Add(new Problem("price", $"{SafeText.Quoted(id)} has a price but is not among the materials of --from.", "Name it there too, or take the price out."));
        }

        return offers;
    }

    private Dictionary<string, double?> Prices(Given given)
    {
        var prices = new Dictionary<string, double?>(StringComparer.Ordinal);
        foreach (var text in given.Texts(price))
        {
            var parts = text.Split('=', 2);
            var kg = NumberReader.NotNegative(parts[^1], "price", example: "1.2");
            if (parts.Length == 2 && kg.Ok && prices.TryAdd(parts[0].Trim(), kg.Value))
            {
                continue;
            }

            given.Add(kg.Ok || parts.Length < 2
                ? new Problem("price", $"{SafeText.Quoted(text)} is not a price a kg of a material.", "Write its id, = and a number, each material once, as in --price urea=1.2.")
                : kg.Problems[0]);
        }

        return prices;
    }

    private BatchWindow? Batch(Given given)
    {
        if (given.Text(batch) is not { } text)
        {
            return null;
        }

        var window = QuantityReader.MassWindow(text, "batch", text.Contains("..", StringComparison.Ordinal) ? "40g..60g" : "120g");
        given.AddRange(window.Problems);
        return window.Ok ? new BatchWindow(window.Value.From, window.Value.To) : null;
    }

    private bool NamesAScoop(Given given) => given.Has(scoop) && given.Text(scoop) is { Length: > 0 } text && !char.IsAsciiDigit(text[0]);

    private Measuring Measure(Given given, Garden? garden)
    {
        if (given.Has(step) && given.Has(scoop))
        {
            given.Add(new Problem("step", "--step and --scoop are given together.", "Weigh or scoop: give one of them."));
            return new Measuring.Freely();
        }

        if (given.Text(step) is { } mass)
        {
            var read = QuantityReader.Mass(mass, "step", "1g");
            given.AddRange(read.Problems);
            return read.Ok ? new Measuring.ByScale(read.Value) : new Measuring.Freely();
        }

        return given.Text(scoop) is { } text ? Scoop(given, garden, text) : new Measuring.Freely();
    }

    private static Measuring Scoop(Given given, Garden? garden, string text)
    {
        if (garden?.Scoops.FirstOrDefault(s => s.Name == text) is { } own)
        {
            return new Measuring.ByScoop(own);
        }

        if (!char.IsAsciiDigit(text[0]) && text[0] is not ('-' or '.'))
        {
            var names = garden?.Scoops.Select(static s => SafeText.Quoted(s.Name)).ToList() ?? [];
            given.Add(new Problem(
                "scoop",
                $"There is no scoop {SafeText.Quoted(text)}.",
                names.Count > 0 ? $"The garden has {string.Join(", ", names)}; or write a volume, as in --scoop 5mL." : "Write its level volume, as in --scoop 5mL."));
            return new Measuring.Freely();
        }

        var volume = QuantityReader.Volume(text, "scoop", "5mL");
        given.AddRange(volume.Problems);
        if (!volume.Ok)
        {
            return new Measuring.Freely();
        }

        // A scoop of the garden with this volume brings its calibrations.
        return new Measuring.ByScoop(garden?.Scoops.FirstOrDefault(s => s.Volume == volume.Value)
            ?? new Scoop(text, volume.Value, new Dictionary<string, Spread>()));
    }
}
