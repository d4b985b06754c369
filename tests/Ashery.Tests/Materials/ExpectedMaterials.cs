using Ashery.Materials;
using Ashery.Nutrients;

namespace Ashery.Tests.Materials;

/// <summary>
/// Every material with its grade and the sum of its label, written down and compared with the published figures when it was added. A slip in
/// the data shows here, and a new material without a row does not pass: see docs/adding-a-material.md.
/// </summary>
public class ExpectedMaterials
{
    // id, grade N-P2O5-K2O, sum of all contents on the label in percent.
    private const string Table = """
        ammonium-sulfate                  21-0-0         45.000
        urea                              46-0-0         46.000
        ammonium-nitrate                  34-0-0         34.000
        calcium-ammonium-nitrate          27-0-0         35.000
        ammonium-chloride                 25-0-0         91.000
        calcium-nitrate-double            15.5-0-0       34.500
        calcium-nitrate-tetrahydrate      11.8-0-0       28.700
        calcium-nitrate-anhydrous         17-0-0         41.000
        magnesium-nitrate-hexahydrate     10.9-0-0       20.200
        sodium-nitrate                    16-0-0         42.500
        potassium-nitrate                 13.5-0-45.5    59.200
        calcium-cyanamide                 19.8-0-0       57.800
        ammonium-sulfate-nitrate          26-0-0         39.000
        uan-solution-32                   32-0-0         32.000
        ibdu                              31-0-0         31.000
        urea-formaldehyde                 38-0-0         38.000
        sulfur-coated-urea                36-0-0         52.000
        map-technical                     12-61-0        73.000
        map-granular                      11-52-0        64.500
        dap-granular                      18-46-0        65.500
        dap-technical                     21-53.5-0      74.500
        mkp                               0-52-34        86.000
        dkp                               0-40.5-53.8    94.300
        ssp                               0-18-0         49.500
        tsp                               0-46-0         61.200
        mcp-monohydrate                   0-55.5-0       71.300
        dcp-dihydrate                     0-40-0         63.000
        urea-phosphate                    17.5-44.5-0    62.000
        rock-phosphate                    0-30-0         63.000
        magnesium-ammonium-phosphate      5.5-28.5-0     43.800
        app-solution                      10-34-0        44.000
        potassium-chloride                0-0-60         108.000
        potassium-sulfate                 0-0-50         68.400
        langbeinite                       0-0-22         56.000
        kainite                           0-0-11         83.000
        polyhalite                        0-0-14         49.000
        potassium-carbonate               0-0-67.5       67.500
        potassium-bicarbonate             0-0-46.8       46.800
        potassium-hydroxide               0-0-75         75.000
        potassium-thiosulfate             0-0-25         42.000
        ammonium-thiosulfate              12-0-0         38.000
        elemental-sulfur                  0-0-0          90.000
        greensand                         0-1-6          7.000
        calcium-chloride-dihydrate        0-0-0          74.500
        calcium-chloride-anhydrous        0-0-0          98.000
        gypsum                            0-0-0          40.000
        calcitic-lime                     0-0-0          38.500
        dolomitic-lime                    0-0-0          33.000
        hydrated-lime                     0-0-0          51.000
        quicklime                         0-0-0          67.000
        epsom-salt                        0-0-0          22.700
        kieserite                         0-0-0          35.100
        magnesium-sulfate-anhydrous       0-0-0          45.500
        magnesium-chloride-hexahydrate    0-0-0          46.500
        magnesium-oxide                   0-0-0          54.000
        magnesium-carbonate               0-0-0          27.000
        wood-ash                          0-1.8-5        30.300
        filler-sand                       0-0-0          0.000
        iron-sulfate-heptahydrate         0-0-0          30.700
        iron-sulfate-monohydrate          0-0-0          47.500
        iron-edta                         0-0-0          18.350
        iron-dtpa                         0-0-0          11.000
        iron-eddha                        0-0-0          6.000
        manganese-sulfate-monohydrate     0-0-0          50.100
        manganese-edta                    0-0-0          13.000
        zinc-sulfate-heptahydrate         0-0-0          33.500
        zinc-sulfate-monohydrate          0-0-0          53.000
        zinc-edta                         0-0-0          14.500
        zinc-oxide                        0-0-0          78.000
        copper-sulfate-pentahydrate       0-0-0          37.900
        copper-edta                       0-0-0          14.500
        boric-acid                        0-0-0          17.000
        borax-decahydrate                 0-0-0          22.900
        sodium-tetraborate-pentahydrate   0-0-0          30.540
        disodium-octaborate-tetrahydrate  0-0-0          31.860
        sodium-molybdate-dihydrate        0-0-0          58.430
        ammonium-heptamolybdate           0-0-0          54.000
        nitric-acid                       13.3-0-0       13.300
        phosphoric-acid-85                0-61.6-0       61.600
        sulfuric-acid                     0-0-0          31.000
        citric-acid-monohydrate           0-0-0          0.000
        citric-acid-anhydrous             0-0-0          0.000
        neem-cake                         3-1-1.4        9.494
        mustard-cake                      5.2-1.8-1.2    8.200
        castor-cake                       4.3-2.55-1     7.850
        groundnut-cake                    7.3-1.5-1.3    10.100
        cottonseed-meal                   6.4-2.6-1.7    10.700
        soybean-meal                      7-1.5-2.2      10.700
        linseed-meal                      4.9-1.4-1.3    7.600
        sesame-cake                       6.2-2-1.2      9.400
        coconut-cake                      3-1.9-1.8      6.700
        alfalfa-meal                      2.7-0.6-2.3    5.600
        corn-gluten-meal                  9.6-1-0.2      10.800
        bone-meal-raw                     3.5-22-0       48.500
        bone-meal-steamed                 2-25-0         52.000
        blood-meal                        13-1.5-0.7     15.400
        feather-meal                      13-0.4-0.2     13.600
        fish-meal                         10-6-0.5       17.200
        meat-bone-meal                    8-11-0.5       29.500
        hoof-horn-meal                    13-1-0         14.000
        crab-shrimp-meal                  4-3-0.5        25.500
        seabird-guano                     12-11-2        25.000
        vermicompost                      1.2-0.8-0.8    2.800
        composted-cattle-manure           1.2-0.8-1.2    3.200
        composted-poultry-manure          3.5-3-2.5      15.000
        composted-horse-manure            1-0.6-1.2      2.800
        kelp-meal                         1-0.5-4        15.500
        coffee-grounds                    2.1-0.3-0.6    3.000
        """;

    private static readonly Dictionary<string, (string Grade, double Sum)> Rows = Table
        .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .ToDictionary(p => p[0], p => (p[1], double.Parse(p[2], System.Globalization.CultureInfo.InvariantCulture)));

    public static TheoryData<string> Ids() => [.. MaterialCatalogue.Default.All.Select(m => m.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Has_the_label_that_was_checked_by_hand(string id)
    {
        Assert.True(Rows.TryGetValue(id, out var expected), $"{id} has no expected label: check its figures by hand and add a row.");
        var label = MaterialCatalogue.Default.Find(id)!.Label;
        Assert.Equal(expected.Grade, GradeReader.Write(label));
        Assert.Equal(expected.Sum, label.Present.Sum(label.Percent), 0.005);
    }

    [Fact]
    public void Has_no_row_for_a_material_that_is_gone() => Assert.Empty(Rows.Keys.Except(MaterialCatalogue.Default.All.Select(m => m.Id)));
}
