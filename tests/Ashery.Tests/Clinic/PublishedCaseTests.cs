using System.Globalization;
using System.Text;
using Ashery.Clinic;
using Ashery.Clinic.Knowledge;

namespace Ashery.Tests.Clinic;

/// <summary>Cases that were published with their cause: the judge outside the project.</summary>
public class PublishedCaseTests
{
    [Fact]
    public void The_named_cause_ranks_first_in_four_of_five_and_in_the_first_three_in_all()
    {
        var ranks = PublishedCases.All.Select(static c => c.Rank(PlantClinic.Diagnose(c.Visit).Value!)).ToList();
        Assert.Equal(19, ranks.Count);
        Assert.True(ranks.Count(static r => r == 1) >= 0.8 * ranks.Count, string.Join(' ', ranks));
        Assert.All(ranks, static r => Assert.InRange(r, 1, 3));
    }

    [Fact]
    public void Without_what_its_own_source_says_the_cause_is_in_the_first_three_in_four_of_five()
    {
        var ranks = PublishedCases.All.Select(static c => c.Rank(Without(c.SourceId).Diagnose(c.Visit).Value!)).ToList();
        Assert.True(ranks.Count(static r => r <= 3) >= 0.8 * ranks.Count, string.Join(' ', ranks));
    }

    [Fact]
    public void Without_any_one_source_four_of_five_of_all_cases_have_the_cause_in_the_first_three()
    {
        foreach (var source in ClinicData.Shipped.Signs.SelectMany(static r => r.Voices).Select(static v => v.SourceId).Distinct(StringComparer.Ordinal))
        {
            var engine = Without(source);
            var ranks = PublishedCases.All.Select(c => c.Rank(engine.Diagnose(c.Visit).Value!)).ToList();
            Assert.True(ranks.Count(static r => r <= 3) >= 0.8 * ranks.Count, $"{source}: {string.Join(' ', ranks)}");
        }
    }

    [Fact]
    public void No_row_names_a_case_and_every_word_of_the_cases_is_understood()
    {
        foreach (var c in PublishedCases.All)
        {
            var report = PlantClinic.Diagnose(c.Visit).Value!;
            Assert.DoesNotContain(report.Notes, static n => n.Message.Contains("not understood", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_table_of_cases_in_the_documents_is_what_comes_out()
    {
        var table = new StringBuilder("| case | source | cause | rank | probability | without its source |\n|---|---|---|---|---|---|\n");
        foreach (var c in PublishedCases.All)
        {
            var report = PlantClinic.Diagnose(c.Visit).Value!;
            var found = report.Causes.First(x => c.Causes.Contains(x.Id));
            table.Append(CultureInfo.InvariantCulture, $"| {c.Id} | {c.SourceId} | {found.Name} | {c.Rank(report)} | {found.Probability:0.00} | {c.Rank(Without(c.SourceId).Diagnose(c.Visit).Value!)} |\n");
        }

        Assert.Contains(table.ToString(), RepositoryFile.Read("docs/science/clinic.md"), StringComparison.Ordinal);
    }

    private static ClinicEngine Without(string source) => new(new ClinicKnowledge(ClinicData.Shipped.Without(source)));
}
