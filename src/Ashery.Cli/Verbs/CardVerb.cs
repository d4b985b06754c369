using Ashery.Cards;
using Ashery.Cards.Pictures;
using Ashery.Cli.Frame;
using Ashery.Exchange.Mix;
using Ashery.Feeds;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Problems;
using Ashery.Recipes;
using PotDose = Ashery.Cards.PotDose;

namespace Ashery.Cli.Verbs;

/// <summary>Makes a recipe card, a bag label or the year on paper: text, HTML, PDF or SVG of one description.</summary>
internal sealed class CardVerb : Verb
{
    private static readonly string[] Kinds = ["recipe", "label", "year", "shopping"];
    private static readonly string[] Endings = [".txt", ".html", ".pdf", ".svg"];

    private readonly MixWords words;
    private readonly GardenSource garden;
    private readonly ValueOption kind;
    private readonly ValueOption name;
    private readonly ValueOption blend;
    private readonly ValueOption on;
    private readonly ValueOption paper;
    private readonly ValueOption to;

    public CardVerb()
        : base("card", "Make a recipe card, a bag label or the year on paper, to print")
    {
        kind = Add(new ValueOption("--kind", "KIND", "What to make: recipe (usual), label, year, shopping") { Words = static () => Kinds });
        to = Add(new ValueOption("--to", "FILE", "Where to: a name that ends in .pdf, .html, .svg or .txt; without it the text is printed"));
        name = Add(new ValueOption("--name", "TEXT", "What to call the mix"));
        blend = Add(new ValueOption("--blend", "NUMBER", "Which of the blends, as ashery mix numbers them (1)"));
        on = Add(new ValueOption("--on", "DATE", "The day it is mixed or printed (today)"));
        paper = Add(new ValueOption("--paper", "SIZE", "Sheet: " + string.Join(", ", Paper.All.Select(static p => p.Name))) { Words = static () => Paper.All.Select(static p => p.Name) });
        words = new MixWords(this);
        garden = new GardenSource(Command);
    }

    public override string Details =>
        "Recipe and label take the words of ashery mix. With a garden, named or needed for its shelf, the card has a dose table of its pots. PDF needs no other program.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("A card as text:", "ashery card --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 500g --name \"Spring mix\""),
        ("A PDF with doses for the demo garden:", "ashery card --crop fuchsia --demo --batch 1kg --to fuchsia-card.pdf"),
        ("A label for the bag:", "ashery card --kind label --crop fuchsia --demo --batch 1kg --to fuchsia-label.svg"),
        ("The demo garden's year on paper:", "ashery card --kind year --demo --on 2026-03-01 --to year.html"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var what = given.Word(kind, Kinds) ?? "recipe";
        var day = Dates.Read(given, on) ?? terminal.Today();
        var size = given.Word(paper, [.. Paper.All.Select(static p => p.Name)]) is { } found ? Paper.Find(found) : null;
        var file = given.Text(to);
        if (file is not null && !Endings.Contains(Path.GetExtension(file)))
        {
            given.Add(new Problem("to", $"{SafeText.Quoted(file)} does not end in .pdf, .html, .svg or .txt.", "The end of the name says what is made, as in --to card.pdf."));
        }

        var outcome = ExitCode.Done;
        var card = what is "year" or "shopping"
            ? OfYear(given, terminal, what, day, size)
            : OfRecipe(given, terminal, what, day, size, out outcome);
        if (outcome == ExitCode.OutOfReach)
        {
            return outcome;
        }

        if (given.Wrong || card is null || (file is not null && given.Take(CardFile.Write(file, card)) is null))
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(CardJson.Write(card, file));
        }
        else
        {
            terminal.Output.Write(file is null ? CardText.Write(card) : $"{card.Kind} {SafeText.Quoted(card.Title)} is in {SafeText.Of(file)}.\n");
        }

        return ExitCode.Done;
    }

    private CardDocument? OfYear(Given given, Terminal terminal, string what, DateOnly day, Paper? size)
    {
        if (garden.Load(given, terminal) is not { } loaded || given.Wrong)
        {
            return null;
        }

        var plan = YearPlanner.Plan(new YearRequest(loaded, day));
        return what == "year" ? YearSheet.Describe(plan, loaded, day, size) : YearSheet.DescribeShopping(plan, loaded, day, size);
    }

    private CardDocument? OfRecipe(Given given, Terminal terminal, string what, DateOnly day, Paper? size, out int outcome)
    {
        outcome = ExitCode.Done;
        var which = given.Whole(blend, usual: 1, least: 1, most: 1000);
        var title = given.Text(name);
        var request = words.Read(given, terminal, garden);
        if (request is null || given.Wrong || given.Take(Mixing.Find(request)) is not { } answer)
        {
            return null;
        }

        if (answer.OutOfReach is not null)
        {
            terminal.Errors.WriteLine("ashery card: the wish is out of reach, so no card was made.");
            if (given.Has(Json))
            {
                terminal.Output.Write(MixJson.Write(answer));
            }
            else
            {
                MixText.Write(terminal, MixJson.From(answer));
            }

            outcome = ExitCode.OutOfReach;
            return null;
        }

        if (which > answer.Blends.Count)
        {
            given.Add(new Problem("blend", $"There are only {Text.Figures.Whole(answer.Blends.Count)} blends.", "ashery mix with the same words lists them."));
            return null;
        }

        var recipe = answer.Blends[which - 1];
        var mix = new RecipeCardRequest
        {
            Name = title ?? $"Mix {request.Wish.Name}",
            Recipe = recipe,
            MadeOn = day,
            Wish = request.Wish.Name,
            Use = request.Limits.Use,
            Settings = words.Garden?.Settings ?? new GardenSettings(),
            Doses = words.Garden is { } loaded ? Doses(given, loaded, recipe, title ?? request.Wish.Name, day) : [],
            Triangle = TriangleView.Of(request.Wish, request.Offers, recipe),
            Paper = size ?? (what == "label" ? Paper.Label : Paper.A5),
        };
        return given.Wrong ? null : what == "label" ? BagLabel.Describe(mix) : RecipeCard.Describe(mix);
    }

    private static IReadOnlyList<PotDose> Doses(Given given, Garden loaded, Recipe recipe, string title, DateOnly day)
    {
        if (given.Take(FeedMaker.FromRecipe(recipe, title)) is not { } feed)
        {
            return [];
        }

        var with = loaded with { Feeds = [.. loaded.Feeds.Where(f => f.Id != feed.Id), feed] };
        var round = given.Take(DoseRound.For(new DoseRoundRequest(with, day, feed.Id)));
        return round is null ? [] : [.. round.Pots.Where(static p => p.Dose.Grams > 0).Select(static p => new PotDose(p.Pot, p.Dose))];
    }
}
