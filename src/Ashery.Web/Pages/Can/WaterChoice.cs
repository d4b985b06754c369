using Ashery.Gardens;
using Ashery.Problems;
using Ashery.Solutions.Waters;

namespace Ashery.Web.Pages.Can;

/// <summary>The waters a page of the can lets choose from: those the grower typed, those that ship, and pure water.</summary>
internal static class WaterChoice
{
    /// <summary>Value and words of each, the garden's own first.</summary>
    public static IReadOnlyList<(string Value, string Text)> Of(Garden garden) =>
    [
        .. garden.Waters.Select(w => (w.Id, w.Name)),
        .. SourceWaters.Default.All.Where(e => garden.Waters.All(w => w.Id != e.Report.Id)).Select(e => (e.Report.Id, $"Example: {e.Report.Name}")),
        (SourceWater.Pure.Id, "Pure water"),
    ];

    /// <summary>The one a page begins with: the garden's default, else the first it has, else pure.</summary>
    public static string Usual(Garden garden) => garden.Settings.Water ?? (garden.Waters.Count > 0 ? garden.Waters[0].Id : SourceWater.Pure.Id);

    /// <summary>The water of a value, or why there is none; field <c>water</c>.</summary>
    public static Result<SourceWater> Find(Garden garden, string value)
    {
        if (garden.Waters.FirstOrDefault(w => w.Id == value) is { } own)
        {
            var read = WaterReports.Read(own);
            return read.Ok ? Result.Of(read.Value.Water) : Result.Fail<SourceWater>([.. read.Problems.Select(p => p with { Field = "water" })]);
        }

        return SourceWaters.Default.Find(value) is { } shipped
            ? Result.Of(shipped)
            : Result.Fail<SourceWater>("water", "That water is not there any more.", "Choose one from the list, or add its report under Water.");
    }
}
