using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.Verbs;

/// <summary>What each verb prints, as a person approved it; every line fits a terminal of 80 columns.</summary>
public class ApprovedTextTests
{
    public static TheoryData<string, int, string> Lines => new()
    {
        { "mix-ratio", 0, "mix --ratio 3:1:2 --from urea=46-0-0,mkp=0-52-34,potassium-nitrate=13-0-46 --price urea=0.9 --price mkp=3.2 --price potassium-nitrate=2.4" },
        { "mix-grams", 0, "mix --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 120g --step 1g --best 3" },
        { "mix-scoops", 0, "mix --ratio 2:1:2 --from neem-cake,bone-meal-steamed,kelp-meal --batch 40g..60g --scoop 5mL --best 3 --draws 2000" },
        { "mix-out-of-reach", 1, "mix --grade 30-10-20 --from ammonium-sulfate,mkp,potassium-sulfate" },
        { "mix-shelf", 0, "mix --crop fuchsia --demo --limit chloride<=2% --best 5" },
        { "compatible", 0, "compatible urea mkp gypsum" },
        { "water-list", 0, "water" },
        { "water", 0, "water hard --crop camellia" },
        { "dissolve", 0, "dissolve --water hard --add potassium-nitrate=0.6 --add mkp=0.2 --add ammonium-sulfate=0.3 --celsius 15" },
        { "dissolve-stock", 0, "dissolve --add calcium-nitrate-double=120 --add epsom-salt=80 --celsius 18" },
        { "acid", 0, "acid --water hard --acid phosphoric --strength 75% --to-alkalinity 50 --volume 25L --ratio 1:100" },
        { "acid-crystals", 0, "acid --water moderate --acid citric --to-ph 6.5 --air open" },
        { "tanks", 0, "tanks --water moderate --add calcium-nitrate-double=0.6 --add potassium-nitrate=0.4 --add epsom-salt=0.4 --add mkp=0.15 --add iron-edta=0.01" },
        { "tanks-one", 0, "tanks --add calcium-nitrate-double=0.6 --add potassium-sulfate=0.4 --tanks 1" },
        { "spray", 0, "spray --water moderate --add epsom-salt=2.5 --add urea=1.5 --biuret 0.3 --crop fuchsia --pot 3L --pots 12" },
        { "spray-strong", 0, "spray --water hard --add calcium-chloride-dihydrate=2 --add mkp=6 --crop poinsettia --air-now 31" },
        { "solution", 0, "solution N=140 P=30 K=180 Ca=100 --water soft --from calcium-nitrate-double,potassium-nitrate,mkp --ec 1.5 --ph 6 --acid phosphoric --strength 75%" },
        { "solution-out-of-reach", 1, "solution N=150 P=30 K=160 Ca=60 Mg=30 Na<=20 --water hard --from potassium-nitrate,map-technical,ammonium-nitrate,epsom-salt --best 1" },
        { "dose", 0, "dose --demo --on 2026-05-20" },
        { "dose-not-today", 0, "dose --demo --on 2026-06-15 --pot p07 --state p07=dry --max-temp 38" },
        { "year", 0, "year --demo --from 2026-03-01" },
        { "weather", 0, "weather --demo --from 2026-03-01" },
        { "weather-balcony", 0, "weather --demo --from 2026-03-01 --days 3000 --seed 7 --shelter balcony --elevation 12 --coast" },
        { "pot", 0, "pot --demo --draws 60" },
        { "clinic", 0, "clinic --demo" },
        { "clinic-fields", 0, "clinic --fields" },
        { "trial-design", 0, "trial design --feeds \"plain water,old mix,new mix\" --control \"plain water\" --mean 25 --difference 60 --spread 20 --pots 14 --blind --looks 3 --seed 4 --draws 500" },
        { "trial-analyse", 0, "trial analyse --demo" },
        { "card", 0, "card --ratio 3:1:2 --from urea,mkp,potassium-nitrate --batch 500g --name Spring" },
        { "shelf", 0, "shelf --demo" },
        { "stock", 0, "stock --demo" },
        { "batch", 0, "batch terrace-blend --grams 500 --demo" },
        { "batch-weighed", 0, "batch terrace-blend --demo --weighed ammonium-sulfate@AS-7731=274 --weighed potassium-nitrate=181 --weighed map-technical=30" },
        { "batch-trace", 0, "batch --trace 260402-01 --demo" },
        { "batch-recall", 0, "batch --recall N-26-02 --demo" },
        { "batch-recall-none", 1, "batch --recall ZZ-1 --demo" },
        { "materials", 0, "materials --search potash" },
        { "material-sheet", 0, "materials potassium-nitrate" },
        { "crops", 0, "crops --search rose" },
        { "crop-sheet", 0, "crops fuchsia" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void The_text_is_the_approved_one(string name, int code, string line)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal((code, string.Empty), (run.Code, run.Errors));
        Approved.Match(name, run.Output);
        Assert.All(run.Output.Split('\n').Where(static l => !l.Contains("://", StringComparison.Ordinal)), static l => Assert.True(l.Length <= 80, l));
    }

    [Fact]
    public void Nothing_is_coloured_unless_the_terminal_can() =>
        Assert.DoesNotContain('\u001b', Command.Run("crops", "fuchsia").Output);

    [Fact]
    public void On_a_terminal_only_weight_is_added()
    {
        var plain = Command.Run("crops", "fuchsia").Output;
        var styled = Command.Run(static t => t with { Styled = true }, "crops", "fuchsia").Output;
        Assert.Contains("\u001b[1m", styled, StringComparison.Ordinal);
        Assert.Equal(plain, styled.Replace("\u001b[1m", string.Empty, StringComparison.Ordinal).Replace("\u001b[0m", string.Empty, StringComparison.Ordinal));
    }
}
