using Ashery.Cards.Drawing;

namespace Ashery.Cards;

/// <summary>
/// What a card says, in plain values: made once by <see cref="RecipeCard"/>, <see cref="BagLabel"/> or <see cref="YearSheet"/>,
/// shown the same by <see cref="CardHtml"/>, <see cref="CardPdf"/>, <see cref="CardSvg"/> and <see cref="CardText"/>.
/// </summary>
public sealed record CardDocument
{
    /// <summary>What kind of sheet it is: <c>Recipe card</c>.</summary>
    public required string Kind { get; init; }

    public required string Title { get; init; }

    /// <summary>The one figure to be read from afar: the grade.</summary>
    public Fact? Lead { get; init; }

    /// <summary>Lot, date, batch and the like.</summary>
    public IReadOnlyList<Fact> Particulars { get; init; } = [];

    /// <summary>Address the code in the corner of the head opens; null for no code.</summary>
    public string? Address { get; init; }

    /// <summary>What comes before everything else.</summary>
    public string? First { get; init; }

    public required IReadOnlyList<CardSection> Sections { get; init; }

    /// <summary>Sources and the like, in small print.</summary>
    public IReadOnlyList<string> Foot { get; init; } = [];

    /// <summary>Stands at the head of every further page and in the file's properties.</summary>
    public required string RunningHead { get; init; }

    /// <summary>Date of the card: nothing on it depends on the clock.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The sheet it is made for.</summary>
    public required Paper Paper { get; init; }
}

/// <summary>A heading with what belongs under it.</summary>
/// <param name="Heading">A few words.</param>
/// <param name="Blocks">In order.</param>
/// <param name="Weight">How it is set.</param>
public sealed record CardSection(string Heading, IReadOnlyList<CardBlock> Blocks, SectionWeight Weight = SectionWeight.Plain);

public enum SectionWeight
{
    Plain,

    /// <summary>Set off so that it cannot be missed: cautions, first aid.</summary>
    Caution,
}

/// <summary>One piece of a section.</summary>
public abstract record CardBlock;

/// <summary>Running text.</summary>
public sealed record Paragraph(string Text) : CardBlock;

/// <summary>Steps in order, or points without one.</summary>
public sealed record Listing(IReadOnlyList<string> Items, bool Numbered = false) : CardBlock;

/// <summary>Names with their figures.</summary>
public sealed record FactList(IReadOnlyList<Fact> Facts) : CardBlock;

/// <summary>Rows and columns. A row has as many cells as there are columns, or a single one: then it is a heading for the rows below it.</summary>
public sealed record TableBlock(string Caption, IReadOnlyList<TableColumn> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : CardBlock
{
    /// <summary>Sums under the rows; empty for none.</summary>
    public IReadOnlyList<string> Total { get; init; } = [];

    /// <summary>A word on the table, under it.</summary>
    public string? Note { get; init; }
}

/// <summary>A drawing; its facts stand in a table of the same card.</summary>
/// <param name="Picture">The drawing.</param>
/// <param name="Share">Share of the sheet's width it takes.</param>
public sealed record PictureBlock(Picture Picture, double Share = 1) : CardBlock;

/// <summary>A name, its figure, and a word on it.</summary>
public sealed record Fact(string Name, string Value, string? Note = null);

/// <summary>Heading of a column; figures stand to the right.</summary>
public sealed record TableColumn(string Heading, bool IsFigure = false);
