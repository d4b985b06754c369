using Ashery.Cli.Frame;
using Ashery.Cli.Text;
using Ashery.Exchange.Catalogue;

namespace Ashery.Cli.Verbs;

/// <summary>What a crop needs and bears, as text.</summary>
internal static class CropSheet
{
    public static void Write(Terminal terminal, CropJson crop)
    {
        var sheet = crop.Sheet!;
        var page = new Page(terminal);
        page.Heading($"{crop.Name} ({crop.Id})" + (crop.Latin is { } latin ? $", {latin}" : string.Empty));
        page.Fact("feeder", crop.Feeder.ToString().ToLowerInvariant());
        page.Fact("ratio N : P2O5 : K2O", $"{Ratio(crop.Ratio)} ({MaterialSheet.How(crop.Ratio.Provenance)}; {crop.Ratio.Source})" + Note(crop.Ratio.Note));
        page.Fact("season, g N/L medium", Range(sheet.SeasonNitrogen));
        page.Fact("liquid feed, mg N/L", Range(sheet.LiquidNitrogen));
        page.Fact("medium pH", Range(sheet.MediumPh));
        page.Fact("extract EC, mS/cm", Range(sheet.SaturatedExtractEc));
        page.Fact("growth stops below", sheet.BaseCelsius is { } c ? $"{Figures.Short(c)} °C" : null);
        page.Fact("sensitive to P", sheet.PhosphorusSensitivity.ToString().ToLowerInvariant());
        page.Fact("acid medium", sheet.AcidLoving ? "wanted: lime with care" : null);
        page.Fact("chloride", sheet.ChlorideSensitive ? "sensitive: avoid it" : null);
        page.Bullets("Notes", sheet.Notes);
    }

    public static string Ratio(CropRatioJson r) => $"{Figures.Short(r.N)}:{Figures.Short(r.P2O5)}:{Figures.Short(r.K2O)}";

    private static string? Range(CropRangeJson? r) => r is null
        ? null
        : $"{Figures.Short(r.Low)} to {Figures.Short(r.High)} ({MaterialSheet.How(r.Provenance)}; {r.Source})"
            + (r.FromFeederClass ? "; the rate of its feeder class, the crop has none of its own" : string.Empty) + Note(r.Note);

    private static string Note(string? note) => note is null ? string.Empty : $"; {note}";
}
