using Ashery.Gardens;
using Ashery.Pots;

namespace Ashery.Cards.Wording;

/// <summary>The dose table: pots that get the same stand in one row, in the order they came.</summary>
internal static class DoseWords
{
    public static TableBlock Table(IReadOnlyList<PotDose> doses, GardenSettings settings)
    {
        var scoops = doses.Any(d => d.Dose.Scoops is not null);
        var wet = doses.Any(d => Wet(d.Dose, settings).Strength.Length > 0);
        List<TableColumn> columns = [new("Pots"), new("Size", true), new("Dry", true)];
        columns.AddRange(scoops ? [new("Scoops", true)] : []);
        columns.AddRange(wet ? [new("Or dissolved", true), new("Give", true)] : []);
        columns.Add(new("N rate"));
        var rows = Groups(doses).Select(g =>
        {
            var dose = g[0].Dose;
            var isDry = dose is { Method: DoseMethod.TopDress, Predilution: null };
            List<string> cells = [string.Join(", ", g.Select(Name)), Amounts.Litres(g[0].Pot.Volume.Litres, settings), dose.Grams == 0 ? "nothing" : isDry ? Amounts.Mass(dose.Grams, settings) : "-"];
            cells.AddRange(scoops ? [isDry && dose.Scoops is { } n ? Figures.Short(n, 2) : "-"] : []);
            var (strength, give) = Wet(dose, settings);
            cells.AddRange(wet ? [strength.Length > 0 ? strength : "-", give.Length > 0 ? give : "-"] : []);
            cells.Add(dose.RateBand);
            return (IReadOnlyList<string>)cells;
        });
        return new("Dose", columns, [.. rows]);
    }

    /// <summary>How strong it is dissolved, and how much of that a pot gets; empty where it is only given dry.</summary>
    public static (string Strength, string Give) Wet(Dose dose, GardenSettings settings) => dose switch
    {
        { Grams: 0 } => ("", ""),
        { Predilution: { } p } => ($"{Figures.Grams(p.Grams)} in {Amounts.Millilitres(p.WaterMillilitres, settings)}", Amounts.Millilitres(p.MillilitresPerPot, settings)),
        { Method: DoseMethod.Spray, Spray: { } s } => ($"spray, {Amounts.Spray(s.GramsPerLitre, settings)}", Amounts.Millilitres(s.MillilitresPerPot, settings)),
        { Can: { } c } => (Amounts.Can(c.GramsPer10Litres, settings), (c.Waterings > 1 ? FormattableString.Invariant($"{c.Waterings} × ") : "") + Amounts.Litres(c.LitresPerPot, settings)),
        _ => ("", ""),
    };

    /// <summary>Pots of the same size with the same dose.</summary>
    public static IReadOnlyList<IReadOnlyList<PotDose>> Groups(IReadOnlyList<PotDose> doses) =>
        [.. doses.GroupBy(d => (d.Pot.Volume.Litres, d.Dose.Grams, d.Dose.Scoops, d.Dose.Method, d.Dose.Can, d.Dose.Spray, d.Dose.Predilution, d.Dose.RateBand))
            .Select(g => (IReadOnlyList<PotDose>)[.. g])];

    /// <summary>The group with most pots; the one of middling size when several have as many.</summary>
    public static IReadOnlyList<PotDose> Commonest(IReadOnlyList<PotDose> doses)
    {
        var groups = Groups(doses);
        var most = groups.Max(g => g.Sum(d => d.Pot.Count));
        var common = groups.Where(g => g.Sum(d => d.Pot.Count) == most).OrderBy(g => g[0].Pot.Volume.Litres).ToList();
        return common[common.Count / 2];
    }

    /// <summary>In one line, for a label.</summary>
    public static string How(Dose dose, GardenSettings settings)
    {
        var (strength, give) = Wet(dose, settings);
        return dose switch
        {
            { Grams: 0 } => "nothing now",
            { Method: DoseMethod.TopDress, Predilution: null } when strength.Length == 0 => "dry, watered in at once",
            { Method: DoseMethod.TopDress, Predilution: null } => $"dry, watered in at once; or {strength} of water, {give} a pot",
            _ => $"{strength} of water, {give} a pot",
        };
    }

    /// <summary>How to give it, said once under the table.</summary>
    public static string HowTo(IReadOnlyList<PotDose> doses)
    {
        var given = doses.Where(d => d.Dose.Grams > 0).ToList();
        var dry = given.Any(d => d.Dose is { Method: DoseMethod.TopDress, Predilution: null });
        var wet = given.Any(d => d.Dose.Predilution is not null || d.Dose.Can is not null);
        var spray = given.Any(d => d.Dose.Method == DoseMethod.Spray);
        return string.Join(' ', new[]
        {
            "Early in the morning, onto a moist medium.",
            dry ? "Dry: strew it evenly, off stem and leaves, and water it in at once." : "",
            wet ? "Dissolved: stir until clear and pour it over the whole surface; 2 × is at two waterings." : "",
            spray ? "Spray: both sides of the leaves, in the cool, until they just begin to drip." : "",
            "N rate: the season's nitrogen against the published low, medium and high rates.",
        }.Where(s => s.Length > 0));
    }

    /// <summary>What the library noted about these doses, each thing once.</summary>
    public static IReadOnlyList<string> Notes(IReadOnlyList<PotDose> doses) =>
        [.. doses.SelectMany(d => d.Dose.Notes).Select(n => $"{n.Message} {n.WayOut}".Trim()).Distinct(StringComparer.Ordinal)];

    private static string Name(PotDose d) => d.Pot.Count > 1 ? FormattableString.Invariant($"{d.Pot.Name} × {d.Pot.Count}") : d.Pot.Name;
}
