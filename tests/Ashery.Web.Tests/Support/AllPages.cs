using Ashery.Exchange.Trials;
using Ashery.Journal;
using Ashery.Records;

namespace Ashery.Web.Tests.Support;

/// <summary>Every page of the application on the demo garden, with the states that look different.</summary>
internal static class AllPages
{
    public static IReadOnlyList<(string Name, string Path)> All { get; } =
    [
        ("today", "/"),
        ("today-work", "/?on=2026-05-10"),
        ("reminders", "/reminders"),
        ("shelf", "/shelf"),
        ("find-bag", "/shelf/add?find=phosphate"),
        ("new-bag", "/shelf/new?material=urea"),
        ("own-bag", "/shelf/new"),
        ("bag", "/shelf/{bag}"),
        ("read-shelf", "/shelf/import"),
        ("mix", "/mix"),
        ("mix-out-of-reach", "/mix?want=30-30-30&from=shelf"),
        ("mix-limits", "/mix?want=4:1:5&from=shelf&urea=0&chloride=2&draws=yes&show=2"),
        ("mix-wrong", "/mix?want=four&from=shelf"),
        ("waters", "/water"),
        ("water", "/water/{water}"),
        ("water-rain", "/water/{rain}?crop=camellia"),
        ("water-saline", "/water/saline?crop=moth-orchid"),
        ("new-water", "/water/new"),
        ("edit-water", "/water/{water}/edit"),
        ("can", "/can"),
        ("can-materials", "/can?water=hard&m=calcium-nitrate-double&g=1.2&m=epsom-salt&g=0.8&m=mkp&g=0.3&crop=rose"),
        ("can-wrong", "/can?water=soft&m=mkp&g=-1&m=&g=2&celsius=60&strength=strong"),
        ("acid", "/can/acid?water=hard&acid=phosphoric&strength=75&aim=alkalinity&to=60&litres=25&ratio=100"),
        ("acid-wrong", "/can/acid?water=hard&acid=nitric&strength=121&to=5000&litres=-1&celsius=60"),
        ("tanks", "/can/tanks"),
        ("tanks-three", "/can/tanks?water=hard&m=calcium-nitrate-double&g=0.6&m=potassium-nitrate&g=1.2&m=mkp&g=0.2&m=epsom-salt&g=0.5&m=iron-edta&g=0.02&m=boric-acid&g=0.002&tanks=3&ratio=200&coldest=2"),
        ("tanks-wrong", "/can/tanks?m=phosphoric-acid-85&g=0.1&m=calcium-nitrate-double&g=0.5&tanks=1&ratio=100"),
        ("spray", "/can/spray"),
        ("spray-strong", "/can/spray?water=hard&m=calcium-chloride-dihydrate&g=2&m=urea&g=6&m=boric-acid&g=0.1&crop=poinsettia&pot=2&pots=20&now=31"),
        ("target", "/can/target?water=hard&from=chosen&m=potassium-nitrate&m=mkp&m=ammonium-nitrate&m=epsom-salt&N=120&P=25&K=150&Ca=60&Mg=30&litres=10&more=Na%3C%3D20"),
        ("target-ec", "/can/target?water=moderate&from=chosen&m=potassium-nitrate&m=mkp&m=calcium-nitrate-double&N=120&P=25&K=150&Ca=90&ec=1.5&ph=5.9&acid=nitric&strength=38&step=0.1"),
        ("target-wrong", "/can/target?N=-5&more=Xy&ph=6&water=gone&from=chosen"),
        ("pots", "/pots"),
        ("pots-not-today", "/pots?on=2026-05-09&max=39&state-{pot}=wilted"),
        ("new-pot", "/pots/add"),
        ("pot", "/pots/{pot}"),
        ("roots", "/pots/{pot}/roots"),
        ("note", "/pots/{pot}/note?kind=flowers"),
        ("note-repotted", "/pots/{pot}/note?kind=repotted"),
        ("diary", "/pots/{pot}/diary"),
        ("entry", "/diary/{entry}"),
        ("readings", "/pots/{pot}/readings"),
        ("photos", "/pots/{pot}/photos"),
        ("round", "/note"),
        ("round-flowers", "/note/flowers"),
        ("round-sighting", "/note/sighting"),
        ("measurements", "/measurements"),
        ("search", "/search?q=aph"),
        ("report", "/report"),
        ("trials", "/trials"),
        ("trials-measured", "/trials?name=Rail&feeds=plain+water%0Aold+mix%0Anew+mix&kind=measurement&what=height&unit=cm&difference=20&spread=12&count=13&blind=yes&looks=3"),
        ("trials-wrong", "/trials?feeds=one&difference=0&spread=-4&power=120&count=many"),
        ("trial", "/trials/{trial}"),
        ("stock", "/stock"),
        ("stock-buy", "/stock/buy"),
        ("stock-discard", "/stock/discard"),
        ("stock-entry", "/stock/entry/{bought}"),
        ("stock-costs", "/stock/costs"),
        ("stock-recall", "/stock/recall?lot=N-26-02"),
        ("batches", "/batches"),
        ("batch-new", "/batches/new?feed={feed}&grams=500"),
        ("batch", "/batches/{batch}"),
        ("batch-trace", "/batches/{batch}/trace"),
        ("batch-label", "/batches/{batch}/label"),
        ("year", "/year"),
        ("rules", "/year/rules"),
        ("rule", "/year/rules/mineral-hot-season"),
        ("cards", "/cards"),
        ("card", "/cards/{feed}"),
        ("label", "/cards/{feed}?kind=label"),
        ("card-year", "/cards/year"),
        ("card-shopping", "/cards/shopping"),
        ("together", "/compatible?with=calcium-nitrate-tetrahydrate&with=epsom-salt&with=neem-cake"),
        ("crops", "/crops"),
        ("crop", "/crops/rose"),
        ("materials", "/materials"),
        ("material", "/materials/potassium-nitrate"),
        ("settings", "/settings"),
        ("place", "/settings/place"),
        ("scoops", "/settings/scoops"),
        ("changes", "/settings/changes"),
        ("restore", "/settings/restore"),
        ("clinic", "/clinic"),
        ("clinic-asked", "/clinic?pot={pot}&a=leaf_age:younger&a=chlorosis:interveinal&x=roots&n-medium_pH=6.9"),
        ("clinic-wrong", "/clinic?a=leaf_age:blue&n-EC=strong"),
        ("visits", "/clinic/visits"),
        ("backup", "/settings/backup"),
        ("more", "/more"),
        ("help", "/help"),
        ("too-large", "/too-large?size=200&from=/shelf/import"),
        ("nothing-here", "/nothing-here"),
    ];

