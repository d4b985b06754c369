using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Problems;
using Ashery.Quantities;
using CsCheck;

namespace Ashery.Tests.Materials;

/// <summary>Whatever is typed, a reader answers with a value or with problems that name a field and a way out; it never throws.</summary>
public class HostileTextTests
{
    private static readonly string[] Names = ["urea", "map-granular", "potassium-sulfate", "neem-cake", "nothing"];

    // Letters of the grammars, so that deep paths are reached, and anything else besides.
    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.String,
        Gen.Char["0123456789.,-=:;/ %()NPKCaOMgSu·\u0000\n\u202E'\"<e"].Array[0, 30].Select(c => new string(c)),
        Gen.Select(Gen.Int[0, 4], Gen.Double, (i, n) => FormattableString.Invariant($"{Names[i]}={n}-0-0")));

    [Fact]
    public void Inline_materials() => Texts.Sample(t => Sound(InlineMaterial.Parse(t, MaterialCatalogue.Default)));

    [Fact]
    public void Labels() => Texts.Sample(t => Sound(LabelReader.Parse(t)));

    [Fact]
    public void Amounts() => Texts.Sample(t => Sound(QuantityReader.MassWindow(t, "batch")) && Sound(QuantityReader.Volume(t, "pot")) && Sound(QuantityReader.Percent(t, "N")));

    [Fact]
    public void Formulae() => Texts.Sample(t => Sound(Formula.Parse(t)));

    [Fact]
    public void Scoops() => Texts.Sample(t => Sound(ScoopFill.Parse(t)));

    [Fact]
    public void Suggestions() => Texts.Sample(t => MaterialCatalogue.Default.Suggest(t).Count <= 3, iter: 30);

    // A label of random figures: what passes the check never adds up to more than the bag.
    [Fact]
    public void What_passes_the_check_fits_into_the_bag() =>
        Gen.Select(Gen.Enum<LabelItem>(), Gen.Double[0, 120], (item, percent) => new LabelLine(item, percent)).Array[0, 8].Sample(lines =>
        {
            var check = LabelCheck.Check(lines);
            return !check.Ok || check.Value.Label.Percent(Nutrient.N) + check.Value.Label.Percent(Nutrient.P) + check.Value.Label.Percent(Nutrient.K) <= 100.21;
        });

    private static bool Sound<T>(Result<T> read)
        where T : notnull =>
        (read.Ok || read.Problems.Count > 0)
        && read.Problems.All(p => p.Field.Length > 0 && p.Message.Length > 0 && (p.WayOut.Length > 0) && !p.Message.Any(char.IsControl));
}
