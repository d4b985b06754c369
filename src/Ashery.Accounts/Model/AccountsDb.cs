using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace Ashery.Accounts.Model;

/// <summary>Who may do what: beside the gardens in the same database, with migrations of its own.</summary>
public abstract class AccountsDb(DbContextOptions options) : IdentityUserContext<AsheryUser>(options)
{
    /// <summary>Where EF Core notes which migrations of this context ran.</summary>
    public const string HistoryTable = "account_migrations";

    public DbSet<MembershipRow> Memberships => Set<MembershipRow>();

    public DbSet<CodeRow> Codes => Set<CodeRow>();

    public DbSet<SessionRow> Sessions => Set<SessionRow>();

    public DbSet<TokenRow> Tokens => Set<TokenRow>();

    public DbSet<AuditRow> Audit => Set<AuditRow>();

    public DbSet<ProtectionKeyRow> Keys => Set<ProtectionKeyRow>();

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.Entity<AsheryUser>().ToTable("account");
        builder.Entity<IdentityUserClaim<string>>().ToTable("account_claim");
        builder.Entity<IdentityUserLogin<string>>().ToTable("account_login");
        builder.Entity<IdentityUserToken<string>>().ToTable("account_secret");
        builder.Entity<IdentityUserPasskey<string>>(passkey =>
        {
            // As version 3 of Identity's schema has it, which the base class takes from services that a bare context lacks.
            passkey.ToTable("account_passkey").HasKey(p => p.CredentialId);
            passkey.Property(p => p.CredentialId).HasMaxLength(1024);
            passkey.OwnsOne(p => p.Data).ToJson();
            passkey.HasOne<AsheryUser>().WithMany().HasForeignKey(p => p.UserId).IsRequired();
        });

        var member = builder.Entity<MembershipRow>().ToTable("membership");
        member.HasKey(r => new { r.Garden, r.UserId });
        member.HasIndex(r => r.UserId);
        member.HasOne<AsheryUser>().WithMany().HasForeignKey(r => r.UserId);

        var code = builder.Entity<CodeRow>().ToTable("access_code");
        code.HasKey(r => r.Id);
        code.HasIndex(r => r.Hash).IsUnique();

        var session = builder.Entity<SessionRow>().ToTable("account_session");
        session.HasKey(r => r.Id);
        session.HasOne<AsheryUser>().WithMany().HasForeignKey(r => r.UserId);

        var token = builder.Entity<TokenRow>().ToTable("access_token");
        token.HasKey(r => r.Id);
        token.HasIndex(r => r.Hash).IsUnique();
        token.HasOne<AsheryUser>().WithMany().HasForeignKey(r => r.UserId);

        var audit = builder.Entity<AuditRow>().ToTable("audit");
        audit.HasKey(r => r.Id);
        audit.HasIndex(r => new { r.UserId, r.AtTicks });
        audit.HasIndex(r => new { r.Garden, r.AtTicks });

        builder.Entity<ProtectionKeyRow>().ToTable("protection_key").HasKey(r => r.Id);
    }
}
