using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Gardens;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Pots;
using Ashery.Problems;
using Ashery.Quantities;

namespace Ashery.Cli.Verbs;

/// <summary>A round of the garden: the dose of a feed for each pot, and whether it may be given on that day.</summary>
internal sealed class DoseVerb : Verb
{
    private static readonly string[] States = ["dry", "wilted", "waterlogged", "sick", "repotted"];
    private static readonly string[] Bases = ["published", "rule-of-thumb"];

    private readonly GardenSource garden;
    private readonly ValueOption on;
    private readonly ValueOption feed;
    private readonly ValueOption pot;
    private readonly ValueOption state;
    private readonly ValueOption maxTemp;
    private readonly ValueOption meanTemp;
    private readonly ValueOption rain;
    private readonly ValueOption basis;

    public DoseVerb()
        : base("dose", "Work out how much of a feed each pot gets, how to give it, and whether today is a day for it")
    {
        garden = new GardenSource(Command);
        on = Add(new ValueOption("--on", "DATE", "The day, as 2026-05-20 (today)"));
        feed = Add(new ValueOption("--feed", "ID", "One of the garden's kept feeds (for each pot the kept feed that suits its crop)"));
        pot = Add(new ValueOption("--pot", "ID", "Only this pot; may be repeated") { Repeatable = true });
        state = Add(new ValueOption("--state", "POT=STATE", "How a pot is today: " + string.Join(", ", States) + "; may be repeated") { Repeatable = true });
        maxTemp = Add(new ValueOption("--max-temp", "CELSIUS", "Highest temperature expected on the day"));
        meanTemp = Add(new ValueOption("--mean-temp", "CELSIUS", "Mean temperature of the day (the month's normal of the place)"));
        rain = Add(new ValueOption("--rain", "MM", "Rain expected on the day"));
        basis = Add(new ValueOption("--basis", "HOW", "What a dose starts from: published, rule-of-thumb") { Words = static () => Bases });
    }

    public override string Details =>
        "Each pot's dose comes from the published rate for its crop, split over the feeds of the season, made smaller for young plants and cool days and capped by salt and urea. Pots stand in walking order, the weakest dose first.";

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("The demo garden on a day in May:", "ashery dose --demo --on 2026-05-20"),
        ("One pot that was found dry, on a hot day:", "ashery dose --demo --on 2026-06-15 --pot p07 --state p07=dry --max-temp 33"),
        ("Your own garden file, as JSON:", "ashery dose --garden my-garden.json --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var day = Dates.Read(given, on) ?? terminal.Today();
        var chosen = given.Text(feed);
        var pots = given.Texts(pot);
        var states = ReadStates(given);
        var weather = Weather(given);
        var start = given.Word(basis, Bases) == "rule-of-thumb" ? DoseBasis.RuleOfThumb : DoseBasis.PublishedRate;
        var loaded = garden.Load(given, terminal);
        if (loaded is not null)
        {
            CheckPots(given, loaded, states.Keys);
        }

        if (given.Wrong || loaded is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        var round = given.Take(DoseRound.For(new DoseRoundRequest(loaded, day, chosen)
        {
            PotIds = pots.Count > 0 ? pots.ToHashSet(StringComparer.Ordinal) : null,
            States = states,
            Weather = weather,
            Basis = start,
        }));
        if (round is null)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Has(Json))
        {
            terminal.Output.Write(DoseJson.Write(round));
        }
        else
        {
            DoseText.Write(terminal, DoseJson.Of(round));
        }

        return ExitCode.Done;
    }

    private static void CheckPots(Given given, Garden garden, IEnumerable<string> ids)
    {
        foreach (var id in ids)
        {
            if (!garden.Pots.Any(p => p.Id == id))
            {
                given.Add(new Problem("state", $"There is no pot {SafeText.Quoted(id)} in this garden.", $"Pots are {string.Join(", ", garden.Pots.Take(20).Select(static p => SafeText.Of(p.Id)))}."));
            }
        }
    }

    private Dictionary<string, PotState> ReadStates(Given given)
    {
        var found = new Dictionary<string, PotState>(StringComparer.Ordinal);
        foreach (var text in given.Texts(state))
        {
            var at = text.LastIndexOf('=');
            var word = at < 0 ? string.Empty : text[(at + 1)..];
            if (at <= 0 || !States.Contains(word))
            {
                given.Add(new Problem("state", $"{SafeText.Quoted(text)} is not a pot and its state.", $"Write the pot's id, = and one of {string.Join(", ", States)}, as in --state p07=dry."));
                continue;
            }

            var before = found.GetValueOrDefault(text[..at]) ?? new PotState();
            found[text[..at]] = word switch
            {
                "dry" => before with { AvailableWater = 0 },
                "wilted" => before with { Wilted = true },
                "waterlogged" => before with { Waterlogged = true },
                "sick" => before with { SickRoots = true },
                _ => before with { Repotted = true },
            };
        }

        return found;
    }

    private DayWeather? Weather(Given given)
    {
        var max = Number(given, maxTemp, -60, 60);
        var mean = Number(given, meanTemp, -60, 60);
        var millimetres = Number(given, rain, 0, 2000);
        if (max < mean)
        {
            given.Add(new Problem("max-temp", "The highest temperature is below the mean.", "Check whether the two were swapped."));
        }

        return max is null && mean is null && millimetres is null ? null : new DayWeather(max, mean, millimetres);
    }

    private static double? Number(Given given, ValueOption option, double least, double most)
    {
        if (given.Text(option) is not { } text)
        {
            return null;
        }

        var read = NumberReader.Read(text, Given.Field(option), least, most, "12.5");
        given.AddRange(read.Problems);
        return read.Ok ? read.Value : null;
    }
}
