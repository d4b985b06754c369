namespace Ashery.Records.Tests;

public sealed class GardenPathTests
{
    [Theory]
    [InlineData("/srv/plants", "/data", "/srv/plants/garden.db")]
    [InlineData(null, "/data", "/data/ashery/garden.db")]
    [InlineData("", "/data", "/data/ashery/garden.db")]
    public void The_nearest_setting_wins(string? home, string? xdg, string expected) => Assert.Equal(
        expected, GardenPath.Default(v => v switch { "ASHERY_HOME" => home, "XDG_DATA_HOME" => xdg, _ => null }));

    // XDG Base Directory Specification 0.8: "If an implementation encounters a relative path ... it should consider the path invalid".
    [Fact]
    public void A_relative_data_folder_is_ignored() => Assert.EndsWith(
        Path.Combine(".local", "share", "ashery", "garden.db"),
        GardenPath.Default(v => v is "XDG_DATA_HOME" ? "data" : null),
        StringComparison.Ordinal);
}
