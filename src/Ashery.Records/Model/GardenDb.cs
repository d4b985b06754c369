using Ashery.Records.Rows;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Ashery.Records.Model;

/// <summary>The tables of the garden. A provider's project brings the connection and the migrations.</summary>
public sealed class GardenDb(DbContextOptions<GardenDb> options) : DbContext(options)
{
    public DbSet<StateRow> States => Set<StateRow>();

    public DbSet<EntryRow> Entries => Set<EntryRow>();

    public DbSet<EntryPotRow> EntryPots => Set<EntryPotRow>();

    public DbSet<EarlierRow> Earlier => Set<EarlierRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        var state = modelBuilder.Entity<StateRow>();
        state.ToTable("garden_state").HasKey(s => s.Number);
        state.Property(s => s.Number).ValueGeneratedOnAdd();
        state.Property(s => s.Garden).HasDefaultValue(IRecords.Home);

        // What makes a lost update impossible: of two saves on one version, one finds its number taken.
        state.HasIndex(s => new { s.Garden, s.Version }).IsUnique();
        state.HasMany(s => s.Normals).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Seasons).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Bags).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Scoops).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Pots).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Feeds).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.Waters).WithOne().HasForeignKey(r => r.State);
        state.HasMany(s => s.RuleChanges).WithOne().HasForeignKey(r => r.State);

        modelBuilder.Entity<NormalRow>().ToTable("climate_normal").HasKey(r => new { r.State, r.Position });
        modelBuilder.Entity<SeasonRow>().ToTable("season").HasKey(r => new { r.State, r.Position });
        modelBuilder.Entity<RuleChangeRow>().ToTable("rule_change").HasKey(r => new { r.State, r.RuleId });
        modelBuilder.Entity<PotRow>().ToTable("pot").HasKey(r => new { r.State, r.Position });
        Bags(modelBuilder);
        Scoops(modelBuilder);
        Feeds(modelBuilder);
        Waters(modelBuilder);
        Journal(modelBuilder);
    }

    private static void Journal(ModelBuilder model)
    {
        var entry = model.Entity<EntryRow>();
        entry.ToTable("entry").HasKey(r => r.Number);
        entry.HasIndex(r => new { r.Garden, r.Id }).IsUnique();
        entry.HasIndex(r => new { r.Garden, r.Sequence }).IsUnique();
        entry.HasIndex(r => new { r.Garden, r.Day, r.Sequence });
        entry.HasIndex(r => new { r.Garden, r.Kind, r.Day, r.Sequence });
        entry.HasIndex(r => new { r.Garden, r.TaskDay }).HasFilter("\"TaskDay\" IS NOT NULL");
        entry.HasMany(r => r.Pots).WithOne().HasForeignKey(r => r.Entry);
        model.Entity<EntryPotRow>().ToTable("entry_pot").HasKey(r => new { r.Garden, r.Pot, r.Day, r.Sequence });
        var earlier = model.Entity<EarlierRow>();
        earlier.ToTable("entry_earlier").HasKey(r => new { r.Garden, r.Id, r.Revision });
        earlier.HasIndex(r => new { r.Garden, r.Sequence }).IsUnique();
    }

    private static void Bags(ModelBuilder model)
    {
        var bag = model.Entity<BagRow>();
        bag.ToTable("bag").HasKey(r => new { r.State, r.Position });
        bag.HasMany(r => r.Contents).WithOne().HasForeignKey(r => new { r.State, r.Bag });
        bag.HasMany(r => r.Spreads).WithOne().HasForeignKey(r => new { r.State, r.Bag });
        bag.HasMany(r => r.Figures).WithOne().HasForeignKey(r => new { r.State, r.Bag });
        bag.HasMany(r => r.Solubility).WithOne().HasForeignKey(r => new { r.State, r.Bag });
        bag.HasMany(r => r.Words).WithOne().HasForeignKey(r => new { r.State, r.Bag });
        model.Entity<BagContentRow>().ToTable("bag_content").HasKey(r => new { r.State, r.Bag, r.OfPure, r.Nutrient });
        model.Entity<BagSpreadRow>().ToTable("bag_spread").HasKey(r => new { r.State, r.Bag, r.Nutrient });
        model.Entity<BagFigureRow>().ToTable("bag_figure").HasKey(r => new { r.State, r.Bag, r.Which });
        model.Entity<BagSolubilityRow>().ToTable("bag_solubility").HasKey(r => new { r.State, r.Bag, r.Position });
        model.Entity<BagWordRow>().ToTable("bag_word").HasKey(r => new { r.State, r.Bag, r.List, r.Position });
    }

    private static void Scoops(ModelBuilder model)
    {
        EntityTypeBuilder<ScoopRow> scoop = model.Entity<ScoopRow>();
        scoop.ToTable("scoop").HasKey(r => new { r.State, r.Position });
        scoop.HasMany(r => r.Calibrations).WithOne().HasForeignKey(r => new { r.State, r.Scoop });
        model.Entity<CalibrationRow>().ToTable("scoop_calibration").HasKey(r => new { r.State, r.Scoop, r.MaterialId });
    }

    private static void Waters(ModelBuilder model)
    {
        var water = model.Entity<WaterRow>();
        water.ToTable("water").HasKey(r => new { r.State, r.Position });
        water.HasMany(r => r.Lines).WithOne().HasForeignKey(r => new { r.State, r.Water });
        model.Entity<WaterLineRow>().ToTable("water_line").HasKey(r => new { r.State, r.Water, r.Position });
    }

    private static void Feeds(ModelBuilder model)
    {
        var feed = model.Entity<FeedRow>();
        feed.ToTable("feed").HasKey(r => new { r.State, r.Position });
        feed.HasMany(r => r.Parts).WithOne().HasForeignKey(r => new { r.State, r.Feed });
        feed.HasMany(r => r.Contents).WithOne().HasForeignKey(r => new { r.State, r.Feed });
        model.Entity<FeedPartRow>().ToTable("feed_part").HasKey(r => new { r.State, r.Feed, r.MaterialId });
        model.Entity<FeedContentRow>().ToTable("feed_content").HasKey(r => new { r.State, r.Feed, r.Nutrient });
    }
}
