using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Exchange.Json;
using Ashery.Planning;
using Ashery.Pots;

namespace Ashery.Exchange.Gardens;

/// <summary>The answer of <c>ashery dose --json</c>.</summary>
/// <remarks>Units: <c>grams</c> for one pot; <c>volume</c> in L; <c>nitrogen...</c> in g N a litre of medium. Days as YYYY-MM-DD.</remarks>
public sealed record DoseJson
{
    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>In walking order, weakest first.</summary>
    public required IReadOnlyList<PotDoseJson> Pots { get; init; }

    /// <summary>Hour, moisture, placing.</summary>
    public required IReadOnlyList<string> How { get; init; }

    public required IReadOnlyList<ProblemJson> Problems { get; init; }

    /// <summary>The JSON text of a round.</summary>
    public static string Write(DoseRoundAnswer round) => AsheryJson.Write(Of(round), DoseJsonContext.Shared.DoseJson);

    /// <summary>The shape of a round.</summary>
    public static DoseJson Of(DoseRoundAnswer round) => new()
    {
        On = round.On,
        Pots = [.. round.Pots.Select(PotDoseJson.Of)],
        How = round.HowToGive,
        Problems = ProblemJson.From(round.Problems),
    };
}

/// <summary>One pot of the round.</summary>
public sealed record PotDoseJson
{
    /// <summary>Place in the walking order.</summary>
    public required int Number { get; init; }

    /// <summary>Id of the pot.</summary>
    public required string Pot { get; init; }

    public required string Name { get; init; }

    public required string? Place { get; init; }

    public required string Crop { get; init; }

    /// <summary>L of medium.</summary>
    public required double Volume { get; init; }

    /// <summary>How many equal pots the line stands for.</summary>
    public required int Count { get; init; }

    /// <summary>Id of the feed.</summary>
    public required string Feed { get; init; }

    /// <summary>g for one pot.</summary>
    public required double Grams { get; init; }

    /// <summary>g before caps and rounding.</summary>
    public required double WantedGrams { get; init; }

    public required MethodJson Method { get; init; }

    /// <summary>g N a litre of medium a month, were this feed given every time.</summary>
    public required double NitrogenPerLitreMonth { get; init; }

    /// <summary>g N a litre of medium a season, were this feed given every time.</summary>
    public required double NitrogenPerLitreSeason { get; init; }

    /// <summary>Against the published low, medium and high rates.</summary>
    public required string RateBand { get; init; }

    /// <summary>False when a rule says "not today".</summary>
    public required bool Today { get; init; }

    /// <summary>Rules that say "not today".</summary>
    public required IReadOnlyList<GateJson> Holds { get; init; }

    /// <summary>Rules that would rather not.</summary>
    public required IReadOnlyList<GateJson> Warnings { get; init; }

    public required IReadOnlyList<string> Reasons { get; init; }

    public required IReadOnlyList<ProblemJson> Notes { get; init; }

    /// <summary>What to do when too much was given.</summary>
    public required FirstAidJson FirstAid { get; init; }

    internal static PotDoseJson Of(PotDose pot) => new()
    {
        Number = pot.Number,
        Pot = pot.Pot.Id,
        Name = pot.Pot.Name,
        Place = pot.Pot.Place,
        Crop = pot.Pot.CropId,
        Volume = pot.Pot.Volume.Litres,
        Count = pot.Pot.Count,
        Feed = pot.Feed.Id,
        Grams = pot.Dose.Grams,
        WantedGrams = pot.Dose.WantedGrams,
        Method = MethodJson.Of(pot.Dose),
        NitrogenPerLitreMonth = pot.Dose.NitrogenPerLitreMonth,
        NitrogenPerLitreSeason = pot.Dose.NitrogenPerLitreSeason,
        RateBand = pot.Dose.RateBand,
        Today = pot.Gate.IsOpen,
        Holds = [.. pot.Gate.Holds.Select(GateJson.Of)],
        Warnings = [.. pot.Gate.Warnings.Select(GateJson.Of)],
        Reasons = pot.Dose.Reasons,
        Notes = ProblemJson.From(pot.Dose.Notes),
        FirstAid = new(pot.FirstAid.LitresAPass, pot.FirstAid.Passes, pot.FirstAid.HoursBetween, pot.FirstAid.Steps),
    };
}

/// <summary>A rule that says "not today".</summary>
/// <param name="Rule">Its id.</param>
/// <param name="Words">Why, and what to do first.</param>
/// <param name="Until">First day on which it may be tried again; null when it depends on the plant.</param>
public sealed record GateJson(string Rule, string Words, DateOnly? Until)
{
    internal static GateJson Of(GateHold hold) => new(hold.RuleId, hold.Words, hold.Until);
}

/// <summary>First aid for an overdose.</summary>
/// <param name="LitresAPass">L of plain water each time.</param>
/// <param name="Passes">How often.</param>
/// <param name="HoursBetween">Hours from one pass to the next.</param>
/// <param name="Steps">In order.</param>
public sealed record FirstAidJson(double LitresAPass, int Passes, double HoursBetween, IReadOnlyList<string> Steps);

/// <summary>Generated descriptions of the records of <c>dose</c>.</summary>
[JsonSerializable(typeof(DoseJson))]
public sealed partial class DoseJsonContext : JsonSerializerContext
{
    /// <summary>The context in the shared form.</summary>
    public static DoseJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
