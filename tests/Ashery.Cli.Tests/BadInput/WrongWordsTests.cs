using Ashery.Cli.Tests.Frame;

namespace Ashery.Cli.Tests.BadInput;

/// <summary>
/// What a grower can type wrong: each is answered with the field, what is wrong and a way out, exit code 2, and never a trace.
/// </summary>
public class WrongWordsTests
{
    /// <summary>Words, the field that is named, a piece of the message, a piece of the way out.</summary>
    public static TheoryData<string, string, string, string> Table => new()
    {
        // Zero, negative, huge, not a number, missing.
        { "mix --ratio 0:0:0 --from urea,mkp", "ratio", "nothing is wanted", "above zero" },
        { "mix --ratio 3:-1:2 --from urea,mkp", "ratio", "", "ratio" },
        { "mix --ratio NaN:1:2 --from urea,mkp", "ratio", "number", "" },
        { "mix --ratio 1e300:1:2 --from urea,mkp", "ratio", "above", "or less" },
        { "mix --ratio 3:1 --from urea,mkp", "ratio", "", "" },
        { "mix --ratio three --from urea,mkp", "ratio", "", "" },
        { "mix --ratio --from urea,mkp", "ratio", "has no value", "--ratio N:P:K" },
        { "mix --grade 60-30-30 --from urea,mkp", "grade", "add up to 120 %", "100 %" },
        { "mix --grade 0-0-0 --from urea,mkp", "grade", "nothing is wanted", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 0g", "batch", "", "120g" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch -5g", "batch", "", "120g" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 99999999999kg", "batch", "", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch NaNg", "batch", "", "120g" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 60g..40g", "batch", "before it begins", "smaller" },
        { "mix --ratio 3:1:2 --from urea,mkp --step 0g", "step", "", "1g" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 10g --step 4g", "batch", "No whole number of steps", "finer scale" },
        { "mix --ratio 3:1:2 --from urea,mkp --at-most 0", "at-most", "whole number from 1 to 8", "--at-most 4" },
        { "mix --ratio 3:1:2 --from urea,mkp --best 1000000", "best", "whole number from 1 to 1000", "--best 20" },
        { "mix --ratio 3:1:2 --from urea,mkp --draws -1", "draws", "whole number", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --seed 1.5", "seed", "whole number", "" },

        // Unknown units, decimal commas.
        { "mix --ratio 3:1:2 --from urea,mkp --batch 75", "batch", "unit", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 75stone", "batch", "", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --scoop 5inch", "scoop", "", "mL" },
        { "mix --ratio 3:1:2 --from urea,mkp --batch 7,5g", "batch", "comma", "point" },
        { "mix --ratio 3,5:1:2 --from urea,mkp", "ratio", "comma", "point" },
        { "mix --ratio 3:1:2 --from urea=46,5-0-0,mkp", "", "", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --price urea=1,2", "price", "comma", "" },

        // Labels that cannot be.
        { "mix --ratio 3:1:2 --from urea=60-0-0,mkp", "urea", "", "" },
        { "mix --ratio 3:1:2 --from urea=-1-0-0,mkp", "urea", "", "" },
        { "mix --ratio 3:1:2 --from urea=,mkp", "urea", "", "" },
        { "mix --ratio 3:1:2 --from =46-0-0,mkp", "material", "", "" },

        // Materials.
        { "mix --ratio 3:1:2 --from uera,mkp", "material", "'uera' is not in the catalogue", "urea" },
        { "mix --ratio 3:1:2 --from urea,urea,mkp", "from", "given twice", "once" },
        { "mix --ratio 3:1:2 --from urea,,mkp", "from", "empty place", "comma" },
        { "mix --ratio 3:1:2 --from", "from", "has no value", "--from" },
        { "mix --ratio 3:1:2 --from urea --price mkp=2", "price", "not among", "" },
        { "compatible urea", "material", "Fewer than two", "ashery compatible" },
        { "compatible urea urea", "material", "named twice", "once" },
        { "compatible urea gypsun", "material", "not a material", "gypsum" },
        { "materials pottassium-nitrate", "material", "not a material", "potassium-nitrate" },
        { "materials --kind salt", "kind", "not one of", "straight" },
        { "crops fuschia", "crop", "not a crop", "fuchsia" },
        { "mix --crop fuschia --from urea,mkp", "crop", "not a crop", "fuchsia" },

        // Limits.
        { "mix --ratio 3:1:2 --from urea,mkp --limit urea<=30", "limit urea", "no unit", "%" },
        { "mix --ratio 3:1:2 --from urea,mkp --limit sweetness<=3%", "limit", "not something that can be limited", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --limit chloride<=-2%", "limit chloride", "below 0", "" },
        { "mix --ratio 3:1:2 --from urea,mkp --limit chloride<=200%", "limit chloride", "above 100", "" },

        // Acid, tanks and sprays.
        { "acid --water hard --acid nitric --strength 121% --to-ph 6", "strength", "121 % is not a strength", "60 %" },
        { "acid --water hard --acid nitric --density 0.5 --to-ph 6", "density", "not a density of nitric acid", "Weigh 10 mL" },
        { "acid --water hard --acid sulfuric --density 1.835 --to-ph 6", "density", "gets lighter again", "percent" },
        { "acid --water hard --acid nitric --strength 60% --to-ph 9", "pH", "acid only lowers it", "in between" },
        { "acid --water hard --acid nitric --strength 60% --to-alkalinity 900", "alkalinity", "above the water's own", "less" },
        { "acid --water hard --acid nitric --strength 60% --to-ph 6 --celsius 60", "celsius", "above the most allowed, 40", "" },
        { "acid --water hard --acid nitric --strength 60% --to-ph 6 --to-alkalinity 50", "to-ph", "Both", "one of the two" },
        { "acid --water hard --acid nitric --strength 60%", "to-ph", "Neither", "--to-ph 5.8" },
        { "acid --water hard --acid nitric --to-ph 6", "strength", "not said", "--strength 60%" },
        { "acid --water hard --acid vinegar --to-ph 6", "acid", "not one of", "nitric" },
        { "acid --water hard --to-ph 6", "acid", "No acid", "phosphoric" },
        { "acid --water hard --acid nitric --strength 60% --density 1.3 --to-ph 6", "strength", "together", "one of them" },
        { "acid --water hard --acid nitric --strength 60% --to-ph 6 --ratio 1:0", "ratio", "", "1:100" },
        { "acid --water hard --acid nitric --strength 60% --to-ph 6 --volume -5L", "volume", "", "10L" },
        { "acid --water swamp --acid nitric --strength 60% --to-ph 6", "water", "neither a file nor a water", "pure" },
        { "tanks --add mkp=0.2 --ratio 1:0", "ratio", "", "1:100" },
        { "tanks --add mkp=0.2 --ratio 2:100", "ratio", "does not begin with 1", "1:100" },
        { "tanks --add mkp=0.2 --ratio 1:5000", "ratio", "not the ratio of an injector", "1:1000" },
        { "tanks --add mkp=-0.2", "add mkp", "", "2" },
        { "tanks --add mkpp=0.2", "add", "", "mkp" },
        { "tanks --add mkp=0.2 --tanks 0", "tanks", "whole number from 1 to 4", "--tanks 2" },
        { "tanks --add mkp=0.2 --coldest 60", "coldest", "above the most allowed, 40", "" },
        { "tanks", "add", "Nothing is added", "--add" },
        { "tanks --tanks 1 --add phosphoric-acid-85=0.1 --add calcium-nitrate-tetrahydrate=0.5", "tanks", "never share a tank", "without phosphate" },
        { "spray --add epsom-salt=-2", "add epsom-salt", "", "2" },
        { "spray --add epsom-salt=900", "add epsom-salt", "not the strength of a spray", "epsom-salt=2" },
        { "spray --add epsom=2", "add", "", "epsom-salt" },
        { "spray --add epsom-salt=2 --crop fuschia", "crop", "not a crop", "fuchsia" },
        { "spray --add epsom-salt=2 --celsius 60", "celsius", "above the most allowed, 40", "" },
        { "spray --add urea=2 --biuret 40", "biuret", "above the most allowed, 10", "" },
        { "spray --add urea=2 --pot 0L", "pot", "", "3L" },
        { "spray --add urea=2 --width wide", "width", "not a number", "30" },
        { "spray", "add", "Nothing is added", "--add" },

        // Words that do not go together, or are missing.
        { "mix --from urea,mkp", "wish", "Nothing is wanted", "--ratio" },
        { "mix --ratio 3:1:2 --grade 10-5-10 --from urea,mkp", "wish", "together", "one of them" },
        { "mix --ratio 3:1:2 --ratio 3:1:4 --from urea,mkp", "ratio", "given twice", "once" },
        { "mix --ratio 3:1:2 --from urea,mkp --step 1g --scoop 5mL", "step", "together", "one of them" },
        { "mix --ratio 3:1:2 --from urea,mkp --rank best", "rank", "not one of", "typical" },
        { "mix --ratio 3:1:2 --from urea,mkp --scoop ladle --demo", "scoop", "no scoop", "5mL" },
        { "mix --ratio 3:1:2", "garden", "no stored garden", "--demo" },
        { "dose --demo --garden x.json", "garden", "Both", "one of them" },
        { "dose --demo --on 20.5.2026", "on", "not a day", "2026-05-20" },
        { "dose --demo --on 2026-02-30", "on", "not a day", "2026-05-20" },
        { "dose --demo --feed nothing", "feed", "nothing", "Kept are" },
        { "dose --demo --pot nowhere", "pot", "nowhere", "Pots are" },
        { "dose --demo --state p07=thirsty", "state", "not a pot and its state", "dry" },
        { "dose --demo --state nowhere=dry", "state", "no pot", "Pots are" },
        { "dose --demo --max-temp hot", "max-temp", "", "" },
        { "dose --demo --max-temp 10 --mean-temp 20", "max-temp", "below the mean", "swapped" },
        { "year --demo --from yesterday", "from", "not a day", "2026-05-20" },
        { "year --garden no-such-file.json", "garden", "is not there", "name" },
        { "card --ratio 3:1:2 --from urea,mkp,potassium-nitrate --to card.docx", "to", "does not end in", "card.pdf" },
        { "card --ratio 3:1:2 --from urea,mkp,potassium-nitrate --paper napkin", "paper", "not one of", "" },
        { "card --ratio 3:1:2 --from urea,mkp,potassium-nitrate --blend 500", "blend", "only", "ashery mix" },
        { "serve --port 99999", "port", "whole number from 1 to 65535", "--port" },
        { "completion tcsh", "shell", "not a shell", "bash" },

        // No such verb, no such option.
        { "mxi --ratio 3:1:2", "verb", "'mxi' is not a verb", "ashery mix" },
        { "frobnicate", "verb", "not a verb", "mix" },
        { "mix --ration 3:1:2 --from urea", "option", "'--ration' is not an option", "--ratio" },
        { "compatible urea gypsum --jsn", "option", "'--jsn' is not an option", "--json" },
        { "year --demo tomorrow", "command line", "'tomorrow'", "quotes" },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Each_is_refused_with_field_reason_and_way_out(string line, string field, string message, string wayOut)
    {
        var run = Command.Run(Shell.Split(line));
        Assert.Equal(2, run.Code);
        Assert.Empty(run.Output);
        var said = run.Said;
        Assert.Contains(field, said, StringComparison.Ordinal);
        Assert.Contains(message, said, StringComparison.Ordinal);
        Assert.Contains(wayOut, said, StringComparison.Ordinal);
        NeverATrace(run);
    }

    [Fact]
    public void The_table_is_long_enough_and_no_line_stands_twice()
    {
        var lines = Table.Select(static row => row.Data.Item1).ToList();
        Assert.True(lines.Count >= 25);
        Assert.Equal(lines.Count, lines.Distinct().Count());
    }

    /// <summary>All that is wrong is told at once.</summary>
    [Fact]
    public void Three_mistakes_are_told_together()
    {
        var run = Command.Run("mix", "--ratio", "0:0:0", "--from", "uera,mkp", "--batch", "75");
        Assert.Equal(2, run.Code);
        Assert.Contains("ratio:", run.Errors, StringComparison.Ordinal);
        Assert.Contains("'uera'", run.Errors, StringComparison.Ordinal);
        Assert.Contains("batch:", run.Errors, StringComparison.Ordinal);
    }

    internal static void NeverATrace(Printed run)
    {
        foreach (var sign in new[] { "Exception", "   at ", "System.", ".cs:line", "sorry" })
        {
            Assert.DoesNotContain(sign, run.Errors, StringComparison.Ordinal);
            Assert.DoesNotContain(sign, run.Output, StringComparison.Ordinal);
        }
    }
}
