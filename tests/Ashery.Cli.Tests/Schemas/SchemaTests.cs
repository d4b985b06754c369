using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Ashery.Cli.Frame;
using Ashery.Cli.Tests.Frame;
using Ashery.Cli.Verbs;
using Ashery.Exchange.Calendar;
using Ashery.Exchange.Catalogue;
using Ashery.Exchange.Clinic;
using Ashery.Exchange.Gardens;
using Ashery.Exchange.Journal;
using Ashery.Exchange.Materials;
using Ashery.Exchange.Mix;
using Ashery.Exchange.RootZone;
using Ashery.Exchange.Trials;
using Ashery.Exchange.Waters;
using Ashery.Exchange.Solutions;
using Ashery.Exchange.Stock;
using Ashery.Exchange.Weather;
using Json.Schema;
using Command = Ashery.Cli.Tests.Frame.Command;

namespace Ashery.Cli.Tests.Schemas;

/// <summary>
/// The schemas in docs/schemas are made from the types, and what the program really prints is valid by them, as judged by the library
/// JsonSchema.Net. When a type changed on purpose, <c>eng/approve</c> takes the new schema over.
/// </summary>
public class SchemaTests
{
    private static readonly Dictionary<string, (JsonTypeInfo Type, string Title)> Schemas = new()
    {
        ["mix"] = (MixJsonContext.Shared.MixJson, "Output of ashery mix --json"),
        ["compatible"] = (MixJsonContext.Shared.CompatibleJson, "Output of ashery compatible --json"),
        ["dissolve"] = (SolutionJsonContext.Shared.CanJson, "Output of ashery dissolve --json"),
        ["acid"] = (InjectorJsonContext.Shared.AcidJson, "Output of ashery acid --json"),
        ["tanks"] = (InjectorJsonContext.Shared.TanksJson, "Output of ashery tanks --json"),
        ["spray"] = (InjectorJsonContext.Shared.SprayJson, "Output of ashery spray --json"),
        ["water"] = (WaterJsonContext.Shared.WaterJson, "Output of ashery water NAME --json"),
        ["waters"] = (WaterJsonContext.Shared.WaterListJson, "Output of ashery water --json without a name"),
        ["solution"] = (SolutionJsonContext.Shared.TargetJson, "Output of ashery solution --json"),
        ["dose"] = (DoseJsonContext.Shared.DoseJson, "Output of ashery dose --json"),
        ["weather"] = (WeatherJsonContext.Shared.WeatherJson, "Output of ashery weather --json"),
        ["pot"] = (PotJsonContext.Shared.PotJson, "Output of ashery pot --json"),
        ["clinic"] = (ClinicJsonContext.Shared.ClinicJson, "Output of ashery clinic --json"),
        ["trial-plan"] = (TrialJsonContext.Shared.TrialPlanJson, "Output of ashery trial design --json"),
        ["trial"] = (TrialJsonContext.Shared.TrialReportJson, "Output of ashery trial analyse --json"),
        ["trial-file"] = (TrialJsonContext.Shared.TrialDto, "A trial file, as ashery trial reads and writes it"),
        ["year"] = (YearJsonContext.Shared.YearJson, "Output of ashery year --json"),
        ["year-fit"] = (FittedYearJsonContext.Shared.FittedYearJson, "Output of ashery year --fit --json"),
        ["card"] = (CardJsonContext.Shared.CardJson, "Output of ashery card --json"),
        ["shelf"] = (CatalogueJson.Shared.ShelfJson, "Output of ashery shelf --json"),
        ["stock"] = (StockJsonContext.Shared.StockJson, "Output of ashery stock --json"),
        ["batch"] = (StockJsonContext.Shared.BatchJson, "Output of ashery batch FEED --json"),
        ["trace"] = (StockJsonContext.Shared.TraceJson, "Output of ashery batch --trace LOT --json"),
        ["recall"] = (StockJsonContext.Shared.RecallJson, "Output of ashery batch --recall LOT --json"),
        ["materials"] = (CatalogueJson.Shared.MaterialsJson, "Output of ashery materials --json"),
        ["crops"] = (CatalogueJson.Shared.CropsJson, "Output of ashery crops --json"),
        ["moved"] = (CliJson.Moved, "Output of ashery backup, restore, copy, export and import --json"),
        ["journal"] = (JournalJson.TypeInfo, "An entry of the journal, in exports and over HTTP"),
        ["problems"] = (FaultJson.Shared.ProblemsJson, "Output of any verb with --json that was used wrongly"),
        ["garden"] = (GardenJson.Shared.GardenDto, "A garden file, as --garden reads it"),
        ["shelf-file"] = (ShelfFileJson.Shared.ShelfFileDto, "A shelf file, as ashery shelf --import reads it"),
    };

    public static TheoryData<string> Names => [.. Schemas.Keys];

