using System.Text.Json;
using Ashery.Sources;

namespace Ashery.Tests.Solutions;

/// <summary>No constant without a source, and no key that is not read.</summary>
public class DataTests
{
    [Theory]
    [InlineData("components", "id name charge alkalinityProtons formula source provenance")]
    [InlineData("complexes", "id charge from logK25 logK deltaH source provenance note")]
    [InlineData("minerals", "id formula gives slow logK25 logK deltaH source provenance note")]
    [InlineData("activity", "id size b source provenance note")]
    [InlineData("conductivity", "id diffusion25 dT size source provenance")]
    [InlineData("gas", "id logK25 logK logPressure source provenance")]
    [InlineData("water", "id formula coefficients source provenance note")]
    [InlineData("salts", "formula gives source provenance")]
    [InlineData("heats", "formula kJPerMol source provenance")]
    [InlineData("can-limits", "id value unit what source provenance note")]
    [InlineData("behaviour", "group kind verdict reason wayOut leaves source provenance")]
    [InlineData("waters", "id name about mgPerLitre alkalinity pH source provenance note")]
    [InlineData("water-figures", "id name unit class thins effect remedy below source provenance")]
    [InlineData("water-limits", "figure class level value source provenance note")]
    [InlineData("water-priors", "id typical low high unit source provenance note")]
    [InlineData("water-checks", "id value unit source provenance")]
    [InlineData("water-units", "id names kind factor source provenance note")]
    [InlineData("water-quantities", "id component names as charge kind degrees source provenance")]
    [InlineData("solubility", "formula name at source provenance")]
    public void Every_row_has_a_known_source_and_known_keys(string file, string keys)
    {
        using var document = JsonDocument.Parse(EmbeddedData.Read($"data/solutions/{file}.json"));
        var rows = document.RootElement.GetProperty("rows");
        Assert.NotEqual(0, rows.GetArrayLength());
        foreach (var row in rows.EnumerateArray())
        {
            Assert.All(row.EnumerateObject(), property => Assert.Contains(property.Name, keys.Split(' ')));
            var source = SourceIndex.Default.Find(row.Text("source"));
            Assert.True(source is not null, $"{file}: {row}");
            Assert.True(row.Provenance() != Provenance.Seen || source.LookedUp, $"{file}: said to be seen in {source.Id}, whose text was never reached: {row}");
        }
    }

    [Fact]
    public void Every_file_of_the_room_is_checked()
    {
        var checkedHere = typeof(DataTests).GetMethod(nameof(Every_row_has_a_known_source_and_known_keys))!
            .GetCustomAttributes(typeof(InlineDataAttribute), inherit: false).Select(static a => $"data/solutions/{((InlineDataAttribute)a).Data[0]}.json");
        Assert.Equal(
            checkedHere.Order(StringComparer.Ordinal),
            EmbeddedData.Paths(".json").Where(static path => path.StartsWith("data/solutions/", StringComparison.Ordinal) && !path.EndsWith("sources.json", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_species_is_neutral_with_its_components()
    {
        foreach (var species in Ashery.Solutions.Chemistry.Default.Species)
        {
            var charge = species.Protons + species.Parts.Sum(part => part.Number * Ashery.Solutions.Chemistry.Default.Components[part.Component].Charge);
            Assert.True(charge == species.Charge, species.Id);
            Assert.True(species.Charge == 0 || species.Mobility is not null, $"{species.Id} carries a charge and no current");
        }

        Assert.All(Ashery.Solutions.Chemistry.Default.Minerals, mineral => Assert.Equal(
            0, mineral.Protons + mineral.Parts.Sum(part => part.Number * Ashery.Solutions.Chemistry.Default.Components[part.Component].Charge)));
    }

    // Formation constants at 25 °C against the values printed beside the expressions (reference rows).
    [Fact]
    public void Expressions_give_their_value_at_25_degrees()
    {
        foreach (var file in new[] { "complexes", "minerals", "gas" })
        {
            using var document = JsonDocument.Parse(EmbeddedData.Read($"data/solutions/{file}.json"));
            foreach (var row in document.RootElement.GetProperty("rows").EnumerateArray())
            {
                if (row.TryGetProperty("logK25", out var printed))
                {
                    Assert.True(Math.Abs(Ashery.Solutions.EquilibriumConstant.Read(row).At(25) - printed.GetDouble()) < 0.006, row.ToString());
                }
            }
        }
    }
}
