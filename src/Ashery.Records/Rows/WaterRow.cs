namespace Ashery.Records.Rows;

/// <summary>A water report as typed.</summary>
public sealed class WaterRow
{
    public long State { get; set; }

    public int Position { get; set; }

    public string WaterId { get; set; } = "";

    public string Name { get; set; } = "";

    public string? Note { get; set; }

    public double? PH { get; set; }

    /// <summary>°C at which pH was read.</summary>
    public double? Celsius { get; set; }

    public double? Ec { get; set; }

    public string? EcUnit { get; set; }

    /// <summary>°C the conductivity is for.</summary>
    public double? EcCelsius { get; set; }

    public List<WaterLineRow> Lines { get; set; } = [];
}

/// <summary>A line of a water report.</summary>
public sealed class WaterLineRow
{
    public long State { get; set; }

    public int Water { get; set; }

    public int Position { get; set; }

    public string Name { get; set; } = "";

    public double Value { get; set; }

    public string? Unit { get; set; }

    public bool Below { get; set; }
}
