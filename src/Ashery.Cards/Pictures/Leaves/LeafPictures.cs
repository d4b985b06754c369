using System.Text;
using Ashery.Cards.Drawing;

namespace Ashery.Cards.Pictures.Leaves;

/// <summary>The clinic's own drawings by picture id: a leaf of each pattern, plants, tips, buds, roots and pots; clear from 120 px on.</summary>
public static class LeafPictures
{
    private const double Wide = 120;

    // Tilted as a leaf hangs; whole plants and pots stand upright.
    private const double Lean = 14;

    private static readonly (string Id, string Title, string Says, double Turn, Action<Pen> Draw)[] Drawings =
    [
        ("leaf-green", "A healthy leaf", "Green all over.", Lean, LeafPatterns.Green),
        ("leaf-uniform", "Evenly pale", "The whole leaf is pale yellow-green.", Lean, LeafPatterns.Uniform),
        ("leaf-interveinal", "Yellow between the veins", "Yellow, while all veins, the fine ones too, stay green.", Lean, LeafPatterns.Interveinal),
        ("leaf-net", "A wide green net", "Pale between the veins with a broad green band along each.", Lean, LeafPatterns.Net),
        ("leaf-margin", "Yellow edge", "A yellow band along the edge; the middle is green.", Lean, LeafPatterns.Margin),
        ("leaf-mottle", "Blotched", "Yellow blotches between the veins.", Lean, LeafPatterns.Mottle),
        ("leaf-white", "Bleached", "Almost white.", Lean, LeafPatterns.White),
        ("leaf-stipple", "Pin pricks", "Sown with fine pale dots.", Lean, LeafPatterns.Stipple),
        ("leaf-mosaic", "Mosaic and rings", "Light and dark green in angular patches, with rings.", Lean, LeafPatterns.Mosaic),
        ("leaf-scorch", "Scorched edge", "The edge is brown and dead, with a yellow line inside it.", Lean, LeafPatterns.Scorch),
        ("leaf-tipburn", "Burnt tip", "The tip is brown and dead.", Lean, LeafPatterns.TipBurn),
        ("leaf-specks", "Many small brown specks", "Very small brown specks, thickest near the yellow edge.", Lean, LeafPatterns.Specks),
        ("leaf-spots", "A few larger spots", "Round brown spots with a yellow border.", Lean, LeafPatterns.Spots),
        ("leaf-between", "Dead between the veins", "Brown patches between the side veins.", Lean, LeafPatterns.BetweenDead),
        ("leaf-collapse", "Young leaves die", "The youngest leaves of the shoot hang brown and dead.", 0, LeafForms.Collapse),
        ("leaf-soaked", "Water-soaked", "Dark, glassy patches that turn brown.", Lean, LeafPatterns.Soaked),
        ("leaf-purple", "Purple", "Purple all over, greener along the midrib.", Lean, LeafPatterns.Purple),
        ("leaf-redspots", "Reddish spots", "Reddish spots scattered over the leaf.", Lean, LeafPatterns.RedSpots),
        ("leaf-dark", "Dark green", "Very dark bluish green.", Lean, LeafPatterns.Dark),
        ("leaf-bronze", "Bronzed", "Brownish gold sheen.", Lean, LeafPatterns.Bronze),
        ("leaf-silver", "Silver streaks", "Silvery streaks with black specks.", Lean, LeafPatterns.SilverStreaks),
        ("leaf-small", "Small", "Half the size it should have; dots show that.", Lean, LeafForms.Small),
        ("leaf-roll", "Rolled up", "Both edges are rolled upwards and inwards.", Lean, LeafForms.Roll),
        ("leaf-cup", "Cupped down", "The edges hang like those of an umbrella.", 0, LeafForms.Cup),
        ("leaf-strap", "Strap-like and crinkled", "Narrow, thick and crinkled.", Lean, LeafForms.Strap),
        ("leaf-twist", "Twisted", "Hooked to one side, one half short.", 0, LeafForms.Twist),
        ("leaf-rosette", "A rosette", "Tiny leaves bunched on a short shoot.", 0, LeafForms.Rosette),
        ("under-clean", "A clean underside", "Nothing on it.", Lean, Undersides.Clean),
        ("under-webbing", "Mites and webbing", "Fine threads and tiny red dots with legs.", Lean, Undersides.Webbing),
        ("under-thrips", "Thrips", "Slender insects and black specks.", Lean, Undersides.Thrips),
        ("under-insects", "Sucking insects", "Round green insects and sticky drops.", Lean, Undersides.Insects),
        ("under-blisters", "Corky blisters", "Raised corky blisters.", Lean, Undersides.Blisters),
        ("under-mould", "Mould or rust", "White felt and rusty pustules.", Lean, Undersides.Mould),
        ("plant-older", "The oldest leaves", "The two lowest pairs are yellow.", 0, PlantDrawings.Older),
        ("plant-middle", "The middle leaves", "Two pairs half-way up are yellow.", 0, PlantDrawings.Middle),
        ("plant-younger", "The youngest leaves", "The leaves at the tip are yellow.", 0, PlantDrawings.Younger),
        ("plant-whole", "All leaves", "The whole plant is yellow.", 0, PlantDrawings.Whole),
        ("tip-normal", "A growing tip", "Young leaves unfold at the tip.", 0, PlantDrawings.TipNormal),
        ("tip-slow", "A slow tip", "Thin stem, small pale leaves.", 0, PlantDrawings.TipSlow),
        ("tip-dies", "A dead tip", "The tip is brown; side shoots begin below it.", 0, PlantDrawings.TipDies),
        ("tip-bunched", "Many side shoots", "Five shoots in a bunch where one should be.", 0, PlantDrawings.TipBunched),
        ("bud-normal", "Flower and bud", "An open flower and a sound bud.", 0, PlantDrawings.BudNormal),
        ("bud-drop", "Buds drop", "Buds turn yellow and lie below the plant.", 0, PlantDrawings.BudDrop),
        ("bud-scarred", "Scarred petals", "Pale streaks on petals, a brown bud.", 0, PlantDrawings.BudScarred),
        ("bud-deformed", "A deformed flower", "Petals of unlike size, crumpled.", 0, PlantDrawings.BudDeformed),
        ("roots-white", "White roots", "Many white roots with fine hairs.", 0, PotDrawings.White),
        ("roots-few", "Few roots", "Three thin roots.", 0, PotDrawings.Few),
        ("roots-brown", "Brown roots", "Soft brown roots in wet medium; the skin slips off.", 0, PotDrawings.BrownRot),
        ("roots-tips", "Dead root tips", "White roots that end in orange-brown, dead tips.", 0, PotDrawings.DeadTips),
        ("roots-stubby", "Stubby roots", "Short, thick, much branched roots.", 0, PotDrawings.Stubby),
        ("roots-circling", "Circling roots", "Roots wind round the ball and hide the medium.", 0, PotDrawings.Circling),
        ("roots-grubs", "Grubs", "Gnawed roots and white grubs with dark heads.", 0, PotDrawings.Grubs),
        ("pot-light", "A light pot", "It hangs high on the balance: dry inside.", 0, PotDrawings.Light),
        ("pot-right", "A pot of the right weight", "It hangs in the middle of the balance.", 0, PotDrawings.Right),
        ("pot-heavy", "A heavy pot", "It draws the balance down: wet inside.", 0, PotDrawings.Heavy),
    ];

