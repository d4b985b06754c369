using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Quantities;
using Ashery.Recipes;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Mix;

/// <summary>The mixing form, which lives in the address, as a request to the library.</summary>
internal sealed class MixDesk(Garden garden)
{
    /// <summary>How many draws over label ranges and scoop errors.</summary>
    private const int Draws = 1000;

    /// <summary>What the form shows before anything was asked: the plant most pots hold, from the shelf, as the settings weigh.</summary>
    public Draft Beginning()
    {
        var crop = garden.Pots.GroupBy(p => p.CropId).OrderByDescending(g => g.Sum(p => p.Count)).Select(g => g.Key).FirstOrDefault();
        return Draft.With(
            ("crop", crop ?? CropCatalogue.Default.All[0].Id),
            ("from", garden.Shelf.Count > 0 ? "shelf" : "catalogue"),
            ("atmost", "4"),
            ("use", nameof(BlendUse.DryStored)),
            ("batch", "500 g"),
            ("measure", garden.Settings.Scoop is null ? "free" : "scoop"),
            ("step", Figures.Number(garden.Settings.ScaleStep)),
            ("scoop", garden.Settings.Scoop ?? ""));
    }

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public static Draft Complete(Draft typed)
    {
        foreach (var (name, usual) in new[] { ("atmost", "4"), ("from", "shelf"), ("use", nameof(BlendUse.DryStored)), ("measure", "free") })
        {
            typed = typed.Has(name) ? typed : typed.Set(name, usual);
        }

        return typed;
    }

    public Result<MixRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var wish = Wish(read, typed);
        var limits = Limits(read, typed);
        var measuring = Measure(read, typed);
        var batch = typed.Has("batch") ? BatchReader.Parse(Unspaced(typed["batch"])) : null;
        read.AddRange((batch?.Problems ?? []).Select(p => p with { Field = "batch" }));
        var atMost = typed.Has("atmost") ? read.Whole("atmost", 1, 6, "4") : 4;
        var draws = typed.Has("draws");
        var offers = Offers(read, typed);
        if (!read.Fine || wish is null)
        {
            return Result.Fail<MixRequest>(read.Problems);
        }

        return Result.Of(new MixRequest
        {
            Wish = wish,
            Offers = offers,
            Limits = limits,
            AtMost = atMost,
            Measuring = measuring,
            Batch = batch is { Ok: true } ? batch.Value : null,
            Draws = draws ? Draws : 0,
            Rank = typed["rank"] == "sure" && draws ? RankBy.Percentile95 : RankBy.TypicalAnalysis,
        });
    }

    /// <summary>Which field of this form a problem of the library belongs to.</summary>
    public static Problem AtField(Problem problem) => problem.Field switch
    {
        "wish" or "ratio" or "grade" or "target" => problem with { Field = "want" },
        "offers" or "materials" or "shelf" => problem with { Field = "from" },
        "at most" or "atMost" or "at-most" => problem with { Field = "atmost" },
        _ => problem,
    };

    private static Wish? Wish(FieldReader read, Draft typed)
    {
        if (typed.Has("want"))
        {
            var wish = WishReader.Parse(typed["want"]);
            read.AddRange(wish.Problems.Select(p => p with { Field = "want" }));
            return wish.Ok ? wish.Value : null;
        }

        if (CropCatalogue.Default.Find(typed["crop"]) is { } crop)
        {
            return WishReader.ForCrop(crop);
        }

        read.Add("crop", "Nothing is wanted yet.", "Choose a plant, or write a ratio such as 4:1:5.");
        return null;
    }

    private List<Offer> Offers(FieldReader read, Draft typed)
    {
        var shelf = garden.Shelf.GroupBy(b => b.Material.Id).ToDictionary(g => g.Key, g => g.First().ToOffer());
        List<Offer> offers = typed["from"] switch
        {
            "catalogue" => [.. MaterialCatalogue.Default.All.Select(m => shelf.GetValueOrDefault(m.Id) is { } own ? own with { Stock = null } : new Offer(m)).UnionBy(shelf.Values, o => o.Material.Id)],
            "chosen" => [.. typed.All("m").Distinct(StringComparer.Ordinal).Select(id => shelf.GetValueOrDefault(id) ?? (MaterialCatalogue.Default.Find(id) is { } m ? new Offer(m) : null)).OfType<Offer>()],
            _ => [.. garden.Shelf.Select(b => b.ToOffer())],
        };
        if (offers.Count == 0)
        {
            var way = typed["from"] == "chosen" ? "Tick some materials below." : "Put a bag on the shelf, or choose from the whole catalogue.";
            read.Add("from", typed["from"] == "chosen" ? "No material is chosen." : "The shelf is empty.", way);
        }

        return offers;
    }

    private static Measuring Measure(FieldReader read, Draft typed, IReadOnlyList<Scoop> scoops)
    {
        switch (typed["measure"])
        {
            case "scale":
                return new Measuring.ByScale(new Mass(read.Required("step", 0.001, 1000, "1")));
            case "scoop" when scoops.FirstOrDefault(s => s.Name == typed["scoop"]) is { } scoop:
                return new Measuring.ByScoop(scoop);
            case "scoop":
                read.Add("scoop", scoops.Count == 0 ? "There is no scoop yet." : "The scoop is missing.", scoops.Count == 0 ? "Add one in the settings, or weigh." : "Choose one from the list.");
                return new Measuring.Freely();
            default:
                return new Measuring.Freely();
        }
    }

    private Measuring Measure(FieldReader read, Draft typed) => Measure(read, typed, garden.Scoops);

    private static MixLimits Limits(FieldReader read, Draft typed)
    {
        var own = typed.Has("limit") ? LimitReader.Parse(typed["limit"]) : null;
        read.AddRange((own?.Problems ?? []).Select(p => p with { Field = "limit" }));
        var limits = own is { Ok: true } ? own.Value : new MixLimits();
        return limits with
        {
            UreaShareOfNitrogen = Percent(read, "urea") ?? limits.UreaShareOfNitrogen,
            AmmoniacalShareOfNitrogen = Percent(read, "ammoniacal") ?? limits.AmmoniacalShareOfNitrogen,
            Chloride = Percent(read, "chloride") ?? limits.Chloride,
            Strength = Percent(read, "strength") ?? limits.Strength,
            SaltIndex = read.Optional("saltindex", 0, 1000, "80") ?? limits.SaltIndex,
            Acidity = read.Optional("acidity", -5, 5, "0.2") ?? limits.Acidity,
            CostPerKg = read.Optional("cost", 0, 1e6, "1.50") ?? limits.CostPerKg,
            OrganicOnly = typed.Has("organic") || limits.OrganicOnly,
            SolubleOnly = typed.Has("soluble") || limits.SolubleOnly,
            Without = typed.All("without").Where(w => w.Length > 0).Concat(limits.Without).ToHashSet(StringComparer.Ordinal),
            Use = typed.Has("use") ? read.Choice("use", limits.Use) : limits.Use,
        };
    }

    private static double? Percent(FieldReader read, string name) => read.Optional(name, 0, 100, "30") / 100;

    // "500 g" is typed with a blank as often as without.
    private static string Unspaced(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