    public static TheoryData<string, string> Outputs => new()
    {
        { "mix", "mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --price urea=0.9 --price mkp=3.2 --price potassium-nitrate=2.4" },
        { "mix", "mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 120g --step 1g --draws 500" },
        { "mix", "mix --ratio 2:1:2 --from neem-cake,bone-meal-steamed,kelp-meal --batch 40g..60g --scoop 5mL" },
        { "mix", "mix --grade 30-10-20 --from ammonium-sulfate,mkp,potassium-sulfate" },
        { "mix", "mix --crop fuchsia --demo" },
        { "compatible", "compatible urea mkp gypsum ammonium-nitrate wood-ash" },
        { "dissolve", "dissolve --water hard --add potassium-nitrate=0.6 --add mkp=0.2 --add nitric-acid=0.1" },
        { "dissolve", "dissolve --water rain --add calcium-nitrate-double=120 --add epsom-salt=80 --air open --celsius 4" },
        { "acid", "acid --water hard --acid phosphoric --strength 75% --to-alkalinity 50 --volume 25L --ratio 1:100" },
        { "acid", "acid --water moderate --acid citric --to-ph 6.5 --air open" },
        { "tanks", "tanks --water moderate --add calcium-nitrate-double=0.6 --add potassium-nitrate=0.4 --add epsom-salt=0.4 --add mkp=0.15 --add boric-acid=0.001" },
        { "tanks", "tanks --tanks 1 --add urea=0.3" },
        { "spray", "spray --water moderate --add epsom-salt=3 --add urea=1.5 --crop fuchsia --pot 3L --pots 12 --air-now 31" },
        { "spray", "spray --add dap-technical=1" },
        { "waters", "water" },
        { "water", "water hard --crop camellia" },
        { "water", "water rain" },
        { "solution", "solution N=140 P=30 K=180 Ca=100 Cl<=60 --water moderate --from calcium-nitrate-double,potassium-nitrate,mkp --ec 1.6 --ph 5.9 --acid nitric --strength 38%" },
        { "solution", "solution N=140 Ca=40 Na<=10 --water hard --from KNO3,ammonium-nitrate --step 0.5g --price ammonium-nitrate=0.8" },
        { "dose", "dose --demo --on 2026-05-20" },
        { "dose", "dose --demo --on 2026-06-15 --pot p07 --state p07=dry --max-temp 38" },
        { "weather", "weather --demo --days 400 --shelter shade-50" },
        { "pot", "pot --demo --draws 50 --days 100" },
        { "clinic", "clinic --demo" },
        { "trial-plan", "trial design --feeds \"old mix,new mix\" --demo --pots all --blind --looks 2 --draws 200" },
        { "trial-plan", "trial design --feeds a,b,c --kind measurement --difference 1 --spread 300" },
        { "trial", "trial analyse --demo" },
        { "year", "year --demo --from 2026-03-01" },
        { "year-fit", "year --demo --from 2026-03-01 --fit --draws 20" },
        { "card", "card --crop fuchsia --demo --batch 1kg" },
        { "card", "card --kind year --demo" },
        { "shelf", "shelf --demo" },
        { "stock", "stock --demo" },
        { "batch", "batch terrace-blend --grams 500 --demo" },
        { "batch", "batch terrace-blend --demo --weighed ammonium-sulfate@AS-7731=274 --weighed potassium-nitrate=181 --weighed map-technical=44.5" },
        { "trace", "batch --trace 260402-01 --demo" },
        { "recall", "batch --recall N-26-02 --demo" },
        { "materials", "materials" },
        { "materials", "materials potassium-nitrate neem-cake phosphoric-acid-85" },
        { "crops", "crops" },
        { "crops", "crops fuchsia rose" },
        { "problems", "mix --ratio 0:0:0 --from uera" },
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void The_committed_schema_is_that_of_the_type(string name)
    {
        var folder = Path.Combine(Repository.Root(), "docs", "schemas");
        var file = Path.Combine(folder, name + ".schema.json");
        var received = Path.Combine(folder, name + ".schema.received.json");
        var text = SchemaWriter.Write(Schemas[name].Type, Schemas[name].Title);
        if (File.Exists(file) && File.ReadAllText(file) == text)
        {
            File.Delete(received);
            return;
        }

        File.WriteAllText(received, text);
        Assert.Fail($"docs/schemas/{name}.schema.json is not that of the type; compare it with {Path.GetFileName(received)} and run eng/approve when the change is meant.");
    }

    [Theory]
    [MemberData(nameof(Outputs))]
    public void What_is_printed_is_valid(string name, string line)
    {
        var run = Command.Run([.. Shell.Split(line.Replace("phosphoric-acid-85", Liquid(), StringComparison.Ordinal)), "--json"]);
        AssertValid(name, run.Output);
    }

    [Fact]
    public void The_demo_garden_is_valid_by_the_schema_of_garden_files()
    {
        AssertValid("garden", DemoGarden.Text());
        AssertValid("garden", GardenFile.Write(DemoGarden.Create(Command.Today)));
        AssertValid("trial-file", TrialFile.Sample());
        AssertValid("shelf-file", ShelfFile.Write(DemoGarden.Create(Command.Today).Shelf));
    }

    /// <summary>The judge can say no.</summary>
    [Theory]
    [InlineData("compatible", "{ \"pairs\": [ { \"a\": \"urea\" } ] }")]
    [InlineData("compatible", "{ \"pairs\": [], \"more\": 1 }")]
    [InlineData("garden", "{ \"format\": 3 }")]
    [InlineData("problems", "{ \"problems\": [ { \"field\": \"a\", \"message\": \"b\", \"wayOut\": \"c\", \"severity\": \"fatal\" } ] }")]
    public void What_is_not_so_is_not_valid(string name, string json) => Assert.False(Judge(name, json).IsValid);

    private static void AssertValid(string name, string json)
    {
        var judged = Judge(name, json);
        Assert.True(judged.IsValid, string.Join('\n', (judged.Details ?? []).Where(static d => d.Errors is not null).SelectMany(static d => d.Errors!.Select(e => $"{d.InstanceLocation}: {e.Value}")).Take(10)));
    }

    private static EvaluationResults Judge(string name, string json)
    {
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Repository.Root(), "docs", "schemas", name + ".schema.json")));
        using var document = JsonDocument.Parse(json);
        return schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
    }

    private static string Liquid() => Ashery.Materials.MaterialCatalogue.Default.All.First(static m => m.IsLiquid).Id;
}