    /// <summary>Every picture id.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Drawings.Select(static d => d.Id)];

    /// <summary>What a picture is called; null for an id that does not exist.</summary>
    public static string? Title(string pictureId) => Find(pictureId)?.Title;

    /// <summary>
    /// The drawing as SVG, 120 by 120, or empty for an id that does not exist. <paramref name="id"/> makes the ids of title and description unique in a page; where
    /// the words stand beside the picture, <paramref name="silent"/> leaves it to the eye alone.
    /// </summary>
    public static string Svg(string? pictureId, string? id = null, SvgFor use = SvgFor.Page, bool silent = false)
    {
        if (pictureId is null || Find(pictureId) is not var (key, title, says, turn, draw))
        {
            return string.Empty;
        }

        var name = Safe.Id(id ?? key);
        var svg = new StringBuilder(4096);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"as-picture as-leaf\" viewBox=\"0 0 ").Append(Pen.N(Wide)).Append(' ').Append(Pen.N(Wide)).Append('"');
        if (use == SvgFor.File)
        {
            svg.Append(" width=\"").Append(Pen.N(Wide)).Append("\" height=\"").Append(Pen.N(Wide)).Append('"');
        }

        if (silent)
        {
            svg.Append(" aria-hidden=\"true\" focusable=\"false\">\n");
        }
        else
        {
            svg.Append(" role=\"img\" aria-labelledby=\"").Append(name).Append("-title ").Append(name).Append("-desc\">\n")
                .Append("<title id=\"").Append(name).Append("-title\">").Append(Safe.Xml(title)).Append("</title>\n")
                .Append("<desc id=\"").Append(name).Append("-desc\">").Append(Safe.Xml(says)).Append("</desc>\n");
        }

        if (use == SvgFor.File)
        {
            svg.Append("<style>\n").Append(LookCss.Standalone(Look.Palette)).Append("</style>\n");
        }

        return svg.Append(new Pen().At(Wide / 2, Wide / 2, turn, 1, draw)).Append("</svg>\n").ToString();
    }

    private static (string Id, string Title, string Says, double Turn, Action<Pen> Draw)? Find(string pictureId)
    {
        foreach (var drawing in Drawings)
        {
            if (drawing.Id == pictureId)
            {
                return drawing;
            }
        }

        return null;
    }
}
