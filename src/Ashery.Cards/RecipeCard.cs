using Ashery.Cards.Pictures;
using Ashery.Cards.Wording;
using Ashery.Problems;
using Ashery.Recipes;

namespace Ashery.Cards;

/// <summary>The recipe card: everything needed at the bench and at the pot, safety first, sources last.</summary>
public static class RecipeCard
{
    /// <summary>Says what the card shows. Show it with <see cref="CardHtml"/>, <see cref="CardPdf"/>, <see cref="CardSvg"/> or <see cref="CardText"/>.</summary>
    public static CardDocument Describe(RecipeCardRequest request)
    {
        var recipe = request.Recipe;
        var lot = Lot.Number(request.MadeOn, recipe);
        var cautions = CautionWords.For(request);
        var firstAid = CautionWords.FirstAid(request);
        return new()
        {
            Kind = "Recipe card",
            Title = request.Name,
            Lead = RecipeWords.Grade(recipe),
            Particulars = [new("Lot", lot), new("Mixed on", Figures.Day(request.MadeOn, year: true)), new("Batch", Amounts.Mass(recipe.BatchGrams, request.Settings))],
            First = CautionWords.First,
            Sections = [.. Sections(request, firstAid)],
            Foot = SourceWords.Foot(request, cautions.Concat(firstAid)),
            RunningHead = $"{request.Name}, lot {lot}",
            Date = request.MadeOn,
            Paper = request.Paper,
        };
    }

    private static IEnumerable<CardSection> Sections(RecipeCardRequest request, IReadOnlyList<Cautions.Caution> firstAid)
    {
        var recipe = request.Recipe;
        yield return new("What goes in", [RecipeWords.Composition(recipe, request.Settings)]);
        yield return new("How to mix", [new Listing(MixSteps.For(request), Numbered: true)]);
        yield return new("Dose", request.Doses.Count > 0
            ? [DoseWords.Table(request.Doses, request.Settings), new Paragraph(DoseWords.HowTo(request.Doses)), .. DoseWords.Notes(request.Doses) is { Count: > 0 } notes ? [new Listing(notes)] : (CardBlock[])[]]
            : [new Paragraph("No dose worked out: it depends on pot, plant and season. Do not guess it from the grade.")]);
        yield return new("Cautions", [new Listing(CautionWords.Lines(request))], SectionWeight.Caution);
        yield return new("Too much given", [new Listing([.. firstAid.Select(c => c.Words), .. FirstAidWords.Lines(request)])], SectionWeight.Caution);
        yield return new("Keeping it", [new FactList(Keeping(recipe))]);
        if (Watch(request) is { Count: > 0 } watch)
        {
            yield return new("Pairs to watch", [new Listing(watch)]);
        }

        if (Notes(recipe) is { Count: > 0 } wrong)
        {
            yield return new("What may go wrong", [new Listing(wrong)]);
        }

        List<CardBlock> content = [RecipeWords.Contents(recipe), new FactList(RecipeWords.Properties(recipe, request.Wish, request.Settings.Currency))];
        if (request.Triangle is { } view)
        {
            content.Insert(0, new PictureBlock(Triangle.Draw(view), 0.56));
        }

        yield return new("What is in it", content);
    }

    private static List<Fact> Keeping(Recipe recipe)
    {
        var storage = recipe.Storage;
        var facts = new List<Fact> { new("Storage", RecipeWords.StorageClassName(storage.Class), storage.Reason), new("Use by", RecipeWords.UseBy(storage.Class)) };
        if (storage.CriticalRelativeHumidity is { } humidity)
        {
            facts.Add(new("Draws water above", $"{Figures.Short(humidity, 1)} % relative humidity", "at 30 °C"));
        }

        return facts;
    }

    private static IReadOnlyList<string> Watch(RecipeCardRequest request) => PairWords.Lines(request);

    /// <summary>Notes on a pair say again what stands under Pairs to watch.</summary>
    private static bool IsOfPair(Recipe recipe, Problem note) => recipe.Pairs.Any(p =>
        note.Field.StartsWith($"{p.A} with {p.B}", StringComparison.Ordinal) || note.Field.StartsWith($"{p.B} with {p.A}", StringComparison.Ordinal));

    private static IReadOnlyList<string> Notes(Recipe recipe) =>
        [.. recipe.Notes.Where(n => !IsOfPair(recipe, n)).OrderByDescending(n => n.Severity).Select(n => n.WayOut.Length > 0 ? $"{n.Message} {n.WayOut}" : n.Message)];
}
