using Ashery.Cautions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Targets;

namespace Ashery.Cli.Verbs;

/// <summary>Recipes for a target as a grower reads them: the answer, what to weigh, who brings what, then the others.</summary>
internal static class SolutionText
{
    public static void Write(Terminal terminal, TargetAnswer answer)
    {
        var page = new Page(terminal);
        page.Heading(Heading(answer));
        if (answer.OutOfReach is { } reach)
        {
            page.Text($"{reach.Message} {reach.WayOut}");
        }

        if (answer.Recipes.Count > 0)
        {
            Recipe(terminal, page, answer, answer.Recipes[0]);
            Others(terminal, page, answer);
        }

        page.Bullets("Notes", [.. answer.Problems.Select(static p => $"{(p.Severity == Severity.Warning ? "Warning, " : string.Empty)}{p.Field}: {p.Message} {p.WayOut}")]);
        page.Bullets("Assumed", answer.Assumed);
        if (answer.Recipes.Count > 0)
        {
            page.Bullets("Mind", [.. answer.Recipes[0].CautionIds.Select(static id => CautionIndex.Default.Find(id)!.Words)]);
        }
    }

    private static string Heading(TargetAnswer answer)
    {
        var water = SafeText.Of(answer.Request.WaterName);
        if (answer.Recipes.Count == 0)
        {
            return $"No recipe in {water}.";
        }

        var first = answer.Recipes[0];
        var proved = answer.Proved ? "the amounts are proved best" : "the amounts are not proved best";
        return $"{Parts(first)} a litre of {water}: EC {Figures.Fixed(first.Ec25, 2)} mS/cm, pH {Figures.Fixed(first.PH, 1)}, {Figures.Percent(first.Error, 1)} off the wished amounts on average; {proved}.";
    }

    private static string Parts(TargetRecipe recipe) =>
        string.Join(" + ", recipe.Parts.Select(static p => $"{Figures.Short(p.GramsPerLitre)} g {SafeText.Of(p.Material.Name)}"));

    private static void Recipe(Terminal terminal, Page page, TargetAnswer answer, TargetRecipe recipe)
    {
        page.Title($"For {Figures.Short(answer.Request.Litres)} L");
        var (bottles, steps) = (recipe.Parts.Any(static p => p.Millilitres is not null), recipe.Parts.Any(static p => p.Steps is not null));
        var table = new Table(["material", ">g", .. bottles ? [">mL"] : Array.Empty<string>(), ">g/L", .. steps ? [">steps"] : Array.Empty<string>()]);
        foreach (var part in recipe.Parts)
        {
            table.Add([
                SafeText.Of(part.Material.Name), Figures.Short(part.Grams), .. bottles ? [part.Millilitres is { } ml ? Figures.Short(ml) : string.Empty] : Array.Empty<string>(),
                Figures.Short(part.GramsPerLitre), .. steps ? [part.Steps is { } count ? Figures.Whole(count) : string.Empty] : Array.Empty<string>()]);
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        Nutrients(terminal, page, recipe);
        page.Title("What it becomes");
        page.Fact("just made", $"EC {Figures.Fixed(recipe.Can.Closed.Ec25, 2)} mS/cm, pH {Figures.Fixed(recipe.Can.Closed.PH, 2)}");
        page.Fact("after standing open", $"EC {Figures.Fixed(recipe.Can.Open.Ec25, 2)} mS/cm, pH {Figures.Fixed(recipe.Can.Open.PH, 2)}");
        page.Fact("comes out", Solids(recipe));
        page.Fact("cost", recipe.CostPerLitre is { } cost ? $"{Figures.Short(cost * answer.Request.Litres)} for the {Figures.Short(answer.Request.Litres)} L" : null);
        page.Fact("tried", recipe.Solutions == 1 ? "1 full solution" : $"{Figures.Whole(recipe.Solutions)} full solutions");
    }

    private static void Nutrients(Terminal terminal, Page page, TargetRecipe recipe)
    {
        page.Title("Who brings what, mg/L");
        var table = new Table(["nutrient", ">wished", ">water", .. recipe.Parts.Select(static (_, k) => ">" + Letter(k)), ">total", ">off"]);
        foreach (var row in recipe.Rows)
        {
            table.Add([
                row.Item.Symbol, Wished(row), Amount(row.Water), .. row.ByPart.Select(Amount), Figures.Short(Math.Round(row.Total, 3)),
                row.Wish is null ? string.Empty : Math.Abs(row.Deviation) < 0.0005 ? "0 %" : Figures.Percent(row.Deviation, 1)]);
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
        page.Text(string.Join(", ", recipe.Parts.Select(static (p, k) => $"{Letter(k)} {SafeText.Of(p.Material.Name)}")) + ".", 2, 2);
    }

    private static string Letter(int k) => ((char)('A' + k)).ToString();

    private static string Amount(double amount) => amount >= 0.0005 ? Figures.Short(Math.Round(amount, 3)) : string.Empty;

    private static string Wished(TargetRow row) => row switch
    {
        { Wish: null } => string.Empty,
        { Low: var low, High: var high } when low == high => Figures.Short(low),
        { Low: 0, High: var high } => "<=" + Figures.Short(high),
        { High: double.PositiveInfinity, Low: var low } => ">=" + Figures.Short(low),
        { Low: var low, High: var high } => $"{Figures.Short(low)}..{Figures.Short(high)}",
    };

    private static string Solids(TargetRecipe recipe)
    {
        var quick = recipe.Can.Minerals.Where(static m => m.Millimoles > 0).Select(static m => $"{m.Mineral.Id} {Figures.Short(m.Grams)} g/L within hours").ToList();
        var slow = recipe.Can.Minerals.Where(static m => m.Mineral.Slow && m.Index > 0).Select(static m => m.Mineral.Id).ToList();
        return (quick.Count > 0 ? string.Join(", ", quick) : "nothing quick") + (slow.Count > 0 ? $"; over days perhaps {string.Join(", ", slow)}" : string.Empty);
    }

    private static void Others(Terminal terminal, Page page, TargetAnswer answer)
    {
        if (answer.Recipes.Count < 2)
        {
            return;
        }

        page.Title("Other materials");
        var table = new Table(">off", ">EC", ">pH", "g a litre");
        foreach (var recipe in answer.Recipes.Skip(1))
        {
            table.Add(Figures.Percent(recipe.Error, 1), Figures.Fixed(recipe.Ec25, 2), Figures.Fixed(recipe.PH, 1), Parts(recipe));
        }

        table.Write(terminal.Output, terminal.Width, indent: 2);
    }
}
