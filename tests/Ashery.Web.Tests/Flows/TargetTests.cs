namespace Ashery.Web.Tests.Flows;

public sealed class TargetTests(TheBrowser browser)
{
    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task A_target_in_a_water_becomes_a_picture_and_grams(int width)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site, width);
        await w.GoAsync("/can/target?water=hard&from=chosen&m=potassium-nitrate&m=mkp&m=ammonium-nitrate&N=120&P=25&K=150&litres=10");
        await w.HeadingAsync("A solution to a target");
        await Expect(w.Page.GetByRole(AriaRole.Img, new() { NameRegex = new("What the water and each material bring") })).ToBeVisibleAsync();
        await w.SeesAsync("Proved: no other amounts");
        await w.Page.GetByLabel("More wishes").FillAsync("Na<=10");
        await w.Page.GetByRole(AriaRole.Button, new() { Name = "Find recipes" }).ClickAsync();
        await w.Page.WaitForURLAsync("**Na**");
        await w.SeesAsync("The water alone brings 35 mg/L Na");
        await w.Page.GetByRole(AriaRole.Link, new() { Name = "All about this can" }).ClickAsync();
        await w.HeadingAsync("In the can");
        await w.SeesAsync("Nutrients");
    }

    [Fact]
    public async Task An_ec_and_a_ph_are_had_with_an_acid_and_its_cautions()
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can/target?water=moderate&from=chosen&m=potassium-nitrate&m=mkp&m=calcium-nitrate-double&N=120&P=25&K=150&Ca=90&ec=1.5&ph=5.9&acid=nitric&strength=38");
        await w.SeesAsync("EC 1.50 mS/cm and pH 5.9 fresh");
        await w.SeesAsync("EC and pH were found by trying");
        await w.SeesAsync("explosives precursor");
    }

    [Theory]
    [InlineData("N=-5", "f-N")]
    [InlineData("N=1,5", "f-N")]
    [InlineData("N=120&more=N=100", "f-more")]
    [InlineData("N=&K=&ec=1.5", "f-more")]
    [InlineData("N=120&more=Xy<=3", "f-more")]
    [InlineData("N=120&ec=90", "f-ec")]
    [InlineData("N=120&ph=6", "f-acid")]
    [InlineData("N=120&ph=6&acid=nitric&strength=100", "f-strength")]
    [InlineData("N=120&ph=6&acid=gone", "f-acid")]
    [InlineData("N=120&litres=0", "f-litres")]
    [InlineData("N=120&step=0", "f-step")]
    [InlineData("N=120&atmost=99", "f-atmost")]
    [InlineData("N=120&water=gone", "f-water")]
    [InlineData("N=120&from=chosen", "f-from")]
    [InlineData("N=120&from=chosen&m=neem-cake", "f-from")]
    public async Task What_cannot_be_is_answered_at_its_field_and_the_form_is_kept(string query, string field)
    {
        await using var site = await Site.StartAsync();
        await using var w = await browser.OpenAsync(site);
        await w.GoAsync("/can/target?" + query.Replace("<", "%3C", StringComparison.Ordinal).Replace("more=N=", "more=N%3D", StringComparison.Ordinal));
        await Expect(w.Page.Locator($"#{field}")).ToHaveAttributeAsync("aria-invalid", "true");
        if (query.StartsWith("N=120", StringComparison.Ordinal))
        {
            await Expect(w.Page.Locator("#f-N")).ToHaveValueAsync("120");
        }
    }
}