    /// <summary>The address with ids of this site's garden.</summary>
    public static string On(Site site, string path)
    {
        var garden = site.Garden;
        return path
            .Replace("{trial}", path.Contains("{trial}", StringComparison.Ordinal) ? Trial(site) : "", StringComparison.Ordinal)
            .Replace("{bag}", garden.Shelf[0].Id, StringComparison.Ordinal)
            .Replace("{pot}", garden.Pots[0].Id, StringComparison.Ordinal)
            .Replace("{entry}", SampleDiary.First.ToString("D"), StringComparison.Ordinal)
            .Replace("{water}", garden.Waters[0].Id, StringComparison.Ordinal)
            .Replace("{rain}", garden.Waters[1].Id, StringComparison.Ordinal)
            .Replace("{bought}", site.FirstEntry(EntryKind.BagBought), StringComparison.Ordinal)
            .Replace("{batch}", site.FirstEntry(EntryKind.BatchMade), StringComparison.Ordinal)
            .Replace("{feed}", garden.Feeds[0].Id, StringComparison.Ordinal);
    }

    // The sample trial with its results, kept in the journal.
    private static string Trial(Site site)
    {
        var id = new Guid("0d8f3f3e-5d5b-4a54-9d4e-5f1c8f2b6a01");
        if (site.Journal.Find(id) is null)
        {
            var sample = TrialFile.Sample();
            site.Journal.Write([EntryChange.New(new() { Id = id, Day = new(2026, 5, 1), Facts = new KeptDocument("trial", "Railing, three feeds", sample) })]);
        }

        return id.ToString("D");
    }
}
