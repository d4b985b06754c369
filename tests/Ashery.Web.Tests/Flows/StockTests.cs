using System.Net;
using System.Text.RegularExpressions;
using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Flows;

/// <summary>From the bag bought to the pots and back, as somebody with dirty fingers does it.</summary>
public sealed class StockTests(TheBrowser browser)
{
    [Fact]
    public async Task Without_script_a_bag_becomes_a_batch_with_a_label_and_is_found_again_from_the_pot()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, scripts: false);
        await w.GoAsync("/stock");
        await w.Link("A bag bought").ClickAsync();
        await w.Page.GetByLabel("Bag").SelectOptionAsync("ammonium-sulfate");
        await w.Page.GetByLabel("It holds").FillAsync("1.2");
        await w.Page.GetByLabel("Price").FillAsync("4.80");
        await w.Page.GetByLabel("Lot, as printed").FillAsync("QX-99");
        await w.Page.GetByLabel("Best before").FillAsync("2026-06-01");
        await w.Button("Save").ClickAsync();
        await w.SeesAsync("Bought 1200 g of Ammonium sulfate");
        await w.SeesAsync("best before");

        // The bag with the earliest date is proposed first; cautions stand before the form.
        await w.GoAsync("/batches");
        await w.Page.GetByLabel("Feed").SelectOptionAsync("terrace-blend");
        await w.Page.GetByLabel("How much").FillAsync("200");
        await w.Button("See what to weigh").ClickAsync();
        await w.SeesAsync("Wear a dust mask");
        await Expect(w.Page.GetByLabel("Bag of Ammonium sulfate")).ToHaveValueAsync(new Regex("^bag"));
        await w.Page.GetByLabel("Ammonium sulfate (g)", new() { Exact = true }).FillAsync("110");
        await w.Page.GetByLabel("Potassium nitrate (g)", new() { Exact = true }).FillAsync("72.2");
        await w.Button("Save the batch").ClickAsync();
        await w.SeesAsync("Mono-ammonium phosphate crystalline is missing.");
        await Expect(w.Page.GetByLabel("Potassium nitrate (g)", new() { Exact = true })).ToHaveValueAsync("72.2");
        await w.Page.GetByLabel("Mono-ammonium phosphate crystalline (g)", new() { Exact = true }).FillAsync("17.8");
        await w.Button("Save the batch").ClickAsync();
        await w.SeesAsync("200 g of 200 g");
        await w.SeesAsync("Mon 1 Jun 2026");

        var made = Assert.Single(site.Journal.Query(new() { Kinds = [EntryKind.BatchMade] })).Entry;
        var lot = ((BatchMade)made.Facts).Lot;
        var pot = site.Garden.Pots[0];
        Assert.IsType<JournalOutcome.Written>(site.Journal.Write([EntryChange.New(new() { Id = Guid.NewGuid(), Day = made.Day, Time = new(23, 0), Pots = [pot.Id], Facts = new FeedGiven("terrace-blend", [new(pot.Id, 5)], Batch: made.Id) })]));
        await w.GoAsync("/stock/recall?lot=qx-99");
        await w.SeesAsync(pot.Name);
        await w.SeesAsync("1 batch, 1 pot, 1 day");
        await w.GoAsync($"/batches/{lot}/trace");
        await w.SeesAsync("QX-99");
        await w.GoAsync("/stock/costs");
        await w.SeesAsync(pot.Name);

        await w.GoAsync($"/batches/{lot}/label");
        await w.SeesAsync($"{site.Address}batches/{lot}");
        Assert.Equal("%PDF", System.Text.Encoding.ASCII.GetString(await site.Http.GetByteArrayAsync($"/download/batch.pdf?of={lot}"), 0, 4));
        Assert.Contains(lot, await site.Http.GetStringAsync($"/download/batch.svg?of={lot}"), StringComparison.Ordinal);
        Assert.Contains($"{site.Address}batches/{lot}", await site.Http.GetStringAsync($"/download/batch.txt?of={lot}"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync("/download/batch.pdf?of=none")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await site.Http.GetAsync("/batches/none")).StatusCode);
    }

    [Fact]
    public async Task Two_windows_change_one_entry_and_the_second_sees_both_and_every_step_is_undone()
    {
        await using var site = await Site.StartAsync();
        site.PutDemoJournal();
        var bought = site.FirstEntry(EntryKind.BagBought);
        await using var first = await browser.OpenAsync(site);
        await using var second = await browser.OpenAsync(site);
        await first.GoAsync($"/stock/entry/{bought}");
        await second.GoAsync($"/stock/entry/{bought}");
        await first.Page.GetByLabel("Price").FillAsync("11.50");
        await first.Button("Save").ClickAsync();
        await first.SeesAsync("Changed: Bought");
        await second.Page.GetByLabel("Lot, as printed").FillAsync("MINE-7");
        await second.Button("Save").ClickAsync();
        await second.SeesAsync("changed in another window");
        await second.SeesAsync("11.50 EUR");
        await Expect(second.Page.GetByLabel("Lot, as printed")).ToHaveValueAsync("MINE-7");
        await second.Button("Save").ClickAsync();
        await second.SeesAsync("lot MINE-7");
        Assert.Equal("MINE-7", ((BagBought)site.Journal.Find(Guid.Parse(bought))!.Entry.Facts).Lot);
        await second.Button("Undo").ClickAsync();
        await second.SeesAsync("Changed: Bought");
        Assert.Equal(11.5, ((BagBought)site.Journal.Find(Guid.Parse(bought))!.Entry.Facts).Price);

        // Thrown away and taken out again.
        await first.GoAsync("/stock/discard");
        await first.Page.GetByLabel("Thrown away").FillAsync("5");
        await first.Button("Save").ClickAsync();
        await first.SeesAsync("Threw away 5 g");
        await first.Button("Undo").ClickAsync();
        await first.SeesAsync("Took back: Threw away 5 g");
    }

    [Fact]
    public async Task What_is_wrong_is_said_and_nothing_is_written()
    {
        await using var site = await Site.StartAsync();
        foreach (var (path, form, said) in new[]
        {
            ("/stock/buy", "bag=urea&size=1", "This line is not on the shelf."),
            ("/stock/buy", "bag=epsom-salt&size=1,5", "has a comma"),
            ("/stock/buy", "bag=epsom-salt&size=1&best=tomorrow", "is not a date"),
            ("/stock/weigh", "place=line%7Cnowhere&grams=5", "This is not in the book."),
            ("/stock/weigh", "place=line%7Cepsom-salt&grams=-5", "outside 0 to"),
            ("/stock/discard", "place=line%7Cepsom-salt&grams=99999", "The book has 400 g there."),
            ("/batches/new?feed=terrace-blend&grams=100", "g0=1&g1=1", "is missing"),
            ("/batches/new?feed=terrace-blend&grams=100", "g0=0&g1=0&g2=0", "Nothing was weighed"),
        })
        {
            var page = await site.Http.GetStringAsync(path);
            var token = new Regex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"").Match(page).Groups[1].Value;
            var handler = path.StartsWith("/batches", StringComparison.Ordinal) ? "batch" : "entry";
            using var content = new StringContent(
                $"{form}&id={Guid.NewGuid():D}&revision=0&_handler={handler}&__RequestVerificationToken={Uri.EscapeDataString(token)}", System.Text.Encoding.UTF8, "application/x-www-form-urlencoded");
            using var answer = await site.Http.PostAsync(path, content);
            Assert.Equal((path, HttpStatusCode.UnprocessableEntity), (path, answer.StatusCode));
            Assert.Contains(said, WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync()), StringComparison.Ordinal);
        }

        Assert.Equal(0, site.Journal.Count(new()));
    }
}
