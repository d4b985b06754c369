using System.Text;

namespace Ashery.Cards;

/// <summary>Writes <see cref="Look"/> as CSS.</summary>
internal static class LookCss
{
    // A ratio of 1.2 between steps, from 17 px: readable at arm's length outdoors. Touch targets of 48 px suit a dirty thumb.
    private const string Scales = """
          --text-small: 0.875rem;
          --text: 1.0625rem;
          --text-large: 1.275rem;
          --head-3: 1.275rem;
          --head-2: 1.53rem;
          --head-1: 2rem;
          --space-1: 0.25rem;
          --space-2: 0.5rem;
          --space-3: 1rem;
          --space-4: 1.5rem;
          --space-5: 2.5rem;
          --touch: 3rem;
          --radius: 0.375rem;
        """;

    public static string Build(IReadOnlyList<Swatch> palette)
    {
        var css = new StringBuilder();
        css.Append(":root {\n  color-scheme: light dark;\n");
        Variables(css, palette, dark: false, indent: "  ");
        css.Append("  --family-text: ").Append(Look.TextFamily).Append(";\n");
        css.Append("  --family-head: ").Append(Look.HeadFamily).Append(";\n");
        css.Append(Scales).Append("\n}\n");
        css.Append("@media (prefers-color-scheme: dark) {\n  :root:not([data-theme=\"light\"]) {\n");
        Variables(css, palette, dark: true, indent: "    ");
        css.Append("  }\n}\n:root[data-theme=\"dark\"] {\n  color-scheme: dark;\n");
        Variables(css, palette, dark: true, indent: "  ");
        css.Append("}\n:root[data-theme=\"light\"] {\n  color-scheme: light;\n}\n");
        css.Append("@media print {\n  :root, :root[data-theme=\"dark\"], :root:not([data-theme=\"light\"]) {\n");
        Variables(css, palette, dark: false, indent: "    ");
        css.Append("    --ground: #ffffff;\n    --sheet: #ffffff;\n  }\n}\n");
        return css.ToString();
    }

    /// <summary>Classes <c>f-NAME</c> (fill) and <c>s-NAME</c> (stroke): a page's variable wins, the picture's own is the fallback.</summary>
    public static string PictureClasses(IReadOnlyList<Swatch> palette)
    {
        var css = new StringBuilder();
        foreach (var s in palette)
        {
            css.Append(".as-f-").Append(s.Name).Append("{fill:var(--").Append(s.Name).Append(",var(--as-").Append(s.Name).Append(',').Append(s.Light).Append("))}");
            css.Append(".as-s-").Append(s.Name).Append("{stroke:var(--").Append(s.Name).Append(",var(--as-").Append(s.Name).Append(',').Append(s.Light).Append("))}\n");
        }

        return css.ToString();
    }

    /// <summary>The style a picture carries when it stands alone in a file.</summary>
    public static string Standalone(IReadOnlyList<Swatch> palette)
    {
        var css = new StringBuilder("@media (prefers-color-scheme:dark){svg{");
        foreach (var s in palette)
        {
            css.Append("--as-").Append(s.Name).Append(':').Append(s.Dark).Append(';');
        }

        return css.Append("}}\n@media print{svg{")
            .AppendJoin(null, palette.Select(s => $"--as-{s.Name}:{s.Light};")).Append("}}\n")
            .Append(PictureClasses(palette)).ToString();
    }

    private static void Variables(StringBuilder css, IReadOnlyList<Swatch> palette, bool dark, string indent)
    {
        foreach (var s in palette)
        {
            css.Append(indent).Append("--").Append(s.Name).Append(": ").Append(dark ? s.Dark : s.Light).Append(";\n");
        }
    }
}
