using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Flows;

/// <summary>A trial from its design to its answer, in a browser.</summary>
public sealed class TrialTests(TheBrowser browser)
{
    [Fact]
    public async Task A_trial_is_designed_kept_written_down_and_judged()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/trials?name=Rail&feeds=old+mix%0Anew+mix&kind=measurement&what=height&unit=cm&difference=20&spread=12&count=8");
        await w.HeadingAsync("Trials");
        await w.SeesAsync("pots a feed");
        await w.SeesAsync("Which pot gets what");
        await w.Button("Keep this trial").ClickAsync();
        await w.Page.WaitForURLAsync("**/trials/*-*");
        await w.HeadingAsync("Rail");
        await w.SeesAsync("height on 8 pots");

        // A comma is answered at its field, and what was typed stays.
        await w.Page.GetByLabel("P01").FillAsync("31,5");
        await w.Button("Write them down").ClickAsync();
        await w.SeesAsync("has a comma");
        await Expect(w.Page.GetByLabel("P01")).ToHaveValueAsync("31,5");

        var kept = Ashery.Exchange.Trials.TrialFile.Read(((KeptDocument)site.Journal.Query(new()).Single().Entry.Facts).Json).Value!.Trial;
        for (var i = 0; i < kept.Layout.Count; i++)
        {
            var height = (kept.Layout[i].Treatment == "old-mix" ? 30 : 36) + (i * 3 % 5 * 0.5);
            await w.Page.GetByLabel(kept.Layout[i].Pot).FillAsync(height.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }

        await w.Button("Write them down").ClickAsync();
        await w.SeesAsync("What it showed");
        await w.SeesAsync("cm more height than old mix (95 % interval");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("Trial Rail") })).ToBeVisibleAsync();

        await w.Button("Undo").First.ClickAsync();
        await Expect(w.Main).Not.ToContainTextAsync("What it showed");
    }

    [Fact]
    public async Task A_blind_trial_keeps_its_answer_until_the_key_is_opened()
    {
        await using var site = await Site.StartAsync();
        var sample = System.Text.Json.Nodes.JsonNode.Parse(Ashery.Exchange.Trials.TrialFile.Sample())!;
        sample["blind"] = true;
        var id = Guid.NewGuid();
        site.Journal.Write([EntryChange.New(new() { Id = id, Day = new(2026, 5, 1), Facts = new KeptDocument("trial", "Railing", sample.ToJsonString()) })]);
        var closed = await site.Http.GetStringAsync($"/trials/{id:D}");
        Assert.DoesNotContain("1.96 times", closed, StringComparison.Ordinal);
        Assert.DoesNotContain("id=\"showed\"", closed, StringComparison.Ordinal);
        Assert.DoesNotContain("<td>new mix</td>", closed, StringComparison.Ordinal);
        Assert.Contains("1.96 times the open flowers of plain water", await site.Http.GetStringAsync($"/trials/{id:D}?key=open"), StringComparison.Ordinal);
        Assert.StartsWith("%PDF", await site.Http.GetStringAsync($"/download/trial-tags.pdf?kept={id:D}"), StringComparison.Ordinal);
        Assert.DoesNotContain("new mix", await site.Http.GetStringAsync($"/download/trial-sheet.txt?kept={id:D}"), StringComparison.Ordinal);
        Assert.Contains("new mix", await site.Http.GetStringAsync($"/download/trial-key.txt?kept={id:D}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_is_said()
    {
        await using var site = await Site.StartAsync();
        foreach (var (path, said) in new[]
        {
            ("/trials?feeds=one", "A trial of 1 feed cannot be"), ("/trials?feeds=a%0Aa", "stands there twice"), ("/trials?feeds=a%0Ab&difference=0", "is outside 1 to 900"),
            ("/trials?feeds=a%0Ab&spread=%3Cscript%3E", "is not a number"), ("/trials?feeds=a%0Ab&count=99999", "is outside 1 to"), ("/trials?feeds=a%0Ab&looks=2.5", "is not a whole number"),
        })
        {
            var page = await site.Http.GetStringAsync(path);
            Assert.Contains(said, System.Net.WebUtility.HtmlDecode(page), StringComparison.Ordinal);
            Assert.DoesNotContain("<script>", page.Replace("<script src", "", StringComparison.Ordinal), StringComparison.Ordinal);
        }

        using var gone = await site.Http.GetAsync($"/trials/{Guid.NewGuid():D}");
        Assert.Equal(System.Net.HttpStatusCode.NotFound, gone.StatusCode);
        using var paper = await site.Http.GetAsync("/download/trial-plan.pdf?feeds=one");
        Assert.Equal(System.Net.HttpStatusCode.UnprocessableEntity, paper.StatusCode);
    }
}
