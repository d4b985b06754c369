using System.Globalization;

namespace Ashery.Cards;

/// <summary>Styles of the HTML card: one column, readable at arm's length, black on white on paper.</summary>
internal static class CardCss
{
    public const string Article = """
        .card { background: var(--sheet); color: var(--ink); font-family: var(--family-text); line-height: 1.45; overflow-wrap: anywhere; }
        .card header { border-top: 0.25rem solid var(--leaf); padding-top: 0.6em; }
        .card-kind { margin: 0; color: var(--soft); font-size: 0.875em; }
        .card h1, .card h2, .card h3, .card h4 { font-family: var(--family-head); line-height: 1.2; text-wrap: balance; }
        .card header :is(h1, h2, h3) { margin: 0.1em 0 0.45em; font-size: 1.9em; }
        .card section :is(h2, h3, h4) { margin: 1.5em 0 0.45em; font-size: 1.25em; break-after: avoid; }
        .card dl, .card dd, .card figure { margin: 0; }
        .card-particulars { display: flex; flex-wrap: wrap; gap: 0.5em 1.6em; align-items: end; }
        .card dt, .card small, .card caption { color: var(--soft); }
        .card-particulars dt { font-size: 0.875em; }
        .card-particulars dd { font-weight: 700; font-variant-numeric: tabular-nums; }
        .card-particulars small { display: block; font-weight: 400; }
        .card-lead dd { font-family: var(--family-head); font-size: 1.9em; line-height: 1.15; }
        .card-lead small { font-family: var(--family-text); font-size: 0.46em; line-height: 1.3; }
        .card .card-first { margin: 1.2em 0 0; padding: 0.55em 0.8em; background: var(--ember-wash); border-left: 0.3rem solid var(--ember); }
        .card ul, .card ol { margin: 0; padding-left: 1.6em; }
        .card li { margin: 0.25em 0; break-inside: avoid; }
        .card li::marker { color: var(--leaf); font-weight: 700; }
        .card p { margin: 0.3em 0; }
        .card-table + p, .card-table + dl, figure + .card-table { margin-top: 0.8em; }
        .card-table { overflow-x: auto; }
        .card table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
        .card caption { text-align: left; padding: 0.6em 0 0.2em; font-size: 0.9em; }
        .card th, .card td { padding: 0.34em 0.9em 0.34em 0; text-align: left; vertical-align: top; border-bottom: 1px solid var(--line); overflow-wrap: break-word; }
        .card th { color: var(--soft); font-size: 0.875em; font-weight: 700; vertical-align: bottom; border-bottom: 1.5px solid var(--edge); }
        .card .figure { text-align: right; white-space: nowrap; }
        .card th:last-child, .card td:last-child { padding-right: 0; }
        .card tfoot td { font-weight: 700; border-top: 1.5px solid var(--edge); border-bottom: 0; }
        .card .card-group th { padding-top: 1em; color: var(--ink); font-family: var(--family-head); font-size: 1em; break-after: avoid; }
        .card thead { display: table-header-group; }
        .card tr { break-inside: avoid; }
        .card-facts > div { display: grid; grid-template-columns: minmax(7em, 11em) 1fr; gap: 0 1em; padding: 0.28em 0; border-bottom: 1px solid var(--line); break-inside: avoid; }
        .card-facts small { display: block; }
        .card-caution { margin-top: 1.5em; padding: 0.1em 0 0.1em 0.9em; border-left: 0.3rem solid var(--ember); }
        .card .card-caution :is(h2, h3, h4) { margin-top: 0.1em; color: var(--ember); }
        .card-caution :is(h2, h3, h4)::before { content: "\26A0\FE0E\20"; }
        .card-caution li::marker { color: var(--ember); }
        .card figure { margin: 0.6em auto; break-inside: avoid; }
        .card .card-code { max-width: 11rem; margin: 0.8em 0 0; font-size: 0.75em; color: var(--soft); }
        .card .card-narrow { max-width: 24rem; }
        .card .card-wide { overflow-x: auto; }
        .card .card-wide svg { min-width: 36rem; }
        .card figure svg { display: block; width: 100%; height: auto; }
        .card footer { margin-top: 2em; padding-top: 0.6em; border-top: 1px solid var(--edge); color: var(--soft); font-size: 0.8em; }
        @media (max-width: 40rem) {
          .card th, .card td { padding-right: 0.55em; }
          .card td { font-size: 0.94em; }
          .card-facts > div { grid-template-columns: minmax(5em, 8em) 1fr; }
        }
        @media print {
          .card .card-wide svg { min-width: 0; }
        }
        .card-unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
        .card-label section, .card-small-label section { margin-top: 0.4em; }
        .card-label .card-facts > div, .card-small-label .card-facts > div { grid-template-columns: minmax(4em, 6em) 1fr; padding: 0.1em 0; }

        """;

    /// <summary>The page round a card: on screen a sheet on the ground, on paper the sheet itself.</summary>
    public static string Page(Paper paper)
    {
        string Mm(double mm) => mm.ToString("0.##", CultureInfo.InvariantCulture) + "mm";
        var size = paper.TextSize.ToString("0.##", CultureInfo.InvariantCulture);
        return $$"""
            @page { size: {{Mm(paper.Width)}} {{Mm(paper.Height)}}; margin: {{Mm(paper.Margin)}}; }
            * { box-sizing: border-box; }
            html { background: var(--ground); }
            body { margin: 0; font-size: 1.0625rem; }
            main { max-width: 44rem; margin: 0 auto; padding: 1rem; }
            main > .card { padding: 1.25rem clamp(1rem, 5vw, 2.5rem) 2rem; }
            @media print {
              main { max-width: none; padding: 0; }
              main > .card { padding: 0; }
              body { font-size: {{size}}pt; }
              .card-table { overflow: visible; }
              .card header, .card-first, .card-caution { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
            }

            """;
    }
}
