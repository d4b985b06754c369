using System.ComponentModel;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ashery.Cards;
using Ashery.Cards.Drawing;
using Ashery.Exchange.Json;

namespace Ashery.Cli.Verbs;

/// <summary>JSON of <c>ashery card</c>: what the card says, section by section.</summary>
internal sealed record CardJson(
    string Kind,
    string Title,
    [property: Description("The file that was written; null when none was asked for.")] string? File,
    [property: Description("Name of the sheet.")] string Paper,
    DateOnly Date,
    CardFactJson? Lead,
    IReadOnlyList<CardFactJson> Particulars,
    string? First,
    IReadOnlyList<CardSectionJson> Sections,
    IReadOnlyList<string> Foot)
{
    public static string Write(CardDocument card, string? file) => AsheryJson.Write(From(card, file), CardJsonContext.Shared.CardJson);

    internal static CardJson From(CardDocument card, string? file) => new(
        card.Kind,
        card.Title,
        file,
        card.Paper.Name,
        card.Date,
        card.Lead is { } lead ? Fact(lead) : null,
        [.. card.Particulars.Select(Fact)],
        card.First,
        [.. card.Sections.Select(static s => new CardSectionJson(s.Heading, s.Weight == SectionWeight.Caution, [.. s.Blocks.Select(Block)]))],
        card.Foot);

    private static CardFactJson Fact(Fact fact) => new(fact.Name, fact.Value, fact.Note);

    private static CardBlockJson Block(CardBlock block) => block switch
    {
        Paragraph p => new() { Text = p.Text },
        Listing l => new() { Items = l.Items, Numbered = l.Numbered },
        FactList f => new() { Facts = [.. f.Facts.Select(Fact)] },
        TableBlock t => new() { Table = new(t.Caption, [.. t.Columns.Select(static c => c.Heading)], t.Rows, t.Total) },
        PictureBlock p => new() { Picture = SvgWriter.Write(p.Picture, SvgFor.File) },
        _ => throw new InvalidOperationException($"A card block of kind {block.GetType().Name} has no JSON."),
    };
}

/// <summary>A name, its figure, and a word on it.</summary>
internal sealed record CardFactJson(string Name, string Value, string? Note);

/// <summary>A heading with what belongs under it.</summary>
internal sealed record CardSectionJson(string Heading, bool IsCaution, IReadOnlyList<CardBlockJson> Blocks);

/// <summary>One of text, items, facts, table or picture.</summary>
internal sealed record CardBlockJson
{
    public string? Text { get; init; }

    public IReadOnlyList<string>? Items { get; init; }

    public bool? Numbered { get; init; }

    public IReadOnlyList<CardFactJson>? Facts { get; init; }

    public CardTableJson? Table { get; init; }

    [Description("SVG.")]
    public string? Picture { get; init; }
}

/// <summary>Rows and columns; a row of one cell is a heading for those below it.</summary>
internal sealed record CardTableJson(string Caption, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<string> Total);

[JsonSerializable(typeof(CardJson))]
internal sealed partial class CardJsonContext : JsonSerializerContext
{
    public static CardJsonContext Shared { get; } = new(new JsonSerializerOptions(AsheryJson.Options));
}
