using Ashery.Cautions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Solutions.Acids;

namespace Ashery.Cli.Verbs;

/// <summary>A dose of acid as a grower reads it.</summary>
internal static class AcidText
{
    public static void Write(Terminal terminal, AcidReport report, string water)
    {
        var page = new Page(terminal);
        var amount = report.Amount;
        var bottle = report.Request.Bottle;
        page.Heading($"{Dose(amount.MillilitresPerCan, amount.GramsPerCan)} of {Figures.Short(bottle.Strength * 100)} % {bottle.Acid.Name} in {Figures.Short(amount.Litres)} L of {SafeText.Of(water)} at {Figures.Short(report.Request.Water.Celsius)} °C.");
        if (report.Notes.Count > 0)
        {
            page.Blank();
        }

        foreach (var note in report.Notes)
        {
            page.Bullet($"{(note.Severity == Problems.Severity.Warning ? "Warning" : "Note")}: {note.Message} {note.WayOut}");
        }

        page.Blank();
        page.Fact("a litre of water", Both(amount.MillilitresPerLitre, amount.GramsPerLitre));
        page.Fact("100 L of water", Both(amount.MillilitresPer100Litres, amount.GramsPer100Litres));
        page.Fact("bottle", bottle.Density is { } density ? $"{Figures.Fixed(density, 3)} g/mL at 20 °C{(bottle.FromDensity ? ", from which the strength was read" : string.Empty)}" : "crystals, weighed");
        if (report.Stock is { } stock)
        {
            page.Fact($"stock for 1:{Figures.Short(stock.Ratio)}", $"{Both(stock.MillilitresPerLitreOfStock, stock.GramsPerLitreOfStock)} in a litre of stock, {Figures.Short(stock.StockStrength * 100)} % acid");
        }

        page.Fact("brings", Food(report.Nutrients));
        page.Fact("a tenth less or more", $"pH {Figures.Fixed(report.PhForTenth.Less, 2)} or {Figures.Fixed(report.PhForTenth.More, 2)}");
        page.Title("What becomes of the water");
        var table = new Table("when", ">pH", ">EC 25 °C", ">alkalinity", ">bicarbonate", ">calcite", ">brushite");
        Stage(table, "as it comes", report.Before);
        Stage(table, "just mixed", report.Mixed);
        Stage(table, "after standing", report.Standing);
        table.Write(terminal.Output, terminal.Width);
        page.Text("EC in mS/cm, alkalinity and bicarbonate in mg/L as CaCO3; calcite and brushite (calcium phosphate) as index: above 0 they may come out.", 2);
        page.Bullets("Mind", [.. report.Cautions.Select(static id => CautionIndex.Default.Find(id)!.Words)]);
    }

    private static void Stage(Table table, string when, AcidStage stage) => table.Add(
        when, Figures.Fixed(stage.PH, 2), Figures.Fixed(stage.EcAt25, 2), Figures.Fixed(stage.Alkalinity, 0), Figures.Fixed(stage.Bicarbonate, 0),
        Figures.Fixed(stage.Index("calcite"), 1), Figures.Fixed(stage.Index("brushite"), 1));

    private static string Dose(double? millilitres, double grams) => millilitres is { } ml ? $"{Figures.Short(ml)} mL ({Figures.Short(grams)} g)" : $"{Figures.Short(grams)} g";

    private static string Both(double? millilitres, double grams) => millilitres is { } ml ? $"{Figures.Short(ml)} mL, {Figures.Short(grams)} g" : $"{Figures.Short(grams)} g";

    private static string Food(AcidNutrients food) =>
        food.N > 0 ? $"{Figures.Short(food.N)} mg/L N, as nitrate"
        : food.P > 0 ? $"{Figures.Short(food.P)} mg/L P ({Figures.Short(food.P2O5)} as P2O5)"
        : food.S > 0 ? $"{Figures.Short(food.S)} mg/L S ({Figures.Short(food.SO4)} as sulfate)"
        : "no nutrient";
}
