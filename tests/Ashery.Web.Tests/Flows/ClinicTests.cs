using System.Text.RegularExpressions;
using Ashery.Clinic;
using Ashery.Clinic.Outcomes;
using Ashery.Exchange.Clinic;
using Ashery.Journal;
using Ashery.Web.Tests.Pages;

namespace Ashery.Web.Tests.Flows;

public sealed class ClinicTests(TheBrowser browser, LookOnly shared) : IClassFixture<LookOnly>
{
    // The signs of iron shortage as every handbook names them: youngest leaves, yellow between green veins, high pH.
    [Fact]
    public async Task A_visit_goes_from_the_first_look_to_what_came_of_it()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/clinic");
        await w.HeadingAsync("What ails it?");
        await Expect(w.Page.Locator(".causes")).ToHaveCountAsync(0);

        var leaves = PlantClinic.Questions.First(q => q.Id == "leaf_age");
        var yellow = PlantClinic.Questions.First(q => q.Id == "chlorosis");
        await w.GoAsync($"/clinic?a=leaf_age:{leaves.Choices.First(c => c.Id == "younger").Id}");
        var pattern = w.Page.Locator("#q-chlorosis").GetByRole(AriaRole.Link, new() { Name = yellow.Choices.First(c => c.Id == "interveinal").Words });
        if (!await pattern.IsVisibleAsync())
        {
            await w.Page.Locator("summary", new() { HasText = "Leaves" }).ClickAsync();
        }

        await pattern.ClickAsync();
        await Expect(w.Page.Locator(".causes li").First).ToContainTextAsync("Iron deficiency");
        await w.SeesAsync("What you said");

        await w.GoAsync(new Uri(w.Page.Url).PathAndQuery + "&n-medium_pH=7.4");
        await Expect(w.Page.Locator(".causes li").First).ToContainTextAsync("Iron deficiency");
        await w.Button("Keep this visit").ClickAsync();
        await w.SeesAsync("What the clinic said");
        await w.Page.GetByLabel("Did it clear").SelectOptionAsync("Yes");
        await w.Page.GetByLabel("What it turned out to be").SelectOptionAsync("iron-deficiency");
        await w.Page.GetByLabel("Something else that was done").FillAsync("rain water only");
        await w.Button("Write it down").ClickAsync();
        await Expect(w.Page).ToHaveURLAsync(new Regex("saved=j2-2$"));

        var kept = Assert.IsType<KeptDocument>(Assert.Single(site.Journal.Query(new() { Kinds = [EntryKind.KeptDocument] })).Entry.Facts);
        var visit = VisitJson.Read(kept.Json).Value!;
        Assert.Equal((Cleared.Yes, "iron-deficiency"), (visit.Outcome.Cleared, visit.Outcome.ConfirmedCauseId));
        Assert.Equal(["rain water only"], visit.Outcome.Done);
        Assert.Equal(7.4, visit.Case.Answers.Single(a => a.Number is not null).Number);
        await w.GoAsync("/clinic/visits");
        await w.SeesAsync("The first cause was right in 1 of 1 confirmed cases");
    }

    [Fact]
    public async Task Without_scripts_an_answer_is_tapped_and_taken_back()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        await w.GoAsync("/clinic?a=leaf_age:younger");
        await w.SeesAsync("What you said");
        await w.Page.GetByRole(AriaRole.Link, new() { Name = "Take back" }).ClickAsync();
        await Expect(w.Page.Locator(".causes")).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData("/clinic?a=leaf_age:blue", 200)]
    [InlineData("/clinic?a=:::&a=&x=&n-EC=1e999&w=%00%00", 200)]
    [InlineData("/clinic?n-medium_pH=-4", 200)]
    [InlineData("/clinic?pot=gone", 404)]
    [InlineData("/clinic/visits/0b8f1f0e-6f0c-4f39-9d8e-2f4f6a1d0c11", 404)]
    [InlineData("/clinic/visits/none", 404)]
    public async Task Odd_addresses_are_answered(string path, int status) =>
        Assert.Equal(status, (int)(await shared.Site.Http.GetAsync(path, TestContext.Current.CancellationToken)).StatusCode);
}
