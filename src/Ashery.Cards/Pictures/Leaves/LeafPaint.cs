namespace Ashery.Cards.Pictures.Leaves;

/// <summary>
/// Colours of plants, the same by day and by night: a leaf is a leaf. Each is light or dark enough to show on both grounds, and no pattern is told by colour
/// alone: place and shape say it too. Outlines and everything that is not plant take the colours of <see cref="Look"/>.
/// </summary>
internal static class LeafPaint
{
    public const string Green = "#4f9a5c";
    public const string Deep = "#2f6e46";
    public const string Young = "#8cc46f";
    public const string Vein = "#d5ead0";
    public const string Yellow = "#e9cb4d";
    public const string Pale = "#cfd77c";
    public const string White = "#f4f0d6";
    public const string Brown = "#7b4a22";
    public const string Dark = "#472c17";
    public const string Tan = "#b98a4e";
    public const string Purple = "#82406f";
    public const string Red = "#b04343";
    public const string Bronze = "#a0753a";
    public const string Silver = "#d3d9dc";
    public const string Glass = "#34565a";
    public const string Soil = "#5f4a38";
    public const string Wet = "#3b3029";
    public const string Dry = "#a98f6f";
    public const string Clay = "#c0764f";
    public const string Root = "#ece3cb";
    public const string Petal = "#d8588a";
    public const string PetalPale = "#efb3c8";
}
