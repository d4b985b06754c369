namespace Ashery.Records.Rows;

/// <summary>A bag with the material its label tells of, whole: a later edition of the catalogue must not change a bag.</summary>
public sealed class BagRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string BagId { get; set; } = "";

    public double? StockGrams { get; set; }

    public double? Price { get; set; }

    public double? SizeGrams { get; set; }

    public string MaterialId { get; set; } = "";

    public string MaterialName { get; set; } = "";

    public string Kind { get; set; } = "";

    public bool IsLiquid { get; set; }

    public string? Formula { get; set; }

    public double? MolarMass { get; set; }

    public bool HasPure { get; set; }

    public bool PureIsLimit { get; set; }

    public string? Cas { get; set; }

    public string? TechnicalGrade { get; set; }

    public double NitrogenAmmonium { get; set; }

    public double NitrogenNitrate { get; set; }

    public double NitrogenUrea { get; set; }

    public double NitrogenOrganic { get; set; }

    public double NitrogenSlow { get; set; }

    public double? BulkDensityMin { get; set; }

    public double? BulkDensityTypical { get; set; }

    public double? BulkDensityMax { get; set; }

    public double? LiquidDensity { get; set; }

    public double? OsmolesPerKg { get; set; }

    public double? CarbonToNitrogen { get; set; }

    public double Moisture { get; set; }

    public string CompatibilityGroup { get; set; } = "";

    public bool Dissolves { get; set; }

    public string SourceId { get; set; } = "";

    public string Provenance { get; set; } = "";

    public List<BagContentRow> Contents { get; set; } = [];

    public List<BagSpreadRow> Spreads { get; set; } = [];

    public List<BagFigureRow> Figures { get; set; } = [];

    public List<BagSolubilityRow> Solubility { get; set; } = [];

    public List<BagWordRow> Words { get; set; } = [];
}

/// <summary>A nutrient on the label, or in the pure substance.</summary>
public sealed class BagContentRow
{
    public long State { get; set; }

    public int Bag { get; set; }

    public bool OfPure { get; set; }

    public string Nutrient { get; set; } = "";

    public double Fraction { get; set; }
}

/// <summary>Lowest, typical and highest analysis of a nutrient.</summary>
public sealed class BagSpreadRow
{
    public long State { get; set; }

    public int Bag { get; set; }

    public string Nutrient { get; set; } = "";

    public double Min { get; set; }

    public double Typical { get; set; }

    public double Max { get; set; }
}

/// <summary>A property with its source.</summary>
public sealed class BagFigureRow
{
    public long State { get; set; }

    public int Bag { get; set; }

    public string Which { get; set; } = "";

    public double Value { get; set; }

    public string SourceId { get; set; } = "";

    public string Provenance { get; set; } = "";

    public string? Note { get; set; }
}

public sealed class BagSolubilityRow
{
    public long State { get; set; }

    public int Bag { get; set; }

    public int Position { get; set; }

    public double Celsius { get; set; }

    public double GramsPerKgWater { get; set; }
}

/// <summary>A word of one of the material's lists: other names, hazards, ions, notes, regulations.</summary>
public sealed class BagWordRow
{
    public long State { get; set; }

    public int Bag { get; set; }

    public string List { get; set; } = "";

    public int Position { get; set; }

    public string Text { get; set; } = "";
}
