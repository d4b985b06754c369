using Ashery.Compatibility;
using Ashery.Materials;

namespace Ashery.Tests.Compatibility;

/// <summary>
/// Critical relative humidity of mixtures at 30 °C as reprinted in "Critical relative humidity" (read): ammonium nitrate with urea
/// 18.1, urea with ammonium sulfate 56.4, urea with potassium chloride 60.3, ammonium nitrate with ammonium sulfate 62.3 percent.
/// </summary>
public class StorageTests
{
    [Fact]
    public void A_mix_that_liquefies_is_never_made()
    {
        var storage = Of(("ammonium-nitrate", 0.5), ("urea", 0.5));
        Assert.Equal((StorageClass.Never, 18.1), (storage.Class, storage.CriticalRelativeHumidity));
    }

    [Theory]
    [InlineData("urea", "ammonium-sulfate", 56.4)]
    [InlineData("urea", "potassium-chloride", 60.3)]
    [InlineData("ammonium-nitrate", "ammonium-sulfate", 62.3)]
    public void A_measured_pair_below_the_dry_room_is_kept_airtight(string a, string b, double percent)
    {
        var storage = Of((a, 0.3), (b, 0.7));
        var expected = Math.Min(percent, MaterialCatalogue.Default.Find(a)!.CriticalRelativeHumidity!.Value);
        Assert.Equal((StorageClass.Airtight, expected), (storage.Class, storage.CriticalRelativeHumidity));
        Assert.Contains("Critical relative humidity", storage.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unmeasured_mix_is_bounded_by_its_parts_and_says_or_lower()
    {
        var storage = Of(("ammonium-sulfate", 0.58), ("map-technical", 0.06), ("potassium-sulfate", 0.36));
        Assert.Equal(StorageClass.KeepsDry, storage.Class);
        Assert.True(storage.CriticalRelativeHumidity <= 79.2);
        Assert.Contains("or lower", storage.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_moist_organic_mix_is_made_on_the_day() =>
        Assert.Equal(StorageClass.OnTheDay, Of(("neem-cake", 0.6), ("bone-meal-steamed", 0.1), ("vermicompost", 0.3)).Class);

    [Fact]
    public void Dry_meals_keep_dry() =>
        Assert.Equal(StorageClass.KeepsDry, Of(("neem-cake", 0.6), ("bone-meal-steamed", 0.4)).Class);

    [Theory]
    [InlineData("calcium-nitrate-tetrahydrate")]
    [InlineData("calcium-chloride-dihydrate")]
    public void A_salt_that_runs_is_kept_airtight_even_alone(string id) =>
        Assert.Equal(StorageClass.Airtight, Of((id, 1)).Class);

    [Fact]
    public void A_hard_stop_is_never_whatever_the_humidity() =>
        Assert.Equal(StorageClass.Never, Of(("potassium-nitrate", 0.1), ("neem-cake", 0.9)).Class);

    [Fact]
    public void A_part_of_no_mass_does_not_count() =>
        Assert.Equal(StorageClass.KeepsDry, Of(("potassium-sulfate", 1), ("neem-cake", 0), ("potassium-nitrate", 0)).Class);

    [Fact]
    public void Never_speaks_of_months() =>
        Assert.All(CompatibilityChart.Default.JudgeAll(MaterialCatalogue.Default.All).Take(2000), pair =>
        {
            var storage = Of((pair.A, 0.5), (pair.B, 0.5));
            Assert.False(string.IsNullOrWhiteSpace(storage.Reason));
            Assert.False(string.IsNullOrWhiteSpace(storage.Source));
            Assert.DoesNotContain("month", storage.Reason, StringComparison.OrdinalIgnoreCase);
        });

    private static Storage Of(params (string Id, double Share)[] parts) =>
        StorageJudge.Judge([.. parts.Select(p => (MaterialCatalogue.Default.Find(p.Id)!, p.Share))], CompatibilityChart.Default);
}
