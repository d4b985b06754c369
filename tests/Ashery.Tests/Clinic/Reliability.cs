namespace Ashery.Tests.Clinic;

/// <summary>Said against happened: probabilities in ten classes, and the expected calibration error (Naeini, Cooper and Hauskrecht 2015, from memory).</summary>
internal sealed class Reliability
{
    private readonly (int Count, double Said, double Happened)[] bins = new (int Count, double Said, double Happened)[10];

    public int Count { get; private set; }

    public double Brier { get; private set; }

    public IEnumerable<(int Bin, int Count, double Said, double Happened)> Rows =>
        bins.Select(static (b, i) => (i, b.Count, b.Said / Math.Max(1, b.Count), b.Happened / Math.Max(1, b.Count))).Where(static r => r.Item2 > 0);

    public double Error => Rows.Sum(r => (double)r.Count / Count * Math.Abs(r.Said - r.Happened));

    public void Add(double said, bool happened)
    {
        var bin = Math.Min(9, (int)(said * 10));
        bins[bin] = (bins[bin].Count + 1, bins[bin].Said + said, bins[bin].Happened + (happened ? 1 : 0));
        Brier = ((Brier * Count) + ((said - (happened ? 1 : 0)) * (said - (happened ? 1 : 0)))) / (Count + 1);
        Count++;
    }
}
