namespace Ashery.Records.Rows;

public sealed class PotRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string PotId { get; set; } = "";

    public string Name { get; set; } = "";

    public string CropId { get; set; } = "";

    public double Litres { get; set; }

    public string Medium { get; set; } = "";

    public string Stage { get; set; } = "";

    public DateOnly? Planted { get; set; }

    public DateOnly? LastRepotted { get; set; }

    public int Count { get; set; }

    public string? Place { get; set; }

    /// <summary>cm, as measured; null when only the volume was given.</summary>
    public double? TopDiameter { get; set; }

    public double? Height { get; set; }

    public double? BottomDiameter { get; set; }

    public bool? NeedsTraceElements { get; set; }

    public bool? LowPhosphorus { get; set; }
}

public sealed class ScoopRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string Name { get; set; } = "";

    public double Litres { get; set; }

    public List<CalibrationRow> Calibrations { get; set; } = [];
}

/// <summary>Grams a scoop of one material, as weighed by the grower.</summary>
public sealed class CalibrationRow
{
    public long State { get; set; }

    public int Scoop { get; set; }

    public string MaterialId { get; set; } = "";

    public double Min { get; set; }

    public double Typical { get; set; }

    public double Max { get; set; }
}
