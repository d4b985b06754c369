using Ashery.Cards.Wording;
using Ashery.Gardens;
using Ashery.Nutrients;
using Ashery.Stock;

namespace Ashery.Cards;

/// <summary>What a batch label is made from.</summary>
public sealed record BatchLabelRequest
{
    public required Batch Batch { get; init; }

    /// <summary>The batch as it was weighed: the label prints this grade, not the planned one.</summary>
    public required BatchReport Report { get; init; }

    /// <summary>Address of the batch's page, for the code; null for a label without one.</summary>
    public string? Address { get; init; }

    public GardenSettings Settings { get; init; } = new();

    public Paper Paper { get; init; } = Paper.Label;
}

/// <summary>The label of a mixed batch: lot, use-by, the grade that follows from the weighings, what to mind, and a code that opens its card.</summary>
public static class BatchLabel
{
    /// <summary>Says what the label shows.</summary>
    public static CardDocument Describe(BatchLabelRequest request)
    {
        var (batch, recipe) = (request.Batch, request.Report.AsMade);
        var words = new RecipeCardRequest { Name = batch.FeedName, Recipe = recipe, MadeOn = batch.Made, Settings = request.Settings };
        List<Fact> facts =
        [
            new("Contains", string.Join(", ", recipe.Parts.OrderByDescending(static p => p.Share).Select(static p => $"{p.Material.Name} {Figures.Percent(p.Share)}"))),
            new("As elements", string.Join(", ", recipe.Elements.Present.Where(static n => n is Nutrient.N or Nutrient.P or Nutrient.K).Select(n => $"{n} {Figures.Percent(recipe.Elements[n])}"))),
            new("Keeping", RecipeWords.StorageClassName(recipe.Storage.Class)),
        ];
        return new()
        {
            Kind = "Fertiliser mix, not food",
            Title = batch.FeedName,
            Lead = RecipeWords.Grade(recipe) with { Name = "Grade as weighed" },
            Particulars =
            [
                new("Lot", batch.Lot), new("Mixed on", Figures.Day(batch.Made, year: true)), new("Net", Amounts.Mass(batch.Grams, request.Settings)),
                new("Use by", batch.UseBy is { } day ? Figures.Day(day, year: true) : "no date: while dry and loose"),
            ],
            Address = request.Address,
            Sections =
            [
                new("", [new FactList(facts)]),
                new("", [new Paragraph(string.Join(' ', CautionWords.ForLabel(words).Select(static c => c.Words).Prepend(CautionWords.First ?? "")).Trim())], SectionWeight.Caution),
            ],
            RunningHead = $"{batch.FeedName}, lot {batch.Lot}",
            Date = batch.Made,
            Paper = request.Paper,
        };
    }
}
