using Ashery.Cautions;
using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Can;

namespace Ashery.Cli.Verbs;

/// <summary>A can as a grower reads it: the answer, what to watch, nutrients, what may come out, the order, the cold, then the ions.</summary>
internal static class CanText
{
    public static void Write(Terminal terminal, CanReport report)
    {
        var page = new Page(terminal);
        page.Heading($"EC {Figures.Fixed(report.State.Ec25, 2)} mS/cm at 25 °C, pH {Figures.Fixed(report.State.PH, 1)} in {SafeText.Of(report.Request.WaterName)} at {Figures.Short(report.Request.Celsius)} °C, {(report.Request.Air == Air.Open ? "left open" : "closed")}.");
        Notes(page, report);
        page.Blank();
        Facts(page, report);
        Nutrients(terminal, page, report);
        Solids(terminal, page, report);
        Order(page, report);
        Ions(terminal, page, report);
        page.Bullets("Assumed", report.Assumed);
        page.Bullets("Mind", Words(report));
    }

    private static void Notes(Page page, CanReport report)
    {
        if (report.Notes.Count > 0)
        {
            page.Blank();
        }

        foreach (var note in report.Notes)
        {
            page.Bullet($"{(note.Severity == Severity.Warning ? "Warning" : "Note")}: {note.Message} {note.WayOut}");
        }
    }

    private static void Facts(Page page, CanReport report)
    {
        var state = report.State;
        page.Fact("added", string.Join(" + ", report.Request.Additions.Select(static a => $"{Figures.Short(a.Grams)} g {a.Material.Name}")) + " a litre");
        page.Fact("EC at " + Figures.Short(report.Request.Celsius) + " °C", $"{Figures.Fixed(state.Ec, 2)} mS/cm");
        page.Fact("fresh, closed", $"pH {Figures.Fixed(report.Closed.PH, 2)}, EC {Figures.Fixed(report.Closed.Ec25, 2)} mS/cm");
        page.Fact("after standing open", $"pH {Figures.Fixed(report.Open.PH, 2)}, EC {Figures.Fixed(report.Open.Ec25, 2)} mS/cm");
        page.Fact("alkalinity left", $"{Figures.Short(Math.Round(state.Alkalinity) + 0.0)} mg/L as CaCO3");
        page.Fact("free ammonia", report.Nutrients.Ammonium > 0 ? $"{Figures.Fixed(state.FreeAmmonia, 2)} mg/L of N" : null);
        page.Fact("osmotic potential", $"{Figures.Fixed(state.OsmoticPotential, 3)} MPa");
        page.Fact("ionic strength", $"{Figures.Short(state.Solution.IonicStrength)} mol/kg");
        page.Fact("how cold", Cold(report.Cold));
    }

    private static string Cold(ColdLimit cold) => cold switch
    {
        { Celsius: null, First: { } first } => $"{first} is past its limit already at {Figures.Short(cold.FromCelsius)} °C",
        { First: { } first, Celsius: { } least } => $"down to {Figures.Fixed(least, 0)} °C; colder, {first} comes out",
        _ => "stays clear down to 0 °C",
    };

    private static void Nutrients(Terminal terminal, Page page, CanReport report)
    {
        page.Title("Nutrients, mg/L");
        var table = new Table("nutrient", ">total", ">from the water", ">on the label");
        foreach (var row in report.Nutrients.Rows)
        {
            var basis = LabelBasis.ElementPerLabel(row.Nutrient) == 1 ? string.Empty : $"{Figures.Three(row.OnLabelBasis)} {LabelBasis.Symbol(row.Nutrient)}";
            table.Add(row.Nutrient.ToString(), Figures.Three(row.Total), row.FromWater > 0 ? Figures.Three(row.FromWater) : string.Empty, basis);
            if (row.Nutrient == Nutrient.N)
            {
                Form("  as nitrate", report.Nutrients.Nitrate);
                Form("  as ammonium", report.Nutrients.Ammonium);
                Form("  as urea", report.Nutrients.Urea);
            }
        }

        table.Write(terminal.Output, terminal.Width);

        void Form(string name, double amount)
        {
            if (amount > 0)
            {
                table.Add(name, Figures.Three(amount), string.Empty, string.Empty);
            }
        }
    }

    private static void Solids(Terminal terminal, Page page, CanReport report)
    {
        if (report.Minerals.Count == 0)
        {
            return;
        }

        page.Title("What may come out (index above 0)");
        var table = new Table("solid", ">index", "speed", ">g/L", ">mmol/L");
        foreach (var mineral in report.Minerals)
        {
            var (grams, millimoles) = mineral.Mineral.Slow ? (mineral.MayGrams, mineral.MayMillimoles) : (mineral.Grams, mineral.Millimoles);
            table.Add(mineral.Mineral.Id, Figures.Fixed(mineral.Index, 2), mineral.Mineral.Slow ? "slow, may" : "quick",
                millimoles > 0 ? Figures.Fixed(grams, 3) : string.Empty, millimoles > 0 ? Figures.Fixed(millimoles, 2) : string.Empty);
        }

        table.Write(terminal.Output, terminal.Width);
    }

    private static void Order(Page page, CanReport report)
    {
        if (report.Order.Steps.Count < 2)
        {
            return;
        }

        page.Title("Dissolve in this order");
        var number = 0;
        foreach (var step in report.Order.Steps)
        {
            var nearest = step.Nearest is { } solid ? $" {(step.Index > 0 ? "Past its limit then" : "Nearest to coming out then")}: {solid}, index {Figures.Fixed(step.Index, 1)}." : string.Empty;
            page.Text($"{Figures.Whole(++number)}. {SafeText.Of(step.Addition.Material.Name)}: {step.Reason}{nearest}", 2, 5);
        }

        page.Text(report.Order.Basis, 2, 2);
    }

    private static void Ions(Terminal terminal, Page page, CanReport report)
    {
        page.Title("Ions, molecules and pairs, µmol in a kg of water (below 0.1 left out)");
        var table = new Table("species", ">µmol/kg", ">log10 activity");
        foreach (var species in report.State.Solution.Species.OrderByDescending(static s => s.Molality))
        {
            if (species.Molality >= 1e-7)
            {
                table.Add(species.Species.Id, Micromoles(species.Molality), Figures.Fixed(species.Log10Activity, 2));
            }
        }

        table.Write(terminal.Output, terminal.Width);
    }

    private static string Micromoles(double molality) => molality < 1e-5 ? Figures.Fixed(molality * 1e6, molality < 1e-6 ? 1 : 2) : Figures.Three(molality * 1e6);

    private static List<string> Words(CanReport report)
    {
        var words = new List<string>();
        foreach (var id in report.CautionIds)
        {
            words.Add(CautionIndex.Default.Find(id)!.Words);
        }

        return words;
    }
}
