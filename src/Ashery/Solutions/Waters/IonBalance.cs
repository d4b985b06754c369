namespace Ashery.Solutions.Waters;

/// <summary>How well the two sides of a report balance.</summary>
public enum BalanceVerdict
{
    /// <summary>Within what laboratories allow themselves.</summary>
    Closes,

    /// <summary>An ion that was not reported closes it.</summary>
    ClosedByEstimate,

    /// <summary>Further apart than laboratories allow; the water is used with what closes it.</summary>
    Off,

    /// <summary>So far apart that the report cannot be used.</summary>
    Wrong,
}

/// <summary>One ion of the balance.</summary>
/// <param name="Quantity">Plain name.</param>
/// <param name="Symbol">As reports print it.</param>
/// <param name="Charge">meq/L, unsigned.</param>
/// <param name="Estimated">Put in, not reported.</param>
public sealed record BalanceIon(string Quantity, string Symbol, double Charge, bool Estimated);

/// <summary>Cations against anions as reported, before anything is put in.</summary>
public sealed record IonBalance
{
    /// <summary>Largest first, meq/L.</summary>
    public required IReadOnlyList<BalanceIon> Cations { get; init; }

    /// <summary>Largest first, meq/L; alkalinity among them.</summary>
    public required IReadOnlyList<BalanceIon> Anions { get; init; }

    /// <summary>Sum of the reported cations, meq/L.</summary>
    public required double CationSum { get; init; }

    /// <summary>Sum of the reported anions, meq/L.</summary>
    public required double AnionSum { get; init; }

    public required BalanceVerdict Verdict { get; init; }

    /// <summary>What it means, in a sentence or two.</summary>
    public required string Words { get; init; }

    /// <summary>Readings of single lines that would close the balance, likeliest first.</summary>
    public IReadOnlyList<string> Suspects { get; init; } = [];

    /// <summary>100 (cations − anions)/(cations + anions), %; 0 for pure water.</summary>
    public double Percent => CationSum + AnionSum > 0 ? 100 * (CationSum - AnionSum) / (CationSum + AnionSum) : 0;

    /// <summary>What laboratories allow, meq/L: 0.2 up to 3 meq/L of anions, 2 % of both sums up to 10, 5 % above.</summary>
    public double Allowed => Allowance(CationSum, AnionSum);

    internal static double Allowance(double cations, double anions) =>
        anions <= 3 ? WaterCheck.Of("balance.small")
        : (cations + anions) / 100 * WaterCheck.Of(anions <= 10 ? "balance.middle" : "balance.large");
}
