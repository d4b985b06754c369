using Ashery.Exchange.Trials;
using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Trials;
using Ashery.Trials.Designs;
using Ashery.Web.Forms;

namespace Ashery.Web.Pages.Trials;

/// <summary>The form of the trials page, which lives in the address, as a trial.</summary>
internal sealed class TrialDesk(Garden garden)
{
    /// <summary>Fewer than the usual ten thousand, since the page reckons anew at each change; good to about a point and a half.</summary>
    public const int Draws = 4000;

    private const int LongestName = 80;

    /// <summary>The form with what an address leaves out filled in.</summary>
    public Draft Complete(Draft typed)
    {
        if (typed.IsEmpty)
        {
            typed = typed.Set("p", [.. garden.Pots.Select(static p => p.Id)]);
        }

        foreach (var (name, value) in new[]
        {
            ("name", "My trial"), ("feeds", "usual feed\nnew mix"), ("compare", "first"), ("kind", "count"), ("what", typed["kind"] == "measurement" ? "height" : "open flowers"),
            ("mean", "20"), ("difference", "40"), ("spread", "20"), ("power", "80"), ("looks", "1"), ("seed", "1"),
        })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, value);
        }

        return typed;
    }

    /// <summary>The trial; problems at the fields of the form.</summary>
    public Result<Trial> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var count = typed["kind"] != "measurement";
        var feeds = typed["feeds"].Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (feeds.FirstOrDefault(static f => f.Length > LongestName) is not null)
        {
            read.Add("feeds", "A feed's name is longer than 80 signs.", "Shorten it.");
        }

        var name = read.Text("name", "A name", LongestName);
        var what = read.Text("what", "What is counted or measured", LongestName);
        var mean = count ? read.Required("mean", 0.1, 10_000, "20") : 20;
        var difference = read.Required("difference", -99, 900, "40");
        var spread = read.Required("spread", count ? 0 : 1, 300, "20");
        var power = read.Required("power", 50, 99.9, "80");
        var looks = read.Whole("looks", 1, 10, "1");
        var seed = read.Whole("seed", 0, 999_999, "1");
        var pots = Pots(typed, read);
        if (!read.Fine)
        {
            return Result.Fail<Trial>(read.Problems);
        }

        return Result.Of(new Trial
        {
            Name = name,
            Measure = new(count ? MeasureKind.Count : MeasureKind.Measurement, what, count ? "" : typed["unit"].Length > 20 ? typed["unit"][..20] : typed["unit"]),
            Treatments = [.. feeds.Select((f, i) => new Treatment(TrialFile.Key(f), f, i == 0 && typed["compare"] != "all"))],
            Wish = new() { Mean = mean, Difference = difference / 100, Spread = spread / 100, Power = power / 100 },
            Pots = pots,
            Seed = seed,
            Blind = typed.Has("blind"),
            Looks = looks,
        });
    }

    public Result<TrialPlan> Plan(Draft typed)
    {
        var trial = Read(typed);
        return trial.Ok ? TrialDesign.Plan(trial.Value, Draws) : Result.Fail<TrialPlan>(trial.Problems);
    }

    private IReadOnlyList<TrialPot> Pots(Draft typed, FieldReader read)
    {
        if (typed.Has("count"))
        {
            return TrialPots.Numbered(read.Whole("count", 1, Trial.MostPots, "12"));
        }

        var chosen = typed.All("p").ToHashSet(StringComparer.Ordinal);
        return TrialPots.Of(garden.Pots.Where(p => chosen.Contains(p.Id)));
    }
}
