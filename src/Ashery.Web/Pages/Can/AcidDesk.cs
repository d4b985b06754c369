using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Solutions;
using Ashery.Solutions.Acids;
using Ashery.Web.Forms;
using Ashery.Web.Show;

namespace Ashery.Web.Pages.Can;

/// <summary>The form of the acid page, which lives in the address, as a request to the library.</summary>
internal sealed class AcidDesk(Garden garden)
{
    private readonly Amounts amounts = new(garden.Settings.UsUnits);

    /// <summary>The form with what an address leaves out filled in as it is understood.</summary>
    public Draft Complete(Draft typed)
    {
        // A garden without a water begins with the example that needs acid most: pure water takes none.
        var water = WaterChoice.Usual(garden);
        var usual = Acid.Find(typed["acid"]) ?? Acid.Find("citric")!;
        foreach (var (name, value) in new[]
        {
            ("water", water == "pure" ? "hard" : water), ("acid", usual.Id), ("aim", "alkalinity"), ("to", "60"), ("litres", amounts.FromLitres(10)), ("celsius", Figures.Number(amounts.FromCelsius(20))),
        })
        {
            typed = typed.WasSent(name) ? typed : typed.Set(name, value);
        }

        return typed.WasSent("strength") || typed.Has("density") ? typed : typed.Set("strength", Figures.Number(usual.UsualStrength * 100));
    }

    /// <summary>The request; problems at the fields of the form.</summary>
    public Result<AcidRequest> Read(Draft typed)
    {
        var read = new FieldReader(typed);
        var water = WaterChoice.Find(garden, typed["water"]);
        read.AddRange(water.Problems.Where(static p => p.Severity == Severity.Error));
        var celsius = amounts.ToCelsius(read.Optional("celsius", amounts.FromCelsius(Speciation.Coldest), amounts.FromCelsius(Speciation.Warmest), "18") ?? amounts.FromCelsius(20));
        var bottle = Bottle(read, typed);
        var aim = typed["aim"];
        var to = aim == "alkalinity" ? read.Required("to", 0, 10_000, "60") : read.Required("to", 0, 14, "5.8");
        var litres = amounts.ToLitres(read.Required("litres", 0.001, 1e6, "10"));
        var ratio = read.Optional("ratio", 1, 2000, "100");
        return read.Fine && water.Ok && bottle is not null
            ? Result.Of(new AcidRequest(water.Value.ToInput(celsius), bottle, aim == "alkalinity" ? AcidTarget.ToAlkalinity(to) : AcidTarget.ToPh(to))
            {
                At = aim == "open" ? Air.Open : Air.Closed,
                Litres = litres,
                InjectorRatio = ratio,
            })
            : Result.Fail<AcidRequest>(read.Problems);
    }

    /// <summary>Which field of the form a problem of the library belongs to.</summary>
    public static Problem AtField(Problem problem) => problem.Field switch
    {
        "pH" or "alkalinity" or "to-ph" or "to-alkalinity" => problem with { Field = "to" },
        "volume" => problem with { Field = "litres" },
        _ => problem,
    };

    private static AcidBottle? Bottle(FieldReader read, Draft typed)
    {
        if (Acid.Find(typed["acid"]) is not { } acid)
        {
            read.Add("acid", "That is not an acid for water here.", "Choose one from the list.");
            return null;
        }

        if (typed.Has("density"))
        {
            return read.Optional("density", 0.1, 5, "1.37") is { } density ? Taken(read, AcidBottle.OfDensity(acid, density)) : null;
        }

        // Percent beyond any bottle is answered by the bottle, which knows its acid.
        return typed.Has("strength")
            ? read.Optional("strength", 0, 1000, "60") is { } percent ? Taken(read, AcidBottle.OfStrength(acid, percent / 100)) : null
            : Taken(read, AcidBottle.OfStrength(acid, acid.UsualStrength));
    }

    private static AcidBottle? Taken(FieldReader read, Result<AcidBottle> bottle)
    {
        read.AddRange(bottle.Ok ? [] : bottle.Problems);
        return bottle.Value;
    }
}
