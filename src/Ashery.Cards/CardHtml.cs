using System.Globalization;
using System.Text;
using Ashery.Cards.Drawing;
using Ashery.Cards.Pictures;

namespace Ashery.Cards;

/// <summary>A card as HTML: a whole page with print style, or the article alone for a page that has the styles. No script, nothing fetched.</summary>
public static class CardHtml
{
    /// <summary>Styles of the article, for pages that show cards; wants <see cref="Look.Css"/> and <see cref="Look.PictureCss"/> too.</summary>
    public static string Css => CardCss.Article;

    /// <summary>A page of its own that prints on the card's paper.</summary>
    public static string Write(CardDocument card)
    {
        var page = new StringBuilder(16384);
        page.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
            .Append(Safe.Xml(card.RunningHead)).Append("</title>\n<style>\n")
            .Append(Look.Css).Append(Look.PictureCss).Append(CardCss.Page(card.Paper)).Append(CardCss.Article)
            .Append("</style>\n</head>\n<body>\n<main>\n").Append(Article(card)).Append("</main>\n</body>\n</html>\n");
        return page.ToString();
    }

    /// <summary>The card alone.</summary>
    /// <param name="card">What it says.</param>
    /// <param name="headingLevel">Level of its title; sections are one below.</param>
    public static string Article(CardDocument card, int headingLevel = 1)
    {
        var html = new StringBuilder(16384);
        var (h, sub) = (Tag(headingLevel), Tag(headingLevel + 1));
        html.Append("<article class=\"card card-").Append(Safe.Id(card.Paper.Name)).Append("\">\n<header>\n<p class=\"card-kind\">").Append(Safe.Xml(card.Kind)).Append("</p>\n<")
            .Append(h).Append('>').Append(Safe.Xml(card.Title)).Append("</").Append(h).Append(">\n<dl class=\"card-particulars\">\n");
        foreach (var fact in card.Lead is { } lead ? card.Particulars.Prepend(lead) : card.Particulars)
        {
            html.Append(fact == card.Lead ? "<div class=\"card-lead\">" : "<div>");
            Definition(html, fact);
            html.Append("</div>\n");
        }

        html.Append("</dl>\n");
        if (card.Address is { } address)
        {
            html.Append("<figure class=\"card-code\">\n").Append(QrPicture.Svg(address)).Append("<figcaption>").Append(Safe.Xml(address)).Append("</figcaption>\n</figure>\n");
        }

        html.Append("</header>\n");
        if (card.First is { } first)
        {
            html.Append("<p class=\"card-first\">").Append(Safe.Xml(first)).Append("</p>\n");
        }

        foreach (var section in card.Sections)
        {
            html.Append(section.Weight == SectionWeight.Caution ? "<section class=\"card-caution\">\n" : "<section>\n");
            if (section.Heading.Length > 0)
            {
                html.Append('<').Append(sub).Append('>').Append(Safe.Xml(section.Heading)).Append("</").Append(sub).Append(">\n");
            }

            foreach (var block in section.Blocks)
            {
                Block(html, block, section.Heading);
            }

            html.Append("</section>\n");
        }

        if (card.Foot.Count > 0)
        {
            html.Append("<footer>\n");
            foreach (var line in card.Foot)
            {
                html.Append("<p>").Append(Safe.Xml(line)).Append("</p>\n");
            }

            html.Append("</footer>\n");
        }

        return html.Append("</article>\n").ToString();
    }

    private static void Block(StringBuilder html, CardBlock block, string heading)
    {
        switch (block)
        {
            case Paragraph p:
                html.Append("<p>").Append(Safe.Xml(p.Text)).Append("</p>\n");
                break;
            case Listing list:
                var tag = list.Numbered ? "ol" : "ul";
                html.Append('<').Append(tag).Append(">\n");
                foreach (var item in list.Items)
                {
                    html.Append("<li>").Append(Safe.Xml(item)).Append("</li>\n");
                }

                html.Append("</").Append(tag).Append(">\n");
                break;
            case FactList facts:
                html.Append("<dl class=\"card-facts\">\n");
                foreach (var fact in facts.Facts)
                {
                    html.Append("<div>");
                    Definition(html, fact);
                    html.Append("</div>\n");
                }

                html.Append("</dl>\n");
                break;
            case TableBlock table:
                Table(html, table, heading);
                break;
            case PictureBlock picture:
                // A class and not a style attribute: a page may forbid styles of its own parts.
                var form = picture.Share < 0.8 ? " class=\"card-narrow\"" : picture.Picture.Width > 500 ? " class=\"card-wide\" tabindex=\"0\"" : "";
                html.Append("<figure").Append(form).Append(">\n")
                    .Append(SvgWriter.Write(picture.Picture, SvgFor.Page)).Append("</figure>\n");
                break;
            default:
                throw new NotSupportedException(block.GetType().Name);
        }
    }

    private static void Table(StringBuilder html, TableBlock table, string heading)
    {
        // What may scroll sideways on a phone can be reached and scrolled by keyboard, and says what it is.
        html.Append("<div class=\"card-table\" role=\"region\" tabindex=\"0\" aria-label=\"").Append(Safe.Xml(table.Caption)).Append("\"><table>\n<caption").Append(CardText.Same(table.Caption, heading) ? " class=\"card-unseen\">" : ">")
            .Append(Safe.Xml(table.Caption)).Append("</caption>\n<thead><tr>");
        foreach (var column in table.Columns)
        {
            html.Append("<th scope=\"col\"").Append(column.IsFigure ? " class=\"figure\">" : ">").Append(Safe.Xml(column.Heading)).Append("</th>");
        }

        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            if (row.Count < table.Columns.Count && row != table.Rows[0])
            {
                html.Append("</tbody>\n<tbody>\n");
            }

            Row(html, table, row);
        }

        html.Append("</tbody>\n");
        if (table.Total.Count > 0)
        {
            html.Append("<tfoot>\n");
            Row(html, table, table.Total);
            html.Append("</tfoot>\n");
        }

        html.Append("</table></div>\n");
        if (table.Note is { } note)
        {
            html.Append("<p><small>").Append(Safe.Xml(note)).Append("</small></p>\n");
        }
    }

    private static void Row(StringBuilder html, TableBlock table, IReadOnlyList<string> cells)
    {
        if (cells.Count < table.Columns.Count)
        {
            html.Append("<tr class=\"card-group\"><th scope=\"rowgroup\" colspan=\"").Append(table.Columns.Count).Append("\">").Append(Safe.Xml(cells[0])).Append("</th></tr>\n");
            return;
        }

        html.Append("<tr>");
        for (var i = 0; i < cells.Count; i++)
        {
            html.Append(table.Columns[i].IsFigure ? "<td class=\"figure\">" : "<td>").Append(Safe.Xml(cells[i])).Append("</td>");
        }

        html.Append("</tr>\n");
    }

    private static void Definition(StringBuilder html, Fact fact)
    {
        html.Append("<dt>").Append(Safe.Xml(fact.Name)).Append("</dt><dd>").Append(Safe.Xml(fact.Value));
        if (fact.Note is { } note)
        {
            html.Append(" <small>").Append(Safe.Xml(note)).Append("</small>");
        }

        html.Append("</dd>");
    }

    private static string Tag(int level) => "h" + Math.Clamp(level, 1, 6).ToString(CultureInfo.InvariantCulture);
}
