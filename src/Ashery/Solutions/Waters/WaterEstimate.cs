namespace Ashery.Solutions.Waters;

/// <summary>Something the report does not say and that had to be put in.</summary>
/// <param name="Quantity">Plain name of a component, or <c>alkalinity</c>.</param>
/// <param name="Moles">mol/L (of charge for alkalinity).</param>
/// <param name="How">Where it comes from, in words.</param>
public sealed record WaterEstimate(string Quantity, WaterRange Moles, string How)
{
    /// <summary>In mg/L of the ion, of CaCO3 for alkalinity.</summary>
    public WaterRange MgPerLitre
    {
        get
        {
            var quantity = WaterDraft.QuantityOf(Quantity);
            var mass = quantity.MassOf(quantity.Names[0].Basis) * 1000;
            return new(Moles.Typical * mass, Moles.Low * mass, Moles.High * mass);
        }
    }
}
