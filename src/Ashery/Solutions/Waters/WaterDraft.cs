namespace Ashery.Solutions.Waters;

/// <summary>A water while it is made of a report: amounts given so far, and what was put in for the rest.</summary>
internal sealed class WaterDraft
{
    /// <summary>Quantities that make up nearly all charge of a fresh water.</summary>
    public static readonly IReadOnlyList<string> Majors = ["calcium", "magnesium", "sodium", "potassium", "alkalinity", "sulfate", "chloride", "nitrate"];

    private readonly double[] totals = new double[Chemistry.Default.Components.Count];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);

    public List<WaterEstimate> Estimates { get; } = [];

    /// <summary>mol/L by component index.</summary>
    public ReadOnlySpan<double> Totals => totals;

    /// <summary>mol/L of charge.</summary>
    public double Alkalinity { get; private set; }

    /// <summary>Net charge that the alkalinity has to balance, less the alkalinity: positive where anions are short, mol/L.</summary>
    public double Gap
    {
        get
        {
            var sum = -Alkalinity;
            foreach (var component in Chemistry.Default.Components)
            {
                sum += WaterReading.ChargeOf(component) * totals[component.Index];
            }

            return sum;
        }
    }

    public static WaterQuantity QuantityOf(string id)
    {
        foreach (var quantity in WaterQuantity.All)
        {
            if (quantity.Id == id || quantity.Component == id)
            {
                return quantity;
            }
        }

        throw Sources.DataRows.Unknown(id);
    }

    public bool Knows(string quantity) => known.Contains(quantity);

    public double Amount(string quantity) => quantity == "alkalinity" ? Alkalinity : totals[Chemistry.Default.Known(quantity)];

    /// <summary>mol/L of charge, unsigned.</summary>
    public double Equivalents(string quantity) => Amount(quantity) * Charge(quantity);

    public void Set(string quantity, double moles)
    {
        known.Add(quantity);
        Put(quantity, moles);
    }

    /// <summary>Puts in what the report does not say.</summary>
    public void Estimate(string quantity, WaterRange moles, string how)
    {
        Set(quantity, moles.Typical);
        moles = moles with { Low = Math.Min(moles.Low, moles.Typical), High = Math.Max(moles.High, moles.Typical) };
        Estimates.RemoveAll(e => e.Quantity == quantity);
        Estimates.Add(new(quantity, moles, how));
    }

    /// <summary>The same water with one amount otherwise.</summary>
    public void Put(string quantity, double moles)
    {
        if (quantity == "alkalinity")
        {
            Alkalinity = moles;
        }
        else
        {
            totals[Chemistry.Default.Known(quantity)] = moles;
        }
    }

    public WaterDraft Copy()
    {
        var copy = new WaterDraft { Alkalinity = Alkalinity };
        totals.CopyTo(copy.totals, 0);
        copy.known.UnionWith(known);
        copy.Estimates.AddRange(Estimates);
        return copy;
    }

    public static int Charge(string quantity) => quantity == "alkalinity" ? 1 : Math.Abs(Chemistry.Default.Components[Chemistry.Default.Known(quantity)].Charge);
}
