using Ashery.Crops;
using Ashery.RootZone.Feeding;

namespace Ashery.RootZone.Draws;

/// <summary>All that is uncertain about a pot besides the weather: one place a figure, each in (0, 1) by its share of draws below.</summary>
public sealed class DrawSpace
{
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);

    private DrawSpace(IReadOnlyList<UncertainFigure> figures)
    {
        Figures = figures;
        for (var i = 0; i < figures.Count; i++)
        {
            places.Add(figures[i].Id, i);
        }
    }

    public IReadOnlyList<UncertainFigure> Figures { get; }

    public int Count => Figures.Count;

    /// <summary>Every unknown that touches this pot; figures without a spread are left out.</summary>
    public static DrawSpace Of(PotScenario scenario)
    {
        List<UncertainFigure> all = [.. Constants(scenario), .. OfMedium(scenario), .. OfStart(scenario), .. OfPlace(scenario), .. DrawnFeeds.Figures(scenario)];
        return new([.. all.Where(static f => f.Spreads)]);
    }

    /// <summary>These alone.</summary>
    public static DrawSpace OfFigures(IReadOnlyList<UncertainFigure> figures) => new([.. figures]);

    /// <summary>The same without figures the grower knows.</summary>
    public DrawSpace Without(Func<UncertainFigure, bool> known) => new([.. Figures.Where(f => !known(f))]);

    /// <summary>The same with another spread of one figure.</summary>
    public DrawSpace With(UncertainFigure figure) => new([.. Figures.Where(f => f.Id != figure.Id), .. figure.Spreads ? [figure] : Array.Empty<UncertainFigure>()]);

    /// <summary>The same with the spread of one feed's analysis as its bag or the market tells, factors around what is reckoned with.</summary>
    public DrawSpace WithAnalysis(PotScenario scenario, FeedContents feed, string name, double low, double high)
    {
        var id = DrawnFeeds.AnalysisId(scenario, feed);
        return PlaceOf(id) < 0 ? this : With(new(id, "analysis of " + name, UncertainGroup.FeedAnalysis, Math.Min(1, low), 1, Math.Max(1, high)));
    }

    /// <summary>Place of a figure, or -1.</summary>
    public int PlaceOf(string id) => places.TryGetValue(id, out var place) ? place : -1;

    /// <summary>Drawn value of a figure; the fallback where it is not drawn.</summary>
    internal double At(string id, ReadOnlySpan<double> shares, double fallback) => places.TryGetValue(id, out var i) ? Figures[i].At(shares[i]) : fallback;

    private static IEnumerable<UncertainFigure> Constants(PotScenario scenario)
    {
        var constants = RootZoneConstants.Default;
        var unused = Unused(scenario);
        foreach (var group in SpreadRows.Groups.Where(static g => g.Id != "none"))
        {
            foreach (var id in group.Constants.Where(id => !unused.Contains(id)))
            {
                var row = constants.Row(id);
                if (row is { Low: { } low, High: { } high })
                {
                    yield return new(id, ConstantWords.Of(id), Enum.Parse<UncertainGroup>(group.Id), low, row.Value, high);
                }
            }
        }
    }

    private static HashSet<string> Unused(PotScenario scenario)
    {
        HashSet<string> unused = ["nitrogen-light", "nitrogen-medium", "nitrogen-heavy"];
        if (scenario.Plant.NitrogenWanted is null)
        {
            unused.Remove(scenario.Plant.Feeder switch { FeederClass.Light => "nitrogen-light", FeederClass.Heavy => "nitrogen-heavy", _ => "nitrogen-medium" });
        }

        if (scenario.Plant.FlowerLoad <= 0)
        {
            unused.Add("flower-demand");
        }

        return unused;
    }

    private static IEnumerable<UncertainFigure> OfMedium(PotScenario scenario) =>
        DrawnMedium.Parts.Select(p => new UncertainFigure(p.Id, p.Name, UncertainGroup.Medium, p.Of(scenario.Medium).Low, p.Of(scenario.Medium).Value, p.Of(scenario.Medium).High));

    private static IEnumerable<UncertainFigure> OfStart(PotScenario scenario)
    {
        var (start, medium) = (scenario.Start, scenario.Medium);
        yield return SpreadRows.Of("start-strength");
        yield return SpreadRows.Of("start-water");
        yield return start.PH is null ? new("start-ph", "pH of the fresh medium", UncertainGroup.Start, medium.StartPh.Low, medium.StartPh.Value, medium.StartPh.High) : SpreadRows.Of("start-ph");
        yield return start.LimeGramsPerLitre is null ? new("start-lime", "lime in the fresh medium", UncertainGroup.Start, medium.Lime.Low, medium.Lime.Value, medium.Lime.High) : SpreadRows.Of("start-lime");
    }

    private static IEnumerable<UncertainFigure> OfPlace(PotScenario scenario)
    {
        yield return SpreadRows.Of("place-drying");
        yield return SpreadRows.Of("plant-canopy");
        yield return SpreadRows.Of("plant-most");
        yield return SpreadRows.Of("plant-vigour");
        if (scenario.Exposure.RainKeptOff < 1)
        {
            yield return SpreadRows.Of("place-rain");
        }

        if (scenario.Irrigation.Kind != IrrigationKind.None)
        {
            yield return SpreadRows.Of("water-strength");
            yield return SpreadRows.Of(scenario.Irrigation.Litres is null ? "watering-leaching" : "watering-amount");
            if (scenario.Irrigation.Kind == IrrigationKind.ByWeight)
            {
                yield return SpreadRows.Of("watering-trigger");
            }
        }
    }
}
