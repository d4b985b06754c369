using System.Text.Json;
using Ashery.Materials;
using Ashery.Solutions;
using Ashery.Solutions.Can;
using Ashery.Solutions.Tanks;
using Ashery.Solutions.Waters;
using Ashery.Sources;
using CsCheck;

namespace Ashery.Tests.Solutions;

/// <summary>Feeds shared over stock tanks: against all splits, published practice, published solubilities and the reference code's stocks.</summary>
public class TankTests
{
    private static readonly (string Id, double Grams)[] Twelve =
    [
        ("calcium-nitrate-tetrahydrate", 0.8), ("potassium-nitrate", 0.5), ("epsom-salt", 0.5), ("mkp", 0.2), ("potassium-sulfate", 0.2), ("ammonium-nitrate", 0.1),
        ("iron-edta", 0.02), ("manganese-sulfate-monohydrate", 0.002), ("zinc-sulfate-heptahydrate", 0.001), ("copper-sulfate-pentahydrate", 0.0002), ("boric-acid", 0.002),
        ("sodium-molybdate-dihydrate", 0.0001),
    ];

    // Published practice (extension pages on injectors, seen: calcium apart from sulfates and phosphates).
    [Theory]
    [InlineData("pure", 2)]
    [InlineData("soft", 2)]
    [InlineData("hard", 2)]
    [InlineData("pure", 3)]
    public void Calcium_stands_apart_from_sulfate_and_phosphate(string water, int tanks)
    {
        var report = Find(Twelve, water, tanks);
        Assert.True(report.IsClear);
        Assert.InRange(report.Tanks.Count, 2, tanks);
        foreach (var tank in report.Tanks.Where(static t => t.Parts.Any(static p => ApartRule.Gives(p.Material, "calcium"))))
        {
            Assert.DoesNotContain(tank.Parts, static p => ApartRule.Gives(p.Material, "phosphate"));
            Assert.DoesNotContain(tank.Parts, static p => p.GramsPerLitre > 1 && ApartRule.Gives(p.Material, "sulfate"));
        }

        Assert.Equal("A", report.Tanks.Single(static t => t.Parts.Any(static p => ApartRule.Gives(p.Material, "calcium") && p.Share >= 0.5)).Name);
        Assert.All(Twelve, m => Assert.Equal(1, report.Tanks.SelectMany(static t => t.Parts).Where(p => p.Material.Id == m.Id).Sum(static p => p.Share), 12));
        Assert.Contains("stock-strong", report.Cautions);
    }

    [Fact]
    public void In_one_tank_the_twelve_cloud_and_the_answer_says_with_what()
    {
        var report = Find(Twelve, "pure", 1);
        Assert.False(report.IsClear);
        Assert.InRange(report.MostRatio, 1, 15);
        Assert.Contains("gypsum", report.Limiting!.Name, StringComparison.Ordinal);
        Assert.Contains(report.Notes, static n => n.Field == "ratio");
    }

    /// <summary>Every split of up to six materials, tried one by one with no bound and no memory.</summary>
    [Fact]
    public void No_split_is_better_than_the_one_found()
    {
        string[] ids = ["calcium-nitrate-tetrahydrate", "potassium-nitrate", "epsom-salt", "mkp", "potassium-sulfate", "ammonium-nitrate", "urea", "potassium-chloride", "map-technical", "magnesium-nitrate-hexahydrate", "dap-technical"];
        Gen.Select(Gen.Int[2, 6], Gen.Int[1, 3], Gen.Int[0, 25], Gen.Int[0, 100_000], Gen.Bool).Sample(
            pick =>
            {
                var (count, tanks, cold, seed, hard) = pick;
                var random = new Random(seed);
                var chosen = ids.OrderBy(_ => random.Next()).Take(count).ToList();
                var request = new TankRequest
                {
                    Feed = [.. chosen.Select(id => new TankMaterial(Of(id), 0.05 + random.NextDouble()))],
                    Tanks = tanks,
                    Coldest = cold,
                    MayDivide = false,
                    Water = SourceWaters.Default.Find(hard ? "moderate" : "pure")!.ToInput(),
                };
                var found = TankSplit.Find(request).Value!;
                var best = Plain(request);
                Assert.True(found.MostRatio >= best * 0.985 && found.MostRatio <= best * 1.011, FormattableString.Invariant($"{found.MostRatio} for {best}: {string.Join(", ", chosen)}"));
            },
            iter: 40, threads: 1);
    }

