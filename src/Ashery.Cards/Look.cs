namespace Ashery.Cards;

/// <summary>
/// How Ashery looks on paper and on a screen: one palette (light and dark), one type scale, one spacing scale. Pages take
/// them as CSS variables (<see cref="Css"/>), PDF and SVG as constants. The ground is pale wood ash, the ink is soot; leaf
/// green says "given, fine, chosen", ember says "look here", water blue goes with what is poured or sprayed. A colour
/// never tells anything alone: shape or words always say it too.
/// </summary>
public static class Look
{
    /// <summary>Every named colour, in the order of the style sheet.</summary>
    public static IReadOnlyList<Swatch> Palette { get; } =
    [
        new(Tone.Ground, "ground", "#f1f2ee", "#151917", "behind everything"),
        new(Tone.Sheet, "sheet", "#fcfdfa", "#1e2421", "cards, tables, pictures"),
        new(Tone.Ink, "ink", "#1b211e", "#eceee7", "text"),
        new(Tone.Soft, "soft", "#4a534e", "#b4bdb6", "second voice: notes, units, captions"),
        new(Tone.Line, "line", "#d0d5cd", "#3a433e", "hairlines that only order"),
        new(Tone.Edge, "edge", "#747d77", "#8b958f", "edges of controls and axes"),
        new(Tone.Leaf, "leaf", "#27603f", "#93cda6", "links, chosen, given"),
        new(Tone.LeafWash, "leaf-wash", "#dceadf", "#26392d", "ground of leaf"),
        new(Tone.Ember, "ember", "#99400c", "#f4a06b", "target, caution, the one action"),
        new(Tone.EmberWash, "ember-wash", "#f9e5d5", "#44301f", "ground of ember"),
        new(Tone.Water, "water", "#1f5878", "#8fc3e0", "by the can, from the sprayer"),
        new(Tone.WaterWash, "water-wash", "#dbe8ef", "#22343f", "ground of water"),
        new(Tone.OnLeaf, "on-leaf", "#ffffff", "#10241a", "text on leaf"),
        new(Tone.OnEmber, "on-ember", "#ffffff", "#2c1507", "text on ember"),
    ];

    /// <summary>Pairs (text, ground) that must reach 4.5 : 1 (WCAG 2.2, success criterion 1.4.3).</summary>
    public static IReadOnlyList<(Tone Text, Tone Ground)> ReadablePairs { get; } =
    [
        (Tone.Ink, Tone.Ground), (Tone.Ink, Tone.Sheet), (Tone.Soft, Tone.Ground), (Tone.Soft, Tone.Sheet),
        (Tone.Leaf, Tone.Ground), (Tone.Leaf, Tone.Sheet), (Tone.Leaf, Tone.LeafWash), (Tone.Ink, Tone.LeafWash), (Tone.Soft, Tone.LeafWash),
        (Tone.Ember, Tone.Ground), (Tone.Ember, Tone.Sheet), (Tone.Ember, Tone.EmberWash), (Tone.Ink, Tone.EmberWash), (Tone.Soft, Tone.EmberWash),
        (Tone.Water, Tone.Ground), (Tone.Water, Tone.Sheet), (Tone.Water, Tone.WaterWash), (Tone.Ink, Tone.WaterWash), (Tone.Soft, Tone.WaterWash),
        (Tone.OnLeaf, Tone.Leaf), (Tone.OnEmber, Tone.Ember),
    ];

    /// <summary>Pairs (edge, ground) that must reach 3 : 1 (WCAG 2.2, success criterion 1.4.11).</summary>
    public static IReadOnlyList<(Tone Edge, Tone Ground)> VisiblePairs { get; } =
        [(Tone.Edge, Tone.Ground), (Tone.Edge, Tone.Sheet), (Tone.Leaf, Tone.Sheet), (Tone.Ember, Tone.Sheet), (Tone.Water, Tone.Sheet)];

    // What a camera must read stays black on white, whatever the theme.
    private static readonly Swatch[] Fixed = [new(Tone.Black, "", "#000000", "#000000", "modules of a code"), new(Tone.White, "", "#ffffff", "#ffffff", "ground of a code")];

    /// <summary>Type families: reading, headings and figures, and set width. No font is fetched.</summary>
    public const string TextFamily = "\"DejaVu Sans Condensed\", \"Segoe UI\", Roboto, \"Helvetica Neue\", \"Noto Sans\", \"DejaVu Sans\", system-ui, sans-serif";

    /// <summary>Headings: a book face, so that a page reads like a printed sheet and not like a control panel.</summary>
    public const string HeadFamily = "\"DejaVu Serif Condensed\", \"Iowan Old Style\", \"Palatino Linotype\", \"Noto Serif\", Georgia, \"DejaVu Serif\", serif";

    /// <summary>
    /// The style sheet's first lines: variables for light, dark by the reader's system, and either by
    /// <c>data-theme="light"</c> or <c>"dark"</c> on the root element; black on white when printed.
    /// </summary>
    public static string Css { get; } = LookCss.Build(Palette);

    /// <summary>Classes of the pictures' parts, for pages that set pictures inline without a style of their own.</summary>
    public static string PictureCss { get; } = LookCss.PictureClasses(Palette);

    /// <summary>The swatch of a tone.</summary>
    public static Swatch Of(Tone tone) => Palette.FirstOrDefault(s => s.Tone == tone) ?? Fixed[(int)tone - (int)Tone.Black];
}

/// <summary>A named colour.</summary>
/// <param name="Tone">Its role.</param>
/// <param name="Name">CSS variable without the two hyphens.</param>
/// <param name="Light">On light ground, and on paper, <c>#rrggbb</c>.</param>
/// <param name="Dark">On dark ground.</param>
/// <param name="Use">What it is for.</param>
public sealed record Swatch(Tone Tone, string Name, string Light, string Dark, string Use);

/// <summary>What a colour is for. <see cref="None"/> draws nothing.</summary>
public enum Tone
{
    None,
    Ground,
    Sheet,
    Ink,
    Soft,
    Line,
    Edge,
    Leaf,
    LeafWash,
    Ember,
    EmberWash,
    Water,
    WaterWash,
    OnLeaf,
    OnEmber,

    /// <summary>Black in every theme: codes that a camera reads.</summary>
    Black,

    /// <summary>White in every theme.</summary>
    White,
}
