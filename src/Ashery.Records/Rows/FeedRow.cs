namespace Ashery.Records.Rows;

/// <summary>A recipe the grower kept.</summary>
public sealed class FeedRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string FeedId { get; set; } = "";

    public string Name { get; set; } = "";

    public string Kind { get; set; } = "";

    public double NitrogenAmmonium { get; set; }

    public double NitrogenNitrate { get; set; }

    public double NitrogenUrea { get; set; }

    public double NitrogenOrganic { get; set; }

    public double NitrogenSlow { get; set; }

    public double? SaltIndex { get; set; }

    public double? LimeEquivalent { get; set; }

    public double? BulkDensity { get; set; }

    public bool Dissolves { get; set; }

    public List<FeedPartRow> Parts { get; set; } = [];

    public List<FeedContentRow> Contents { get; set; } = [];
}

public sealed class FeedPartRow
{
    public long State { get; set; }

    public int Feed { get; set; }

    public string MaterialId { get; set; } = "";

    public double Share { get; set; }
}

public sealed class FeedContentRow
{
    public long State { get; set; }

    public int Feed { get; set; }

    public string Nutrient { get; set; } = "";

    public double Fraction { get; set; }
}
