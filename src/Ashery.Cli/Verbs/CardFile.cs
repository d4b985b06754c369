using Ashery.Cards;
using Ashery.Cli.Frame;
using Ashery.Problems;

namespace Ashery.Cli.Verbs;

/// <summary>Writes a card in the form that the file's name ends in.</summary>
internal static class CardFile
{
    public static Result<string> Write(string file, CardDocument card) => Path.GetExtension(file) switch
    {
        ".pdf" => TextFile.Write(file, CardPdf.Write(card), "to"),
        ".html" => TextFile.Write(file, CardHtml.Write(card), "to"),
        ".svg" => TextFile.Write(file, CardSvg.Write(card), "to"),
        _ => TextFile.Write(file, CardText.Write(card), "to"),
    };
}
