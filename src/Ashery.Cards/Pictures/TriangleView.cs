using Ashery.Materials;
using Ashery.Nutrients;
using Ashery.Recipes;

namespace Ashery.Cards.Pictures;

/// <summary>What the triangle shows. Contents are mass fractions on the label's basis; only their proportions are drawn.</summary>
public sealed record TriangleView
{
    /// <summary>The wanted ratio; null when none is set yet.</summary>
    public Ternary? Target { get; init; }

    /// <summary>What to call the target: <c>3:1:2</c>, or the crop.</summary>
    public string TargetName { get; init; } = "";

    /// <summary>The materials within reach, those of the chosen blend marked.</summary>
    public required IReadOnlyList<TrianglePoint> Materials { get; init; }

    /// <summary>The chosen blend; null when there is none.</summary>
    public Ternary? Blend { get; init; }

    /// <summary>What to call the blend: its grade.</summary>
    public string BlendName { get; init; } = "";

    /// <summary>The view of an answer: its wish, the offers it was made from, and one of its blends (null for none).</summary>
    public static TriangleView Of(Wish wish, IEnumerable<Offer> offers, Recipe? blend)
    {
        var chosen = blend?.Parts.Select(p => p.Material.Id).ToHashSet() ?? [];
        double Wanted(Nutrient n) => wish.Shares.GetValueOrDefault(n);
        return new()
        {
            Target = new Ternary(Wanted(Nutrient.N), Wanted(Nutrient.P), Wanted(Nutrient.K)),
            TargetName = wish.Name,
            Materials = [.. offers.Select(o => new TrianglePoint(o.Material.Name, Ternary.Of(o.Material.Label), chosen.Contains(o.Material.Id)))],
            Blend = blend is null ? null : Ternary.Of(blend.Grade),
            BlendName = blend is null ? "" : Figures.Grade(blend.Grade[Nutrient.N], blend.Grade[Nutrient.P], blend.Grade[Nutrient.K]),
        };
    }
}

/// <summary>A material in the triangle.</summary>
public sealed record TrianglePoint(string Name, Ternary Contents, bool Chosen = false);

/// <summary>N, P2O5 and K2O in any scale; what is drawn is the share of each in their sum.</summary>
public readonly record struct Ternary(double N, double P2O5, double K2O)
{
    public static Ternary Of(LabelAnalysis label) => new(label[Nutrient.N], label[Nutrient.P], label[Nutrient.K]);

    /// <summary>True when there is something to draw: figures finite, none negative, not all zero.</summary>
    public bool HasPlace => double.IsFinite(N + P2O5 + K2O) && N >= 0 && P2O5 >= 0 && K2O >= 0 && N + P2O5 + K2O > 0;

    public double Sum => N + P2O5 + K2O;

    /// <summary>40 % N, 20 % P₂O₅, 40 % K₂O.</summary>
    public override string ToString() =>
        $"{Figures.Percent(N / Sum, 0)} N, {Figures.Percent(P2O5 / Sum, 0)} P₂O₅, {Figures.Percent(K2O / Sum, 0)} K₂O";
}