    // Little phosphate in hard water gives brushite; more of it is acid enough to stay clear. What is said to be clear is so in each tank at the
    // ratio asked and at the highest one.
    [Fact]
    public void Clear_is_said_of_the_ratio_asked()
    {
        (string, double)[] feed = [("mkp", 0.07)];
        var all = Enumerable.Range(0, 14).Select(k => TankSplit.Find(Request(feed, "moderate", 1) with { Ratio = 2 * Math.Pow(1.6, k) }).Value!).ToList();
        Assert.Contains(all, static r => r.IsClear);
        Assert.Contains(all, static r => r.ClearAgainAt > r.Request.Ratio && r.Notes[0].Message.Contains("less acid", StringComparison.Ordinal));
        foreach (var report in all)
        {
            var judge = new TankJudge(report.Request);
            Assert.Equal(judge.IsClear([1], report.Request.Ratio), report.ClearAsAsked);
            Assert.True(judge.IsClear([1], report.MostRatio));
            Assert.True(report.ClearAsAsked || !report.IsClear);
            Assert.True(report.IsClear || report.Notes.Any(static n => n.Field == "ratio"));
        }
    }

    // A salt alone: g in a litre made up to the mark, against the handbook's g a kg of water (seen): water = 1 - 0.03 L an equivalent.
    [Theory]
    [InlineData("K2SO4", 10, 92.4, 2)]
    [InlineData("KNO3", 0, 136.4, 1)]
    [InlineData("KNO3", 20, 319.3, 1)]
    [InlineData("KH2PO4", 10, 175.2, 1)]
    [InlineData("KCl", 20, 340.3, 1)]
    public void A_salt_alone_goes_up_to_its_published_solubility(string formula, double celsius, double limit, int equivalents)
    {
        var material = MaterialInWater.OfFormula(formula).Value!;
        var report = TankSplit.Find(new() { Feed = [new(material, 1)], Tanks = 1, Coldest = celsius }).Value!;
        var expected = limit / (1 + (limit * 0.03 * equivalents / material.Salt!.MolarMass));
        StandardTests.Close(expected, report.MostRatio, 0.01, formula);
        StandardTests.Close(report.MostRatio * 0.9, report.AdvisedRatio, 1e-12, formula);
    }

    // A salt that is not weighed in comes out by its ions: in a saturated potassium chloride solution at 25 °C potassium sulfate dissolves
    // to about 15 g a kg of water (from memory: 25.6 % KCl and 1.1 % K2SO4 by mass) against 119.8 alone. The model stops short of it, at 9.
    [Fact]
    public void Common_ions_count()
    {
        var probe = new TankProbe(Chemistry.Default, 25);
        double Index(double sulfate) => probe.All(new Dissolving(SolutionInput.Pure(25)).Add(Reference.Salt("KCl"), 355.4).Add(Reference.Salt("K2SO4"), sulfate).Input().Totals)
            .Single(static m => m.Name == "potassium sulfate").Index;
        Assert.True(Index(15) > 0);
        Assert.True(Index(7) < 0);
    }

    // The six stocks of the reference code: one tank clouds where the code has a solid and with the same one, and two keep it clear.
    [Fact]
    public void Stocks_of_the_reference_code()
    {
        var count = 0;
        foreach (var c in Reference.Cases.Where(static c => c.GetProperty("expected").GetProperty("ionic_strength_mol_kg").GetDouble() > 0.5))
        {
            var salts = c.GetProperty("g_per_kg_water").EnumerateObject().Select(static s => (Salt: Reference.Salt(s.Name), Grams: s.Value.GetDouble())).ToList();
            var solids = c.GetProperty("expected").GetProperty("precipitates").EnumerateArray().Select(static p => p.GetString()!).ToList();
            var feed = salts.Select(static s => new TankMaterial(MaterialInWater.OfFormula(s.Salt.Formula).Value!, s.Grams / 100)).ToList();
            var one = TankSplit.Find(new() { Feed = feed, Tanks = 1, Coldest = 25 }).Value!;
            Assert.True(one.MostRatio < 100 == solids.Count > 0, c.GetProperty("id").GetString());
            Assert.True(solids.Count == 0 || solids.Contains(one.Tanks[0].Margins.MaxBy(static m => m.Index)!.Name));
            Assert.True(TankSplit.Find(new() { Feed = feed, Tanks = 2, Coldest = 25, Ratio = 80 }).Value!.IsClear, c.GetProperty("id").GetString());
            count++;
        }

        Assert.Equal(6, count);
    }

