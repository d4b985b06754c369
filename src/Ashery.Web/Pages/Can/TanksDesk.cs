using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Tanks;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Can;

/// <summary>The form of the tanks page, which lives in the address, as a request to the library.</summary>
internal sealed class TanksDesk(Garden garden)
{
    private readonly Amounts amounts = new(garden.Settings.UsUnits);

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public Draft Complete(Draft typed)
    {
        if (!typed.WasSent("m"))
        {
            typed = typed.Set("m", "calcium-nitrate-double", "potassium-nitrate", "epsom-salt", "mkp").Set("g", "0.6", "0.4", "0.4", "0.15");
        }

        foreach (var (name, value) in new[] { ("water", WaterChoice.Usual(garden)), ("ratio", "100"), ("tanks", "2"), ("coldest", Figures.Number(amounts.FromCelsius(5))) })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, value);
        }

        return typed;
    }

    /// <summary>The request; problems at the fields of the form, which may come with a request as notes.</summary>
    public Result<TankRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var parts = new CanDesk(garden).Read(CanRows.Only(typed));
        read.AddRange(parts.Problems);
        var water = WaterChoice.Find(garden, typed["water"]);
        var ratio = read.Required("ratio", 1, TankSplit.MostRatio, "100");
        var tanks = read.Whole("tanks", 1, TankSplit.MostTanks, "2");
        var coldest = amounts.ToCelsius(read.Required("coldest", amounts.FromCelsius(Speciation.Coldest), amounts.FromCelsius(Speciation.Warmest), "5"));
        return read.Fine && parts.Ok && water.Ok
            ? Result.Of(new TankRequest
            {
                Water = water.Value.ToInput(),
                WaterName = water.Value.Name,
                Feed = [.. parts.Value.Additions.Select(static a => new TankMaterial(a.Material, a.Grams))],
                Ratio = ratio,
                Tanks = tanks,
                Coldest = coldest,
            }, read.Problems)
            : Result.Fail<TankRequest>(read.Problems);
    }

    /// <summary>Which field of the form a problem of the library belongs to.</summary>
    public static Problem AtField(Problem problem) => problem.Field.StartsWith("add", StringComparison.Ordinal) ? problem with { Field = "m0" } : problem;
}
