using Ashery.Crops;
using Ashery.Gardens;
using Ashery.Planning;
using Ashery.Problems;
using Ashery.Solutions.Foliar;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Can;

/// <summary>The form of the spray page, which lives in the address, as a request to the library.</summary>
internal sealed class SprayDesk(Garden garden)
{
    private readonly Amounts amounts = new(garden.Settings.UsUnits);

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public Draft Complete(Draft typed)
    {
        if (!typed.WasSent("m"))
        {
            typed = typed.Set("m", "epsom-salt").Set("g", "2");
            typed = typed.WasSent("crop") ? typed : typed.Set("crop", new CanDesk(garden).MostGrown() ?? "");
        }

        foreach (var (name, value) in new[] { ("water", WaterChoice.Usual(garden)), ("pots", "1") })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, value);
        }

        return typed;
    }

    /// <summary>The request; problems at the fields of the form, which may come with a request as notes.</summary>
    public Result<SprayRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var parts = new CanDesk(garden).Read(CanRows.Only(typed));
        read.AddRange(parts.Problems);
        var water = WaterChoice.Find(garden, typed["water"]);
        var crop = CropCatalogue.Default.Find(typed["crop"]);
        if (typed.Has("crop") && crop is null)
        {
            read.Add("crop", "That plant is not in the catalogue.", "Choose one from the list, or any plant.");
        }

        var biuret = read.Optional("biuret", 0, 10, "0.3");
        var pot = read.Optional("pot", 0.05, 1000, "3");
        var width = read.Optional("width", 1, 500, "30");
        var pots = typed.Has("pots") ? read.Whole("pots", 1, 100_000, "12") : 1;
        var now = read.Optional("now", amounts.FromCelsius(-30), amounts.FromCelsius(60), "18");
        return read.Fine && parts.Ok && water.Ok
            ? Result.Of(new SprayRequest
            {
                Additions = parts.Value.Additions,
                Water = water.Value.ToInput(),
                WaterName = water.Value.Name,
                Crop = crop,
                Rules = GardenRules.Of(garden).Rules,
                PotLitres = pot is { } size ? amounts.ToLitres(size) : null,
                PlantWidthCm = width,
                Pots = pots,
                BiuretPercent = biuret,
                AirCelsius = now is { } degrees ? amounts.ToCelsius(degrees) : null,
            }, read.Problems)
            : Result.Fail<SprayRequest>(read.Problems);
    }
}
