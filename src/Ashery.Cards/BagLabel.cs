using Ashery.Cards.Wording;
using Ashery.Nutrients;

namespace Ashery.Cards;

/// <summary>The label for the bag or jar: what is in it, when it was made, what to mind, and the commonest dose.</summary>
public static class BagLabel
{
    /// <summary>Says what the label shows.</summary>
    public static CardDocument Describe(RecipeCardRequest request)
    {
        var recipe = request.Recipe;
        var lot = Lot.Number(request.MadeOn, recipe);
        List<Fact> facts =
        [
            new("Contains", string.Join(", ", recipe.Parts.OrderByDescending(p => p.Share).Select(p => $"{p.Material.Name} {Figures.Percent(p.Share)}"))),
            new("As elements", string.Join(", ", recipe.Elements.Present.Where(n => n is Nutrient.N or Nutrient.P or Nutrient.K).Select(n => $"{n} {Figures.Percent(recipe.Elements[n])}"))),
        ];
        if (request.Doses.Count > 0)
        {
            var common = DoseWords.Commonest(request.Doses);
            var dose = common[0].Dose;
            var amount = dose.Scoops is { } n ? $"{Amounts.Mass(dose.Grams, request.Settings)}, {Figures.Short(n, 2)} {(n == 1 ? "scoop" : "scoops")}," : Amounts.Mass(dose.Grams, request.Settings);
            facts.Add(new("Dose", $"{amount} for a pot of {Amounts.Litres(common[0].Pot.Volume.Litres, request.Settings)}", DoseWords.How(dose, request.Settings)));
        }

        facts.Add(new("Keeping", RecipeWords.StorageClassName(recipe.Storage.Class), "use by: " + RecipeWords.UseBy(recipe.Storage.Class)));
        return new()
        {
            Kind = "Fertiliser mix, not food",
            Title = request.Name,
            Lead = RecipeWords.Grade(recipe),
            Particulars = [new("Lot", lot), new("Mixed on", Figures.Day(request.MadeOn, year: true)), new("Net", Amounts.Mass(recipe.BatchGrams, request.Settings))],
            Sections =
            [
                new("", [new FactList(facts)]),
                new("", [new Paragraph(string.Join(' ', CautionWords.ForLabel(request).Select(c => c.Words).Prepend(CautionWords.First ?? "")).Trim())], SectionWeight.Caution),
            ],
            RunningHead = $"{request.Name}, lot {lot}",
            Date = request.MadeOn,
            Paper = request.Paper == Paper.A5 ? Paper.Label : request.Paper,
        };
    }
}
