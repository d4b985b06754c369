using Ashery.Problems;

namespace Ashery.Solutions;

/// <summary>How much of a pure acid brings a water to a pH or an alkalinity.</summary>
/// <param name="Acid">Which acid.</param>
/// <param name="Moles">mol per kg of water.</param>
/// <param name="After">The water with the acid in it.</param>
public sealed record AcidDose(Salt Acid, double Moles, Solution After)
{
    private const double Most = 2;

    /// <summary>Acids that may be asked for, by formula.</summary>
    public static IReadOnlyList<string> Acids { get; } = ["HNO3", "H3PO4", "H2SO4", "C6H8O7"];

    /// <summary>g of the pure acid per kg of water.</summary>
    public double Grams => Moles * Acid.MolarMass;

    /// <summary>mL of a bottle of this strength (mass fraction 0 to 1) and density (g/mL) per kg of water.</summary>
    public double Millilitres(double massFraction, double density) => Grams / massFraction / density;

    /// <summary>The dose to a pH, in a closed tank or one open to the air.</summary>
    public static Result<AcidDose> ToPh(SolutionInput water, Salt acid, double pH)
    {
        if (Refuse(acid) is { } refused)
        {
            return Result.Fail<AcidDose>(refused);
        }

        var start = Speciation.Solve(water);
        if (!(pH >= 2 && pH <= start.PH))
        {
            return Result.Fail<AcidDose>("pH", FormattableString.Invariant($"{pH:0.##} is not between 2 and the water's own pH of {start.PH:0.##}; acid only lowers it."),
                "Ask for a pH in between; 5.5 to 6.5 is common for feeds.");
        }

        var atMost = With(water, acid, Most).PH - pH;
        if (atMost > 0)
        {
            return Result.Fail<AcidDose>("pH", FormattableString.Invariant($"{pH:0.##} is out of reach of {acid.Formula}: 2 mol a kg of water bring it to {atMost + pH:0.##}."),
                "Take a stronger acid or a higher pH.");
        }

        // pH falls with acid, steeply at the end of each buffer: false position with a halving every third time.
        var bracket = new FallingBracket(0, start.PH - pH, Most, atMost);
        var mid = 0.0;
        Solution after = start;
        for (var i = 0; i < 120 && bracket.High - bracket.Low > 1e-12; i++)
        {
            mid = bracket.Next(i);
            after = With(water, acid, mid);
            var at = after.PH - pH;
            if (Math.Abs(at) < 1e-7)
            {
                break;
            }

            bracket.Put(mid, at);
        }

        return Result.Of(new AcidDose(acid, mid, after));
    }

    /// <summary>The dose to an alkalinity (mol of charge per kg water): exact, because alkalinity is a sum of amounts.</summary>
    public static Result<AcidDose> ToAlkalinity(SolutionInput water, Salt acid, double alkalinity)
    {
        if (Refuse(acid) is { } refused)
        {
            return Result.Fail<AcidDose>(refused);
        }

        var start = SolutionMeasures.Alkalinity(Speciation.Solve(water));
        if (!(alkalinity <= start && alkalinity > start - 1))
        {
            return Result.Fail<AcidDose>("alkalinity",
                FormattableString.Invariant($"{alkalinity * 50043.5:0.#} mg/L as CaCO3 is above the water's own {start * 50043.5:0.#}; acid only lowers it."),
                "Ask for less than the water holds.");
        }

        var taken = 0.0;
        foreach (var (component, number) in acid.Gives)
        {
            var c = water.Chemistry.Components[component];
            taken -= number * (c.AlkalinityProtons + c.Charge);
        }

        var moles = (start - alkalinity) / taken;
        return Result.Of(new AcidDose(acid, moles, With(water, acid, moles)));
    }

    private static Problem? Refuse(Salt acid) => Acids.Contains(acid.Formula) ? null
        : new("acid", $"{acid.Formula} is not an acid for water.", $"Take one of {string.Join(", ", Acids)}.");

    private static Solution With(SolutionInput water, Salt acid, double moles)
    {
        var totals = water.Totals.ToArray();
        foreach (var (component, number) in acid.Gives)
        {
            totals[component] += number * moles;
        }

        return Speciation.Solve(water.WithTotals(totals));
    }
}
