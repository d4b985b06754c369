using Ashery.Journal;
using Ashery.RootZone.Calibration;

namespace Ashery.Tests.Journal;

/// <summary>Measured figures as readings of the model; conversions from the class limits of Cavins and others (2000, from memory).</summary>
public class RootReadingsTests
{
    [Fact]
    public void Each_kind_becomes_the_reading_it_is()
    {
        Entry[] entries =
        [
            Of(3, new Measured(MeasuredKind.Weight, 6200)),
            Of(1, new Measured(MeasuredKind.LeachateEc, 2.6)),
            Of(2, new Measured(MeasuredKind.LeachatePh, 6.1)),
            Of(4, new Measured(MeasuredKind.LeachateEc, 2.2, Celsius: 30)),
            Of(5, new Measured(MeasuredKind.ExtractEc, 0.75)),
            Of(6, new Measured(MeasuredKind.Flowers, 12)),
            Of(7, new Measured(MeasuredKind.LeachateEc, 9)) with { Pots = ["other"] },
        ];
        var readings = RootReadings.Of(entries, "p", drainedGrams: 7000);
        Assert.Equal([ReadingKind.LeachateEc, ReadingKind.LeachatePh, ReadingKind.WeightBelowFull, ReadingKind.LeachateEc, ReadingKind.LeachateEc], readings.Select(static r => r.Kind));
        Assert.Equal([2.6, 6.1, 0.8, 2.0], readings.Take(4).Select(static r => Math.Round(r.Value, 6)));

        // Class limits: a saturated extract of 2.0 is 0.75 by 1:2 and 2.6 by pour-through.
        Assert.InRange(readings[4].Value, 2.5, 2.8);
        Assert.True(readings[4].Deviation > readings[0].Deviation);
        var points = RootReadings.ExtractEc(entries, "p");
        Assert.Equal(2.0, points[0].ExtractEc, 0.01);
        Assert.Equal(3, points.Count);
        Assert.DoesNotContain(RootReadings.Of(entries, "p"), static r => r.Kind == ReadingKind.WeightBelowFull);
    }

    private static Entry Of(int day, EntryFacts facts) => new() { Id = Guid.NewGuid(), Day = new(2027, 5, day), Pots = ["p"], Facts = facts };
}
