using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Gardens;

namespace Ashery.Cli.Verbs;

/// <summary>What each pot gets in one round: dry by grams, then by the can and the sprayer with their strengths.</summary>
internal static class YearRounds
{
    public static void Write(Terminal terminal, IReadOnlyList<PlannedFeedJson> round, Dictionary<string, string> names)
    {
        foreach (var way in round.GroupBy(static f => Way(f.Method)))
        {
            var pots = way.Select(f => $"{Amount(f)} {string.Join(" and ", f.Pots.Select(id => SafeText.Of(names.GetValueOrDefault(id, id))))}");
            Paragraph.Write(terminal.Output, $"    {way.Key}{string.Join("; ", pots)}", terminal.Width, hanging: 6);
        }
    }

    // What all pots of the line share.
    private static string Way(MethodJson method) => method switch
    {
        { Predilution: { } p } => $"{Figures.Short(p.Grams)} g in {Figures.Short(p.WaterMillilitres)} mL of water, of it: ",
        { By: "can", Can: { } can } => $"can of {Figures.Short(can.GramsPer10Litres)} g in 10 L{(can.Waterings > 1 ? $", over {Figures.Whole(can.Waterings)} waterings" : string.Empty)}: ",
        { By: "spray", Spray: { } spray } => $"spray of {Figures.Short(spray.GramsPerLitre)} g in 1 L: ",
        _ => string.Empty,
    };

    private static string Amount(PlannedFeedJson feed) => feed.Method switch
    {
        { Predilution: { } p } => $"{Figures.Short(p.MillilitresPerPot)} mL ({DoseText.Grams(feed.Grams)} g)",
        { By: "can", Can: { } can } => $"{Figures.Short(can.LitresPerPot)} L ({DoseText.Grams(feed.Grams)} g)",
        { By: "spray", Spray: { } spray } => $"{Figures.Short(spray.MillilitresPerPot)} mL ({DoseText.Grams(feed.Grams)} g)",
        { Scoops: { } scoops } => $"{Figures.Short(scoops)} scoops ({DoseText.Grams(feed.Grams)} g)",
        _ => $"{DoseText.Grams(feed.Grams)} g",
    };
}
