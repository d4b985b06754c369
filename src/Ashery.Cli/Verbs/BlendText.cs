using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Compatibility;
using Ashery.Exchange.Mix;

namespace Ashery.Cli.Verbs;

/// <summary>One blend as text, in full or in a line.</summary>
internal static class BlendText
{
    public static void Write(Terminal terminal, Page page, string title, BlendJson blend, MixJson answer)
    {
        page.Title($"{title}: {Grams(blend.BatchGrams)}");
        Amounts(blend).Write(terminal.Output, terminal.Width, indent: 2);
        page.Blank();
        page.Fact("grade, label basis", Contents(blend.Grade));
        page.Fact("as elements, %", Contents(blend.Elements));
        page.Fact("nitrogen, %", Nitrogen(blend.Nitrogen));
        page.Fact("ratio error", $"{Figures.Percent(blend.RatioError)} {answer.ErrorMeasure}; {Figures.Percent(blend.LargestDeviation)} {answer.SecondMeasure}");
        page.Fact("strength", $"{Figures.Fixed(blend.Strength, 2)} % N + P2O5 + K2O");
        page.Fact("cost", blend.Cost is { } cost ? $"{Figures.Fixed(cost, 2)} a kg; {Figures.Fixed(blend.CostPerKgNutrient, 2)} a kg of nutrient" : "unknown: a material has no price");
        page.Fact("salt index", blend.SaltIndex is { } salt ? $"{Figures.Short(salt)} by weight, sodium nitrate = 100" : "unknown: a part has no published figure");
        page.Fact("osmolality", blend.OsmolalityPerGram is { } osm ? $"{Figures.Short(osm)} mOsm/kg from 1 g in 1 L of water, ideal" : "unknown: a part does not simply dissolve");
        page.Fact("lime equivalent", Lime(blend.LimeEquivalent));
        page.Fact("keeps", $"{Keeps(blend.Storage.Class)}. {blend.Storage.Reason} [{blend.Storage.Source}]");
        if (blend.Uncertainty is { } spread)
        {
            page.Fact("over draws", $"ratio error median {Figures.Percent(spread.Median)}, 95th percentile {Figures.Percent(spread.Percentile95)}, worst case {Figures.Percent(spread.WorstCase)}; N {Figures.Fixed(spread.NitrogenLow, 2)} to {Figures.Fixed(spread.NitrogenHigh, 2)} %");
        }

        MixText.Problems(page, "What may go wrong", blend.Notes);
        Together(page, blend.Pairs);
        page.Bullets("Take care", [.. blend.Cautions.Select(static c => c.Words)]);
    }

    /// <summary>The same materials in the same shares.</summary>
    public static bool Same(BlendJson a, BlendJson b) =>
        a.Parts.Count == b.Parts.Count && a.Parts.All(p => b.Parts.Any(q => q.Material == p.Material && Math.Abs(q.Share - p.Share) < 1e-9));

    /// <summary>Amounts and grade only.</summary>
    public static void WriteShort(Terminal terminal, Page page, string title, BlendJson blend)
    {
        page.Title(title);
        Amounts(blend).Write(terminal.Output, terminal.Width, indent: 2);
        page.Blank();
        page.Fact("grade, label basis", Contents(blend.Grade));
        page.Fact("strength", $"{Figures.Fixed(blend.Strength, 2)} % N + P2O5 + K2O");
    }

    public static Table List(IReadOnlyList<BlendJson> blends, MixJson answer)
    {
        var priced = blends.Any(static b => b.CostPerKgNutrient is not null);
        var ranked = answer.Asked.RankedBy == Recipes.RankBy.Percentile95;
        var table = new Table([">#", ">error", .. ranked ? [">95th"] : Array.Empty<string>(), "grade", ">strength", .. priced ? [">cost/kg nutr."] : Array.Empty<string>(), "blend"]);
        for (var i = 0; i < blends.Count; i++)
        {
            var b = blends[i];
            table.Add(
            [
                Figures.Whole(i + 1),
                Figures.Percent(b.RatioError),
                .. ranked ? [Figures.Percent(b.Uncertainty?.Percentile95)] : Array.Empty<string>(),
                Grade(b),
                Figures.Fixed(b.Strength, 1) + " %",
                .. priced ? [Figures.Fixed(b.CostPerKgNutrient, 2)] : Array.Empty<string>(),
                Parts(b, answer),
            ]);
        }

        return table;
    }

