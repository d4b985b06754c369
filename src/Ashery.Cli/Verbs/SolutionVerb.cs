using System.CommandLine;
using Ashery.Cli.Frame;
using Ashery.Exchange.Solutions;
using Ashery.Solutions.Targets;

namespace Ashery.Cli.Verbs;

/// <summary>From a wish for a feed solution to recipes in the grower's water.</summary>
internal sealed class SolutionVerb : Verb
{
    private readonly SolutionWords words;

    public SolutionVerb()
        : base("solution", "Find what to dissolve for a feed of so many mg/L, an EC and a pH, the water counted in")
    {
        words = new SolutionWords(this);
    }

    public override string Details =>
        """
        A wish is one of:
          N=150: as near as may be to 150 mg/L of the element, the water counted in
          Cl<=50: at most; S>=20: at least; Ca=80..120: between; these are limits, which are kept
          NO3-N=120: a form of nitrogen as N: NO3-N, NH4-N, urea-N; also NH4-N<=15% of all nitrogen
        Quote one with < or >. An oxide or ion, as K2O or NO3, is turned into the element. Materials are those of --from, else the shelf of the garden as far as it dissolves clear.
        The best amounts of the best materials are proved; with --ec the wished figures are proportions and the EC gives the strength; EC and pH are met by trying, each time with the full solution.
        """;

    public override IReadOnlyList<(string Words, string Line)> Examples =>
    [
        ("A feed in moderate water, for 10 L:", "ashery solution N=140 P=30 K=180 Mg=25 --water moderate --from potassium-nitrate,mkp,ammonium-nitrate,epsom-salt --litres 10"),
        ("The same proportions at an EC and a pH:", "ashery solution N=140 P=30 K=180 Ca=100 --water soft --from calcium-nitrate-double,potassium-nitrate,mkp --ec 1.5 --ph 6 --acid phosphoric --strength 75%"),
        ("Little ammonium, weighed to a tenth of a gram:", "ashery solution N=120 K=150 \"NH4-N<=10%\" --from ammonium-nitrate,potassium-nitrate,potassium-sulfate --step 0.1g --litres 20"),
        ("From the demo garden's shelf, as JSON:", "ashery solution N=100 K=120 --demo --water hard --json"),
    ];

    public override int Run(Given given, Terminal terminal)
    {
        var request = words.Read(given, terminal);
        if (request is null || given.Wrong)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        if (given.Take(TargetSearch.Find(request)) is not { } answer)
        {
            return Faults.WrongUse(terminal, this, given);
        }

        answer = answer with { Problems = [.. answer.Problems, .. words.Notes] };
        if (given.Has(Json))
        {
            terminal.Output.Write(TargetJsonText.Write(answer));
        }
        else
        {
            SolutionText.Write(terminal, answer);
        }

        return answer.OutOfReach is null ? ExitCode.Done : ExitCode.OutOfReach;
    }
}
