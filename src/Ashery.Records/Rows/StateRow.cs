namespace Ashery.Records.Rows;

// The garden is small (some hundred rows), so each save writes a whole new state and none is ever changed. That makes a
// save atomic by one transaction, makes a lost update impossible (a garden has each version once), and makes undo a read.

/// <summary>One state of the garden.</summary>
public sealed class StateRow
{
    /// <summary>Of this database alone: what the other tables point at.</summary>
    public long Number { get; set; }

    /// <summary>Key of the garden.</summary>
    public string Garden { get; set; } = IRecords.Home;

    /// <summary>Counts the states of this garden from 1.</summary>
    public long Version { get; set; }

    /// <summary>Who saved it: a name; empty where there are no accounts.</summary>
    public string By { get; set; } = "";

    /// <summary>UTC ticks: SQLite has no type for an instant.</summary>
    public long SavedAtTicks { get; set; }

    public string What { get; set; } = "";

    public string Name { get; set; } = "";

    public bool IsDemo { get; set; }

    public string PlaceName { get; set; } = "";

    public double Latitude { get; set; }

    public double? ElevationMetres { get; set; }

    public bool NearCoast { get; set; }

    public bool HasNormals { get; set; }

    public string Currency { get; set; } = "";

    public bool UsUnits { get; set; }

    public double ScaleStep { get; set; }

    public string? DefaultScoop { get; set; }

    public string? DefaultWater { get; set; }

    public List<NormalRow> Normals { get; set; } = [];

    public List<SeasonRow> Seasons { get; set; } = [];

    public List<BagRow> Bags { get; set; } = [];

    public List<ScoopRow> Scoops { get; set; } = [];

    public List<PotRow> Pots { get; set; } = [];

    public List<FeedRow> Feeds { get; set; } = [];

    public List<WaterRow> Waters { get; set; } = [];

    public List<RuleChangeRow> RuleChanges { get; set; } = [];
}

/// <summary>A month's usual weather; position 0 is January.</summary>
public sealed class NormalRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public double MeanMax { get; set; }

    public double MeanMin { get; set; }

    public double RainMm { get; set; }

    public double? WetDays { get; set; }

    public double? WindMs { get; set; }

    public double? Humidity { get; set; }

    public double? RadiationMj { get; set; }
}

public sealed class SeasonRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string Kind { get; set; } = "";

    public int FromMonth { get; set; }

    public int FromDay { get; set; }

    public int ToMonth { get; set; }

    public int ToDay { get; set; }
}

/// <summary>A rule the grower set otherwise.</summary>
public sealed class RuleChangeRow
{
    public long State { get; set; }

    public string RuleId { get; set; } = "";

    public string Setting { get; set; } = "";
}
