using Ashery.Nutrients;
using Ashery.Problems;

namespace Ashery.Recipes;

/// <summary>What must be right before anything is searched.</summary>
internal static class RequestCheck
{
    /// <summary>More offers than any shelf or catalogue holds.</summary>
    public const int MostOffers = 500;

    /// <summary>A blend of more parts than this is no recipe for a bench scale, and the search would not end soon.</summary>
    public const int MostMaterials = 8;

    public const int MostBlends = 1000;
    public const int MostDraws = 1_000_000;

    /// <summary>A tonne, as the readers of masses allow.</summary>
    public const double LargestBatch = 1e6;

    /// <summary>Smallest step and batch, g: a tenth of a milligram.</summary>
    public const double SmallestMass = 1e-4;

    public static List<Problem> Check(MixRequest request)
    {
        var problems = new List<Problem>();
        Wish(request.Wish, problems);
        Offers(request, problems);
        Between("at-most", request.AtMost, 1, MostMaterials, "4", problems);
        Between("best", request.Best, 1, MostBlends, "20", problems);
        Between("draws", request.Draws, 0, MostDraws, "10000", problems);
        Batch(request.Batch, problems);
        Measure(request, problems);
        LimitCheck.Check(request, problems);
        return problems;
    }

    private static void Wish(Wish wish, List<Problem> problems)
    {
        var checkedWish = wish.IsGrade
            ? WishCheck.Grade(wish.Shares, "grade", [])
            : WishCheck.Ratio(wish.Shares, "ratio", []);
        problems.AddRange(checkedWish.Ok ? [] : checkedWish.Problems);
    }

    private static void Offers(MixRequest request, List<Problem> problems)
    {
        if (request.Offers.Count == 0)
        {
            problems.Add(new Problem(
                "from", "No material is given: the shelf is empty.", "Name materials, as in --from urea,map-granular, or put bags on the shelf."));
        }

        if (request.Offers.Count > MostOffers)
        {
            problems.Add(new Problem("from", $"{request.Offers.Count} materials are more than {MostOffers}.", "Name those you would really use."));
            return;
        }

        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var offer in request.Offers)
        {
            var id = offer.Material.Id;
            if (!seen.Add(id))
            {
                problems.Add(new Problem($"from, {id}", "It is given twice.", "Give each material once; give a second bag a name of its own."));
            }

            if (offer.PricePerKg is { } price && !(double.IsFinite(price) && price >= 0))
            {
                problems.Add(new Problem($"price of {id}", "The price is not a number from zero up.", "Write a price a kg, or leave it out."));
            }

            if (offer.Stock is { } stock && !(double.IsFinite(stock.Grams) && stock.Grams >= 0))
            {
                problems.Add(new Problem($"stock of {id}", "The stock is not a mass from zero up.", "Write what is left, as in 2kg, or leave it out."));
            }

            for (var nutrient = Nutrient.N; nutrient <= Nutrient.Na; nutrient++)
            {
                if (offer.Material.Label[nutrient] is not (>= 0 and <= 1))
                {
                    problems.Add(new Problem(
                        $"label of {id}, {LabelBasis.Symbol(nutrient)}", "The content is not between 0 and 100 %.", "Copy it from the bag again."));
                }
            }
        }
    }

    private static void Batch(BatchWindow? batch, List<Problem> problems)
    {
        if (batch is not { } window)
        {
            return;
        }

        if (!IsMass(window.From.Grams) || !IsMass(window.To.Grams))
        {
            problems.Add(new Problem(
                "batch", $"A batch is from {Say.Number(SmallestMass)} g to {Say.Number(LargestBatch / 1e6)} t.", "Write one, as in 120g or 50g..80g."));
        }
        else if (window.From.Grams > window.To.Grams)
        {
            problems.Add(new Problem("batch", "The window ends before it starts.", "Write the smaller mass first, as in 50g..80g."));
        }
    }

    private static void Measure(MixRequest request, List<Problem> problems)
    {
        switch (request.Measuring)
        {
            case Measuring.ByScale { Step.Grams: var step } when !IsMass(step):
                problems.Add(new Problem("step", $"A step is from {Say.Number(SmallestMass)} g up.", "Write what your scale shows, as in 1g or 0.1g."));
                break;
            case Measuring.ByScale { Step.Grams: var step } when request.Batch is { } batch && step > batch.To.Grams:
                problems.Add(new Problem("step", "One step is more than the batch.", "Use a finer scale or a larger batch."));
                break;
            case Measuring.ByScoop { Scoop.Volume.Litres: var litres } when !(double.IsFinite(litres) && litres is > 0 and <= 10):
                problems.Add(new Problem("scoop", "A scoop holds more than 0 and at most 10 L.", "Write its level volume, as in 5mL."));
                break;
            default:
                break;
        }
    }

    private static void Between(string field, int value, int least, int most, string example, List<Problem> problems)
    {
        if (value < least || value > most)
        {
            problems.Add(new Problem(field, $"{Say.Number(value)} is not from {Say.Number(least)} to {Say.Number(most)}.", $"Write a whole number, as in {example}."));
        }
    }

    private static bool IsMass(double grams) => double.IsFinite(grams) && grams is >= SmallestMass and <= LargestBatch;
}
