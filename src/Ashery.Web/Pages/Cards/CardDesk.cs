using Ashery.Cards;
using Ashery.Cards.Pictures;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Materials;
using Ashery.Planning;
using Ashery.Problems;
using Ashery.Recipes;
using Ashery.Web.Forms;
using Ashery.Web.Gardens;
using Ashery.Web.Pages.Mix;
using PotDose = Ashery.Cards.PotDose;

namespace Ashery.Web.Pages.Cards;

/// <summary>What a card is of, as the address says it, described by the cards room.</summary>
internal sealed class CardDesk(GardenDesk desk, DateOnly today)
{
    public const string Blend = "blend";
    public const string Year = "year";
    public const string Shopping = "shopping";

    private const double UsualBatch = 500;

    /// <summary>Describes the card <paramref name="of"/>: a blend of the mixing page, the year, the shopping list, or a kept feed by its id.</summary>
    public Result<CardDocument> Describe(string of, Draft asked)
    {
        var paper = asked.Has("paper") ? Paper.Find(asked["paper"]) : null;
        if (asked.Has("paper") && paper is null)
        {
            return Result.Fail<CardDocument>("paper", $"{FieldReader.Cut(asked["paper"])} is not a sheet that is known.", "Choose from the list.");
        }

        return of switch
        {
            Year or Shopping => OfYear(of, asked, paper),
            Blend => OfBlend(asked, paper),
            _ => OfFeed(of, asked, paper),
        };
    }

    private Result<CardDocument> OfYear(string of, Draft asked, Paper? paper)
    {
        var read = new FieldReader(asked);
        var from = read.Date("from") ?? today;
        if (!read.Fine)
        {
            return Result.Fail<CardDocument>(read.Problems);
        }

        var plan = desk.Year(from);
        return Result.Of(of == Year ? YearSheet.Describe(plan, desk.Garden, today, paper) : YearSheet.DescribeShopping(plan, desk.Garden, today, paper));
    }

    private Result<CardDocument> OfBlend(Draft asked, Paper? paper)
    {
        var request = new MixDesk(desk.Garden).Read(asked);
        if (!request.Ok)
        {
            return Result.Fail<CardDocument>(request.Problems);
        }

        var answer = Mixing.Find(request.Value);
        if (!answer.Ok)
        {
            return Result.Fail<CardDocument>(answer.Problems);
        }

        var read = new FieldReader(asked);
        var number = asked.Has(Blend) ? read.Whole(Blend, 1, 1000, "1") : 1;
        if (!read.Fine || number > answer.Value.Blends.Count)
        {
            return Result.Fail<CardDocument>(Blend, "There is no such blend.", "Go back to the mixing page and choose one.");
        }

        var recipe = answer.Value.Blends[number - 1];
        var name = $"Mix for {answer.Value.Wish.Name}";
        return Result.Of(Card(recipe, name, answer.Value.Wish.Name, request.Value.Limits.Use, asked, paper, TriangleView.Of(answer.Value.Wish, request.Value.Offers, recipe)));
    }

    private Result<CardDocument> OfFeed(string id, Draft asked, Paper? paper)
    {
        if (desk.Garden.Feeds.FirstOrDefault(f => f.Id == id) is not { } feed)
        {
            return Result.Fail<CardDocument>("feed", "There is no such feed.", "Look at the list of cards.");
        }

        var batch = asked.Has("batch") ? BatchReader.Parse(asked["batch"].Replace(" ", "", StringComparison.Ordinal)) : null;
        if (batch is { Ok: false })
        {
            return Result.Fail<CardDocument>(batch.Problems);
        }

        var recipe = Recipe(feed, batch?.Value?.To.Grams ?? UsualBatch);
        return recipe.Ok
            ? Result.Of(Card(recipe.Value, feed.Name, null, BlendUse.DryStored, asked, paper, null, feed))
            : Result.Fail<CardDocument>(recipe.Problems);
    }

    /// <summary>A kept feed as a recipe of so many grams.</summary>
    public Result<Recipe> Recipe(Feed feed, double grams)
    {
        var parts = new List<(Offer, double)>();
        foreach (var (id, share) in feed.Parts.OrderByDescending(p => p.Value))
        {
            var bag = desk.Garden.Shelf.FirstOrDefault(b => b.Material.Id == id);
            if ((bag?.Material ?? MaterialCatalogue.Default.Find(id)) is not { } material)
            {
                return Result.Fail<Recipe>("feed", $"{id} is neither on the shelf nor in the catalogue any more.", "Put the bag back on the shelf, or mix the feed anew.");
            }

            parts.Add((bag?.ToOffer() ?? new Offer(material), share * grams));
        }

        return RecipeByParts.Weighed(parts, use: BlendUse.DryStored);
    }

    private CardDocument Card(Recipe recipe, string name, string? wish, BlendUse use, Draft asked, Paper? paper, TriangleView? triangle, Feed? feed = null)
    {
        var isLabel = asked["kind"] == "label";
        var request = new RecipeCardRequest
        {
            Name = name,
            Recipe = recipe,
            MadeOn = today,
            Wish = wish,
            Use = use,
            Settings = desk.Garden.Settings,
            Doses = Doses(recipe, name, feed),
            Triangle = triangle,
            Paper = paper ?? (isLabel ? Paper.Label : Paper.A5),
        };
        return isLabel ? BagLabel.Describe(request) : RecipeCard.Describe(request);
    }

    private IReadOnlyList<PotDose> Doses(Recipe recipe, string name, Feed? feed)
    {
        var made = feed ?? (FeedMaker.FromRecipe(recipe, name) is { Ok: true } one ? one.Value : null);
        if (made is null || desk.Garden.Pots.Count == 0)
        {
            return [];
        }

        var with = desk.Garden with { Feeds = [.. desk.Garden.Feeds.Where(f => f.Id != made.Id), made] };
        var round = DoseRound.For(new DoseRoundRequest(with, today, made.Id));
        return round.Ok ? [.. round.Value.Pots.Where(p => p.Dose.Grams > 0).Select(p => new PotDose(p.Pot, p.Dose))] : [];
    }
}
