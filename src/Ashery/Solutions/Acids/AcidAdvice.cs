using Ashery.Cautions;
using Ashery.Materials;
using Ashery.Problems;

namespace Ashery.Solutions.Acids;

/// <summary>What to know about a dose of acid.</summary>
internal static class AcidAdvice
{
    // Said of every acid, the weak one too: even vinegar drives chlorine out of bleach.
    private static readonly string[] Always = ["acid-into-water", "acid-chlorine", "acid-air"];

    // Nature of a note, not a figure of chemistry: below this the pH stays where it was put (mg/L as CaCO3).
    private const double LittleAlkalinity = 5;

    // An injector manual's limit: "a maximum of 5 percent acid can be used" (University of Massachusetts Extension, seen).
    private const double StrongStock = 0.05;

    // mg/L P from acid alone: 2.25 fl oz of 75 % acid in 100 US gallons is the most the same page advises, which is 58 mg/L P.
    private const double MuchPhosphorus = 58;

    public static IReadOnlyList<string> Cautions(Acid acid)
    {
        var ids = new HashSet<string>(Always, StringComparer.Ordinal);
        ids.UnionWith(CautionIndex.Default.CautionsFor([MaterialCatalogue.Default.Find(acid.MaterialId)!], CautionUse.Dissolving, CautionUse.Storing));
        return [.. CautionIndex.Default.All.Where(caution => ids.Contains(caution.Id)).Select(static caution => caution.Id)];
    }

    public static IReadOnlyList<Problem> Notes(AcidReport report)
    {
        var notes = new List<Problem>();
        Law(report.Request.Bottle, notes);
        Rise(report, notes);
        Phosphate(report, notes);
        Citrate(report, notes);
        Stock(report, notes);
        if (report.PhForTenth.Less - report.PhForTenth.More > 0.5)
        {
            notes.Add(new(
                "dose",
                FormattableString.Invariant($"A tenth more or less acid gives pH {report.PhForTenth.More:0.0} or {report.PhForTenth.Less:0.0}: the curve is steep there."),
                "Add nine tenths, stir, measure the pH, then go on in drops.",
                Severity.Warning));
        }

        return notes;
    }

    internal static void Law(AcidBottle bottle, List<Problem> notes)
    {
        if (bottle.IsRestricted)
        {
            var licence = bottle.Strength <= bottle.Acid.LicenceUpTo ? ", with a licence where a state gives one" : string.Empty;
            notes.Add(new(
                "strength",
                FormattableString.Invariant($"In the European Union {bottle.Acid.Name} above {bottle.Acid.RestrictedAbove * 100:0.#} % by mass is an explosives precursor that the general public may not buy, keep or use{licence} (Regulation 2019/1148)."),
                "Ask what holds where you live; phosphoric or citric acid is not on that list.",
                Severity.Warning));
        }
    }

    private static void Rise(AcidReport report, List<Problem> notes)
    {
        var rise = report.Standing.PH - report.Mixed.PH;
        if (report.Mixed.Bicarbonate > LittleAlkalinity && rise > 0.1)
        {
            notes.Add(new(
                "standing",
                FormattableString.Invariant($"{report.Mixed.Bicarbonate:0} mg/L of alkalinity is left, so the pH rises as carbon dioxide leaves: {report.Mixed.PH:0.0} just mixed, about {report.Standing.PH:0.0} after standing open."),
                "What limes the pot is the alkalinity left, not the pH. Use the water the same day.",
                Severity.Note));
        }
    }

    private static void Phosphate(AcidReport report, List<Problem> notes)
    {
        if (report.Nutrients.P <= 0)
        {
            return;
        }

        if (report.Nutrients.P > MuchPhosphorus)
        {
            notes.Add(new(
                "phosphorus",
                FormattableString.Invariant($"This brings {report.Nutrients.P:0} mg/L of phosphorus; about {MuchPhosphorus:0} is the most that is advised from acid."),
                "Take part of the alkalinity with another acid, and leave phosphate out of the feed.",
                Severity.Warning));
        }

        foreach (var (stage, words) in new[] { (report.Mixed, "just mixed"), (report.Standing, "after standing open") })
        {
            if (stage.Index("brushite") is { } index && index > -0.3)
            {
                notes.Add(new(
                    "calcium phosphate",
                    index > 0
                        ? FormattableString.Invariant($"Calcium phosphate (brushite) may come out {words}: its index is {index:+0.0;-0.0}, above 0.")
                        : FormattableString.Invariant($"Calcium phosphate (brushite) is near coming out {words}: its index is {index:+0.0;-0.0}, at 0 it may."),
                    "In water this hard take nitric or sulfuric acid, or a lower pH.",
                    index > 0 ? Severity.Warning : Severity.Note));
                return;
            }
        }
    }

    private static void Citrate(AcidReport report, List<Problem> notes)
    {
        if (report.Request.Bottle.Acid.Id == "citric")
        {
            notes.Add(new(
                "citrate",
                FormattableString.Invariant($"Citrate holds {Math.Max(0, report.Mixed.Alkalinity - report.Mixed.Bicarbonate):0} mg/L of the alkalinity left. Microbes eat it within days and the alkalinity it stood for comes back."),
                "Use the water fresh; against lime in the pot a mineral acid lasts.",
                Severity.Note));
        }
    }

    private static void Stock(AcidReport report, List<Problem> notes)
    {
        if (report.Stock is { } stock && stock.StockStrength > StrongStock)
        {
            notes.Add(new(
                "ratio",
                FormattableString.Invariant($"The stock would hold {stock.StockStrength * 100:0} % acid; makers of injectors commonly allow 5 %."),
                "Take an injector with a smaller ratio, and read its manual on acids first.",
                Severity.Warning));
        }
    }
}