    public static string Grade(BlendJson blend) =>
        $"{Figures.Fixed(blend.Grade["N"], 1)}-{Figures.Fixed(blend.Grade["P2O5"], 1)}-{Figures.Fixed(blend.Grade["K2O"], 1)}";

    /// <summary>Scoops where scooped, grams of a batch where one was asked for, else percent.</summary>
    public static string Parts(BlendJson blend, MixJson answer) => string.Join(" + ", blend.Parts.Select(p =>
        p.Scoops is { } scoops ? $"{Figures.Whole(scoops)} x {p.Material}"
        : answer.Asked.BatchTo is null ? $"{Figures.Percent(p.Share, 1)} {p.Material}"
        : $"{Grams(p.Grams)} {p.Material}"));

    private static Table Amounts(BlendJson blend)
    {
        var scooped = blend.Parts.Any(static p => p.Scoops is not null);
        var priced = blend.Parts.Any(static p => p.Cost is not null);
        var table = new Table(["material", .. scooped ? [">scoops"] : Array.Empty<string>(), ">g", ">share", ">about mL", .. priced ? [">cost"] : Array.Empty<string>()]);
        foreach (var p in blend.Parts)
        {
            table.Add(
            [
                $"{SafeText.Of(p.Name)} ({p.Material})",
                .. scooped ? [p.Scoops is { } s ? Figures.Whole(s) : Figures.Unknown] : Array.Empty<string>(),
                Figures.Fixed(p.Grams, 2),
                Figures.Percent(p.Share, 3),
                Figures.Short(p.Millilitres),
                .. priced ? [Figures.Fixed(p.Cost, 2)] : Array.Empty<string>(),
            ]);
        }

        return table;
    }

    private static void Together(Page page, IReadOnlyList<PairJson> pairs)
    {
        var telling = pairs.Where(static p => p.DryToday != Verdict.Fine || p.DryStored != Verdict.Fine || p.InSolution != Verdict.Fine).ToList();
        if (pairs.Count == 0)
        {
            return;
        }

        page.Title("Together");
        if (telling.Count == 0)
        {
            page.Bullet("Every pair is fine dry today, dry and stored, and in concentrated solution.");
        }

        foreach (var p in telling)
        {
            page.Bullet($"{p.A} + {p.B}: dry today {PairTable.Word(p.DryToday)}, stored {PairTable.Word(p.DryStored)}, in solution {PairTable.Word(p.InSolution)}. {p.Reason}{Limit(p)} [{p.Source}]");
        }
    }

    private static string Limit(PairJson p)
    {
        var limits = new[] { p.Details.DryToday.Limit, p.Details.DryStored.Limit, p.Details.InSolution.Limit }.OfType<string>().Distinct().ToList();
        return limits.Count == 0 ? string.Empty : $" Limit: {string.Join("; ", limits)}";
    }

    private static string Lime(double? lime) => lime switch
    {
        null => "unknown: a part has no figure",
        > 0 and var l => $"{Figures.Short(l)} kg CaCO3 a kg neutralises it: acidifies",
        0 => "0: neutral",
        { } l => $"{Figures.Short(l)} kg CaCO3 a kg: sweetens, not acidifying",
    };

    private static string Keeps(StorageClass storage) => storage switch
    {
        StorageClass.KeepsDry => "In a closed bag in a dry room",
        StorageClass.Airtight => "Airtight only",
        StorageClass.OnTheDay => "Not at all: mix on the day and use it up",
        StorageClass.Never => "Never mix",
        _ => "Not known",
    };

    private static string Nitrogen(NitrogenFormsJson n)
    {
        (string Name, double Percent)[] forms =
            [("ammonium", n.Ammonium), ("nitrate", n.Nitrate), ("urea", n.Urea), ("organic", n.Organic), ("slow synthetic", n.SlowSynthetic)];
        var present = forms.Where(static f => f.Percent > 0).Select(static f => $"{f.Name} {Figures.Fixed(f.Percent, 2)}").ToList();
        return present.Count == 0 ? "none" : string.Join(", ", present);
    }

    private static string Contents(IReadOnlyDictionary<string, double> contents) => string.Join(", ", contents.Select(static c => $"{c.Key} {Figures.Fixed(c.Value, c.Value is > 0 and < 0.1 ? 4 : 2)}"));

    private static string Grams(double grams) => grams >= 10_000 ? $"{Figures.Short(grams / 1000)} kg" : $"{grams.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)} g";
}
