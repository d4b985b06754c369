using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Acids;
using Ashery.Solutions.Can;
using Ashery.Solutions.Targets;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Can;

/// <summary>The form of a solution target, which lives in the address, as a request to the library.</summary>
internal sealed class TargetDesk(Garden garden)
{
    /// <summary>Nutrients with a field of their own.</summary>
    public static readonly string[] Own = ["N", "P", "K", "Ca", "Mg"];

    /// <summary>What the form shows before anything was asked: a middling feed, from what dissolves.</summary>
    public Draft Beginning() => Complete(Draft.With(("N", "120"), ("P", "20"), ("K", "130")));

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public Draft Complete(Draft typed)
    {
        foreach (var (name, usual) in new[] { ("water", WaterChoice.Usual(garden)), ("from", Shelf().Count > 1 ? "shelf" : "chosen"), ("litres", Figures.Number(Ten)), ("atmost", "6") })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, usual);
        }

        return typed;
    }

    /// <summary>What may be ticked: bags that dissolve clear, then the catalogue.</summary>
    public IReadOnlyList<(string Id, string Name)> Choosable() => new CanDesk(garden).Materials();

    /// <summary>The request with notes; problems at the fields of the form.</summary>
    public Result<TargetRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var wishes = Wishes(read, typed);
        var water = WaterChoice.Find(garden, typed["water"]);
        read.AddRange(water.Problems.Where(static p => p.Severity == Severity.Error));
        var ec = read.Optional("ec", 0.02, 50, "1.5");
        var pH = read.Optional("ph", 3, 10, "6");
        var agent = pH is null ? null : Agent(read, typed);
        var litres = read.Optional("litres", 0.001, 1e5, Figures.Number(Ten)) ?? Ten;
        var step = read.Optional("step", 0.001, 1000, "0.1");
        var atMost = typed.Has("atmost") ? read.Whole("atmost", 1, 8, "6") : 6;
        var (offers, leftOut) = Offers(read, typed);
        return !read.Fine || !water.Ok ? Result.Fail<TargetRequest>(read.Problems) : Result.Of(
            new TargetRequest
            {
                Target = new(wishes, ec, pH),
                Water = water.Value.ToInput(20),
                WaterName = water.Value.Name,
                Offers = offers,
                Agent = agent,
                AtMost = atMost,
                OneStock = typed.Has("onestock"),
                Litres = Units.ToLitres(litres),
                StepGrams = step,
            },
            leftOut);
    }

    /// <summary>Which field of the form a problem of the library belongs to.</summary>
    public static Problem AtField(Problem problem) => problem with
    {
        Field = problem.Field switch
        {
            "target" => "more",
            "at-most" => "atmost",
            "acid" => "acid",
            _ => problem.Field,
        },
    };

    private Amounts Units => new(garden.Settings.UsUnits);

    private double Ten => garden.Settings.UsUnits ? 2.5 : 10;

    private static List<TargetWish> Wishes(FieldReader read, Draft typed)
    {
        var wishes = new List<TargetWish>();
        foreach (var symbol in Own)
        {
            var text = typed[symbol];
            if (text.Length > 0)
            {
                var word = text[0] is '<' or '>' or '=' or '≤' or '≥' ? symbol + text : $"{symbol}={text}";
                var wish = TargetReader.Read(word.Replace(" ", "", StringComparison.Ordinal));
                read.AddRange(wish.Problems.Select(p => p with { Field = symbol }));
                if (wish.Ok)
                {
                    wishes.Add(wish.Value);
                }
            }
        }

        if (typed.Has("more"))
        {
            var more = TargetReader.ReadAll(typed["more"]);
            read.AddRange(more.Problems.Select(static p => p with { Field = "more" }));
            foreach (var wish in more.Ok ? more.Value : [])
            {
                if (wishes.Exists(w => w.Item == wish.Item))
                {
                    read.Add("more", $"{wish.Item.Symbol} has its own field above.", "Write it once.");
                }

                wishes.Add(wish);
            }
        }

        return wishes;
    }

    private static PhAgent? Agent(FieldReader read, Draft typed)
    {
        if (!typed.Has("acid"))
        {
            read.Add("acid", "A pH is wished and nothing is named that brings it.", "Choose an acid, or empty the pH.");
            return null;
        }

        if (Acid.Find(typed["acid"]) is { } acid)
        {
            var percent = read.Optional("strength", 0.5, 100, Figures.Number(acid.UsualStrength * 100)) ?? acid.UsualStrength * 100;
            var bottle = AcidBottle.OfStrength(acid, percent / 100);
            read.AddRange(bottle.Problems);
            return bottle.Ok ? PhAgent.Of(bottle.Value) : null;
        }

        var made = MaterialCatalogue.Default.Find(typed["acid"]) is { } material ? MaterialInWater.Of(material) : null;
        if (made is { Ok: true })
        {
            return new(made.Value);
        }

        read.Add("acid", $"{FieldReader.Cut(typed["acid"])} is not one of the choices.", "Choose from the list.");
        return null;
    }

    private (IReadOnlyList<TargetOffer> Offers, IReadOnlyList<Problem> LeftOut) Offers(FieldReader read, Draft typed)
    {
        if (typed["from"] != "chosen")
        {
            var (shelf, leftOut) = TargetShelf.Of([.. garden.Shelf.Select(static b => b.ToOffer()).DistinctBy(static o => o.Material.Id)]);
            if (shelf.Count == 0)
            {
                read.Add("from", "Nothing on the shelf dissolves clear.", "Take chosen materials instead.");
            }

            return (shelf, leftOut);
        }

        var offers = new List<TargetOffer>();
        foreach (var id in typed.All("m").Where(static m => m.Length > 0).Distinct(StringComparer.Ordinal))
        {
            var bag = garden.Shelf.FirstOrDefault(b => b.Id == id);
            var material = bag?.Material ?? MaterialCatalogue.Default.Find(id);
            var made = material is null ? null : bag is null ? MaterialInWater.Of(material) : MaterialInWater.OfBag(material);
            if (made is { Ok: true })
            {
                offers.Add(new(made.Value, bag?.ToOffer().PricePerKg, bag?.Stock?.Grams));
            }
            else
            {
                read.Add("from", made?.Problems[0].Message ?? $"{FieldReader.Cut(id)} is neither on the shelf nor in the catalogue.", "Tick others.");
            }
        }

        if (offers.Count == 0 && read.Fine)
        {
            read.Add("from", "No material is chosen.", "Tick some materials below.");
        }

        return (offers, []);
    }

    private List<TargetOffer> Shelf() => [.. TargetShelf.Of([.. garden.Shelf.Select(static b => b.ToOffer())]).Offers];
}
