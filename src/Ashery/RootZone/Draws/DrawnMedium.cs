namespace Ashery.RootZone.Draws;

/// <summary>A medium with its figures drawn within their ranges.</summary>
internal static class DrawnMedium
{
    /// <summary>Figures of a medium that are drawn, and how each is put back.</summary>
    public static readonly Part[] Parts =
    [
        new("medium-porosity", "pore space of the medium", static m => m.Porosity, static (m, f) => m with { Porosity = f }),
        new("medium-capacity", "water the medium holds", static m => m.ContainerCapacity, static (m, f) => m with { ContainerCapacity = f }),
        new("medium-easy", "easily available water of the medium", static m => m.EasilyAvailable, static (m, f) => m with { EasilyAvailable = f }),
        new("medium-unavailable", "water the plant cannot take", static m => m.Unavailable, static (m, f) => m with { Unavailable = f }),
        new("medium-exchange", "exchange capacity of the medium", static m => m.Exchange, static (m, f) => m with { Exchange = f }),
        new("medium-buffer", "pH buffering of the medium", static m => m.Buffer, static (m, f) => m with { Buffer = f }),
        new("medium-mixing", "how well water mixes on its way through", static m => m.Mixing, static (m, f) => m with { Mixing = f }),
        new("medium-phosphate", "phosphate the medium holds", static m => m.PhosphateSorption, static (m, f) => m with { PhosphateSorption = f }),
    ];

    /// <summary>The medium of a draw; another medium than the first, as after repotting, is drawn from its own ranges at the same shares.</summary>
    public static Medium Of(Medium medium, Medium first, DrawSpace space, ReadOnlySpan<double> shares)
    {
        var drawn = medium;
        foreach (var part in Parts)
        {
            var place = space.PlaceOf(part.Id);
            if (place < 0)
            {
                continue;
            }

            var own = part.Of(medium);
            var value = medium.Id == first.Id ? space.Figures[place].At(shares[place]) : UncertainFigure.Triangle(shares[place], own.Low, own.Value, own.High);
            drawn = part.Put(drawn, own.Measured(value));
        }

        return drawn;
    }

    public sealed record Part(string Id, string Name, Func<Medium, SpreadFigure> Of, Func<Medium, SpreadFigure, Medium> Put);
}
