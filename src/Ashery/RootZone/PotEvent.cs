using Ashery.RootZone.Feeding;
using Ashery.RootZone.State;

namespace Ashery.RootZone;

/// <summary>Something the grower does on a day, in the morning before the water.</summary>
/// <param name="Date">When.</param>
public abstract record PotEvent(DateOnly Date);

/// <summary>A dry feed strewn on the pot.</summary>
/// <param name="Date">When.</param>
/// <param name="Feed">What a gram of it gives.</param>
/// <param name="Grams">g a pot.</param>
public sealed record DryFeedEvent(DateOnly Date, FeedContents Feed, double Grams) : PotEvent(Date);

/// <summary>Feed from the can in place of plain water.</summary>
/// <param name="Date">When.</param>
/// <param name="PerLitre">mol/L on top of the source water.</param>
/// <param name="Litres">L a pot.</param>
public sealed record LiquidFeedEvent(DateOnly Date, Ions PerLitre, double Litres) : PotEvent(Date);

/// <summary>Source water poured through beyond what the rule gives.</summary>
public sealed record FlushEvent(DateOnly Date, double Litres) : PotEvent(Date);

/// <summary>A share of the plant cut off and taken away.</summary>
public sealed record PruneEvent(DateOnly Date, double Share) : PotEvent(Date);

/// <summary>Into another pot, or the same with fresh medium.</summary>
/// <param name="Date">When.</param>
/// <param name="Shape">The pot from now on.</param>
/// <param name="Medium">Of the fresh part, and taken for the whole.</param>
/// <param name="OldKept">Share of the old root ball that is kept, 0 to 1.</param>
/// <param name="CanopyMost">m² the plant may now cover; null for four mouths.</param>
public sealed record RepotEvent(DateOnly Date, PotShape Shape, Medium Medium, double OldKept, double? CanopyMost = null) : PotEvent(Date);
