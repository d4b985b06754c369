using Ashery.Nutrients;
using Ashery.Recipes;
using CsCheck;

namespace Ashery.Tests.Recipes;

public class LimitReaderTests
{
    [Fact]
    public void Reads_every_clause_of_the_grammar()
    {
        var limits = LimitReader.Parse(
            "urea<=30%; ammoniacal<=50 %; chloride<=2%; salt-index<=80; acidity<=0.2; cost<=1.5; strength>=20%; "
            + "Mg>=1%; P2O5<=5%; material neem-cake<=40%; without urea, potassium-chloride; organic-only; soluble-only; use=dissolved").Value!;
        Assert.Equal(0.30, limits.UreaShareOfNitrogen!.Value, 1e-12);
        Assert.Equal(0.50, limits.AmmoniacalShareOfNitrogen!.Value, 1e-12);
        Assert.Equal(0.02, limits.Chloride!.Value, 1e-12);
        Assert.Equal(80, limits.SaltIndex);
        Assert.Equal(0.2, limits.Acidity);
        Assert.Equal(1.5, limits.CostPerKg);
        Assert.Equal(0.2, limits.Strength!.Value, 1e-12);
        Assert.Equal([new ContentLimit(Nutrient.P, null, 0.05), new ContentLimit(Nutrient.Mg, 0.01, null)], limits.Contents);
        Assert.Equal([new MaterialLimit("neem-cake", null, 0.4)], limits.Materials);
        Assert.Equal(["potassium-chloride", "urea"], limits.Without.Order(StringComparer.Ordinal));
        Assert.True(limits.OrganicOnly);
        Assert.True(limits.SolubleOnly);
        Assert.Equal(BlendUse.Dissolved, limits.Use);
    }

    [Theory]
    [InlineData("Mg >= 10 g/kg", 0.01)]
    [InlineData("Mg\u226510000mg/kg", 0.01)]
    [InlineData("Mg>10000ppm", 0.01)]
    public void Reads_other_units_and_signs(string text, double fraction) =>
        Assert.Equal(fraction, LimitReader.Parse(text).Value!.Contents[0].AtLeast!.Value, 1e-12);

    [Fact]
    public void Elements_are_turned_into_the_label_basis() =>
        Assert.Equal(0.01 / 0.436429, LimitReader.Parse("P<=1%").Value!.Contents[0].AtMost!.Value, 1e-6);

    [Theory]
    [InlineData("urea<=30", "no unit")]
    [InlineData("urea<=30,5%", "comma")]
    [InlineData("urea<=-3%", "below 0")]
    [InlineData("urea<=300%", "above 100")]
    [InlineData("urea<=NaN%", "not a number")]
    [InlineData("urea>=3%", "takes <= only")]
    [InlineData("strength<=3%", "takes >= only")]
    [InlineData("urea=30%", "needs <= or >=")]
    [InlineData("salt-index<=1e9", "above 1000")]
    [InlineData("salt-index<=", "missing")]
    [InlineData("chloride<=2 furlongs", "not an amount with a unit")]
    [InlineData("moonlight<=2%", "not something that can be limited")]
    [InlineData("neem-cake<=2%", "not something that can be limited")]
    [InlineData("organic", "not a limit known")]
    [InlineData("without", "No material is named")]
    [InlineData("without ../../etc", "not a material's key")]
    [InlineData("material a/b<=3%", "not a material's key")]
    [InlineData("use=tomorrow", "not a use")]
    [InlineData("urea<=3%;urea<=4%", "given twice")]
    [InlineData("Mg>=3%;Mg<=1%", "cannot both hold")]
    [InlineData("without urea; material urea>=3%", "wanted and left out")]
    [InlineData("material urea>=60%; material dap-granular>=60%", "add up to 120 %")]
    public void Says_what_is_wrong_with_field_and_way_out(string text, string message)
    {
        var read = LimitReader.Parse(text);
        Assert.False(read.Ok);
        Assert.Contains(message, read.Problems[0].Message, StringComparison.Ordinal);
        Assert.NotEmpty(read.Problems[0].WayOut);
        Assert.StartsWith("limit", read.Problems[0].Field, StringComparison.Ordinal);
    }

    [Fact]
    public void All_wrong_clauses_are_named_at_once() =>
        Assert.Equal(2, LimitReader.Parse("urea<=30; use=tomorrow").Problems.Count);

    [Fact]
    public void No_text_is_no_limit() => Assert.Empty(LimitWriter.Clauses(LimitReader.Parse((string?)null).Value!));

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var percent = Gen.Int[0, 1000].Select(i => i / 1000.0).Nullable();
        var gen = Gen.Select(percent, percent, Gen.Int[0, 200].Select(i => (double)i).Nullable(), percent, Gen.Bool, Gen.Enum<BlendUse>());
        gen.Sample((urea, chloride, salt, magnesium, organic, use) =>
        {
            var limits = new MixLimits
            {
                UreaShareOfNitrogen = urea,
                Chloride = chloride,
                SaltIndex = salt,
                OrganicOnly = organic,
                Use = use,
                Contents = magnesium is null ? [] : [new ContentLimit(Nutrient.Mg, magnesium, null)],
            };
            var clauses = LimitWriter.Clauses(limits);
            var again = LimitReader.Parse(clauses).Value!;
            Assert.Equal(clauses, LimitWriter.Clauses(again));
            Assert.Equal(urea ?? -1, again.UreaShareOfNitrogen ?? -1, 1e-12);
            Assert.Equal(salt, again.SaltIndex);
            Assert.Equal(use, again.Use);
        });
    }

    [Fact]
    public void Any_text_is_read_or_refused_without_falling_over() =>
        Gen.String[Gen.Char["urea<=>30%;,.g/k withoutPM2O5-\0\u202Ee+"], 0, 60].Sample(text =>
        {
            var read = LimitReader.Parse(text);
            Assert.True(read.Ok || read.Problems.Count > 0);
            Assert.True(WishReader.Parse(text) is { Ok: true } or { Problems.Count: > 0 });
            Assert.True(BatchReader.Parse(text) is { Ok: true } or { Problems.Count: > 0 });
        });
}
