namespace Ashery.Records.Rows;

// An entry's body is the JSON line of Ashery.Exchange; the columns beside it are only what queries look by. The newest revision stands in
// `entry`, what it took the place of in `entry_earlier`: nothing is kept twice, and lists read one table.

/// <summary>An entry of a journal as it stands.</summary>
public sealed class EntryRow
{
    /// <summary>Of this database alone: what other tables point at.</summary>
    public long Number { get; set; }

    /// <summary>Key of the garden.</summary>
    public string Garden { get; set; } = "";

    public Guid Id { get; set; }

    public int Revision { get; set; }

    public long Sequence { get; set; }

    public string Kind { get; set; } = "";

    public DateOnly Day { get; set; }

    /// <summary>Day and feed of the planned feed it answers.</summary>
    public DateOnly? TaskDay { get; set; }

    public string? TaskFeed { get; set; }

    /// <summary>The entry as a line of JSON; of a removal: what was removed.</summary>
    public string Body { get; set; } = "";

    /// <summary>What a search finds it by: words between single spaces.</summary>
    public string Words { get; set; } = "";

    public string By { get; set; } = "";

    /// <summary>UTC ticks.</summary>
    public long AtTicks { get; set; }

    public bool IsRemoved { get; set; }

    public List<EntryPotRow> Pots { get; set; } = [];
}

/// <summary>A pot of an entry that stands, in the order in which a pot's timeline is read.</summary>
public sealed class EntryPotRow
{
    public string Garden { get; set; } = "";

    public string Pot { get; set; } = "";

    public DateOnly Day { get; set; }

    public long Sequence { get; set; }

    /// <summary>Number of the entry.</summary>
    public long Entry { get; set; }
}

/// <summary>A revision of an entry that another took the place of.</summary>
public sealed class EarlierRow
{
    public string Garden { get; set; } = "";

    public Guid Id { get; set; }

    public int Revision { get; set; }

    public long Sequence { get; set; }

    public string Body { get; set; } = "";

    public string By { get; set; } = "";

    public long AtTicks { get; set; }

    public bool IsRemoved { get; set; }
}
