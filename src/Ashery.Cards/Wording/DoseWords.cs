using Ashery.Gardens;
using Ashery.Pots;

namespace Ashery.Cards.Wording;

/// <summary>The dose table: pots that get the same stand in one row, in the order they came.</summary>
internal static class DoseWords
{
    public static TableBlock Table(IReadOnlyList<PotDose> doses, GardenSettings settings)
    {
        var scoops = doses.Any(d => d.Dose.Scoops is not null);
        List<TableColumn> columns = [new("Pots"), new("Size", true), new("A pot", true)];
        columns.AddRange(scoops ? [new("Scoops", true)] : []);
        columns.Add(new("How"));
        var rows = Groups(doses).Select(g =>
        {
            List<string> cells = [string.Join(", ", g.Select(Name)), Units.Litres(g[0].Pot.Volume.Litres, settings), Figures.Grams(g[0].Dose.Grams)];
            cells.AddRange(scoops ? [g[0].Dose.Scoops is { } n ? Figures.Short(n, 2) : "-"] : []);
            cells.Add(How(g[0].Dose, settings));
            return (IReadOnlyList<string>)cells;
        });
        return new("Dose", columns, [.. rows]);
    }

    /// <summary>Pots of the same size with the same dose.</summary>
    public static IReadOnlyList<IReadOnlyList<PotDose>> Groups(IReadOnlyList<PotDose> doses) =>
        [.. doses.GroupBy(d => (d.Pot.Volume.Litres, d.Dose.Grams, d.Dose.Scoops, d.Dose.Can, d.Dose.Predilution)).Select(g => (IReadOnlyList<PotDose>)[.. g])];

    /// <summary>The group with most pots; the first of them when several have as many.</summary>
    public static IReadOnlyList<PotDose> Commonest(IReadOnlyList<PotDose> doses) => Groups(doses).MaxBy(g => g.Sum(d => d.Pot.Count))!;

    public static string How(Dose dose, GardenSettings settings) => dose switch
    {
        { Grams: 0 } => "nothing now",
        { Predilution: { } p } => $"{Figures.Grams(p.Grams)} in {Units.Millilitres(p.WaterMillilitres, settings)} of water, {Units.Millilitres(p.MillilitresPerPot, settings)} a pot",
        { Can: { } c } => $"{Units.Can(c.GramsPer10Litres, settings)}, {Units.Litres(c.LitresPerPot, settings)} a pot",
        _ => "dry",
    };

    /// <summary>How to give it, said once under the table.</summary>
    public static string HowTo(IReadOnlyList<PotDose> doses)
    {
        var dry = doses.Any(d => d.Dose is { Grams: > 0, Predilution: null, Can: null });
        var wet = doses.Any(d => d.Dose.Predilution is not null || d.Dose.Can is not null);
        return string.Join(' ', new[]
        {
            "Early in the morning, onto a moist medium.",
            dry ? "Dry: strew it evenly, off stem and leaves, and water it in at once." : "",
            wet ? "Dissolved: stir until clear and pour it over the whole surface." : "",
        }.Where(s => s.Length > 0));
    }

    private static string Name(PotDose d) => d.Pot.Count > 1 ? FormattableString.Invariant($"{d.Pot.Name} × {d.Pot.Count}") : d.Pot.Name;
}