    [Fact]
    public void A_clear_tank_of_neutral_salts_stays_clear_when_it_is_diluted()
    {
        string[] ids = ["potassium-nitrate", "epsom-salt", "potassium-sulfate", "ammonium-nitrate", "urea", "potassium-chloride", "ammonium-sulfate", "calcium-nitrate-tetrahydrate"];
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 35], Gen.Int[0, 100_000]).Sample(
            pick =>
            {
                var random = new Random(pick.Item3);
                var feed = ids.OrderBy(_ => random.Next()).Take(pick.Item1).Select(id => new TankMaterial(Of(id), 0.05 + random.NextDouble())).ToList();
                var judge = new TankJudge(new() { Feed = feed, Coldest = pick.Item2 });
                var all = feed.Select(static _ => 1.0).ToArray();
                var clear = false;
                for (var ratio = 512.0; ratio >= 1; ratio /= 2)
                {
                    Assert.True(!clear || judge.IsClear(all, ratio));
                    clear |= judge.IsClear(all, ratio);
                }
            },
            iter: 60, threads: 1);
    }

    // Diammonium phosphate with calcium in one tank clouds at any strength.
    [Fact]
    public void Where_no_split_is_clear_the_answer_says_what_comes_out()
    {
        var report = Find([("dap-technical", 0.5), ("calcium-nitrate-tetrahydrate", 0.5)], "saline", 1);
        Assert.Equal(0, report.MostRatio);
        Assert.NotNull(report.Limiting);
        Assert.Contains(report.Notes, static n => n.Field == "tanks");
    }

    [Fact]
    public void More_tanks_never_make_it_weaker_and_the_order_does_not_matter()
    {
        var two = Find(Twelve, "moderate", 2).MostRatio;
        Assert.True(Find(Twelve, "moderate", 1).MostRatio <= two);
        Assert.True(Find(Twelve, "moderate", 3).MostRatio >= two * 0.99);
        StandardTests.Close(two, Find([.. Twelve.Reverse()], "moderate", 2).MostRatio, 0.011);
    }

    [Fact]
    public void A_material_is_divided_where_that_allows_a_stronger_stock()
    {
        (string, double)[] feed = [("calcium-nitrate-tetrahydrate", 0.8), ("potassium-nitrate", 1.2), ("mkp", 0.1)];
        var whole = TankSplit.Find(Request(feed, "pure", 2)).Value!;
        Assert.True(whole.IsClear);
        Assert.False(whole.Certificate.Divided);
        var divided = TankSplit.Find(Request(feed, "pure", 2) with { Ratio = 150 }).Value!;
        Assert.True(divided.Certificate.Divided);
        Assert.True(divided.MostRatio > whole.MostRatio * 1.05);
        Assert.Equal(whole.MostRatioDivided!.Value, divided.MostRatio, 1e-9);
        Assert.Equal(2, divided.Tanks.Count(static t => t.Parts.Any(static p => p.Material.Id == "potassium-nitrate")));
    }

    [Fact]
    public void Acid_stands_apart_from_chelates_and_goes_in_first()
    {
        (string, double)[] feed = [("calcium-nitrate-tetrahydrate", 0.8), ("iron-edta", 0.02), ("mkp", 0.2), ("phosphoric-acid-85", 0.1), ("epsom-salt", 0.3)];
        var report = Find(feed, "hard", 2);
        var acid = report.Tanks.Single(static t => t.Parts.Any(static p => p.Material.Id == "phosphoric-acid-85"));
        Assert.Equal("phosphoric-acid-85", acid.Parts[0].Material.Id);
        Assert.DoesNotContain(acid.Parts, static p => p.Material.Id is "iron-edta" or "calcium-nitrate-tetrahydrate");
        Assert.Contains("acid-into-water", report.Cautions);

        var one = TankSplit.Find(Request(feed, "hard", 1));
        Assert.False(one.Ok);
        Assert.Equal("tanks", one.Problems[0].Field);
        Assert.Contains("never share a tank", one.Problems[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_says_why()
    {
        var good = Request(Twelve, "pure", 2);
        string Field(TankRequest request) => TankSplit.Find(request).Problems[0].Field;
        Assert.Equal("ratio", Field(good with { Ratio = 0 }));
        Assert.Equal("ratio", Field(good with { Ratio = double.NaN }));
        Assert.Equal("tanks", Field(good with { Tanks = 0 }));
        Assert.Equal("tanks", Field(good with { Tanks = 9 }));
        Assert.Equal("coldest", Field(good with { Coldest = 60 }));
        Assert.Equal("add", Field(good with { Feed = [] }));
        Assert.Equal("add mkp", Field(good with { Feed = [new(Of("mkp"), -1)] }));
        Assert.Equal("add mkp", Field(good with { Feed = [new(Of("mkp"), 1), new(Of("mkp"), 1)] }));
        Assert.Equal("add", Field(good with { Feed = [.. Enumerable.Range(0, 17).Select(i => new TankMaterial(Of("mkp") with { Id = FormattableString.Invariant($"m{i}") }, 1))] }));
    }

    [Theory]
    [InlineData(3, 2, 4)]
    [InlineData(4, 2, 8)]
    [InlineData(4, 3, 14)]
    [InlineData(12, 2, 2048)]
    public void Splits_are_counted(int materials, int tanks, double ways) => Assert.Equal(ways, TankSearch.Splits(materials, tanks));

    // The count of solutions, not the clock, so that a busy machine does not fail it; the time is in docs/science and in the bench.
    [Fact]
    public void Twelve_salts_take_few_solutions() => Assert.InRange(Find(Twelve, "hard", 2).Certificate.Speciations, 100, 15_000);

    [Fact]
    public void Every_rule_has_a_source()
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read("data/tanks/apart.json"));
        Assert.All(document.RootElement.GetProperty("rows").EnumerateArray(), static row =>
        {
            Assert.NotNull(SourceIndex.Default.Find(row.Text("source")));
            Assert.True(Enum.IsDefined(row.Provenance()));
        });
    }

    // Base-k digits of a code name the tank of each material. Strengths are walked down in steps of 3 %, since a stock may be clear where its
    // dilution is not; a pair only says how strong it may be.
    private static double Plain(TankRequest request)
    {
        const double step = 0.97;
        var n = request.Feed.Count;
        var judge = new TankJudge(request);
        var memory = new Dictionary<(int, double), bool>();
        var tops = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = i; j < n; j++)
            {
                tops[i, j] = ApartRule.Between(request.Feed[i].Material, request.Feed[j].Material) is not null ? 0 : Top(r => Clear((1 << i) | (1 << j), r));
            }
        }

        return Enumerable.Range(0, (int)Math.Pow(request.Tanks, n)).Max(code =>
        {
            var masks = new int[request.Tanks];
            for (var i = 0; i < n; i++, code /= request.Tanks)
            {
                masks[code % request.Tanks] |= 1 << i;
            }

            var most = masks.Min(mask => Pairs(mask).DefaultIfEmpty(1000).Min());
            bool All(double r) => masks.All(mask => mask == 0 || Clear(mask, r));
            var top = Top(r => r <= most && All(r));
            return top > request.Ratio && !All(request.Ratio) ? Top(r => r <= request.Ratio && All(r)) : top;
        });

        IEnumerable<double> Pairs(int mask) =>
            from i in Enumerable.Range(0, n)
            from j in Enumerable.Range(i, n - i)
            where (mask & (1 << i)) != 0 && (mask & (1 << j)) != 0
            select tops[i, j];

        bool Clear(int mask, double ratio)
        {
            if (!memory.TryGetValue((mask, ratio), out var clear))
            {
                memory[(mask, ratio)] = clear = judge.IsClear([.. Enumerable.Range(0, n).Select(i => (double)((mask >> i) & 1))], ratio);
            }

            return clear;
        }

        static double Top(Func<double, bool> clear)
        {
            double high = 1000, low = 1000;
            while (low > 1 && !clear(low))
            {
                (high, low) = (low, Math.Max(1, low * step));
            }

            for (var k = 0; k < 4 && low < high && clear(low); k++)
            {
                var middle = Math.Sqrt(low * high);
                (low, high) = clear(middle) ? (middle, high) : (low, middle);
            }

            return clear(low) ? low : 0;
        }
    }

    private static TankReport Find((string Id, double Grams)[] feed, string water, int tanks) => TankSplit.Find(Request(feed, water, tanks)).Value!;

    private static TankRequest Request((string Id, double Grams)[] feed, string water, int tanks) => new()
    {
        Feed = [.. feed.Select(static f => new TankMaterial(Of(f.Id), f.Grams))],
        Tanks = tanks,
        Water = SourceWaters.Default.Find(water)!.ToInput(),
        WaterName = water,
    };

    private static MaterialInWater Of(string id) => MaterialInWater.Of(MaterialCatalogue.Default.Find(id)!).Value!;
}
