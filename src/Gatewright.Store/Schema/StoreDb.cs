using Microsoft.AspNetCore.DataProtection.EntityFrameworkCore;
using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;

namespace Gatewright.Store.Schema;

/// <summary>The store's tables, the same on both engines.</summary>
public sealed class StoreDb(DbContextOptions<StoreDb> options) : IdentityUserContext<Account>(options), IDataProtectionKeyContext
{
    /// <summary>Clubs.</summary>
    public DbSet<ClubRow> Clubs => Set<ClubRow>();

    /// <summary>Their journals.</summary>
    public DbSet<EntryRow> Entries => Set<EntryRow>();

    /// <summary>Their pictures.</summary>
    public DbSet<BlobRow> Blobs => Set<BlobRow>();

    /// <summary>Who belongs to which club.</summary>
    public DbSet<MembershipRow> Memberships => Set<MembershipRow>();

    /// <summary>Links that let people in.</summary>
    public DbSet<InvitationRow> Invitations => Set<InvitationRow>();

    /// <summary>Their journals, ready to be opened.</summary>
    public DbSet<SnapshotRow> Snapshots => Set<SnapshotRow>();

    /// <summary>The record of who signed in.</summary>
    public DbSet<SignInRow> SignIns => Set<SignInRow>();

    /// <summary>What cookies are sealed with, so that every server over the store can read them.</summary>
    public DbSet<DataProtectionKey> DataProtectionKeys => Set<DataProtectionKey>();

    /// <summary>With passkeys, whichever way the tables are opened.</summary>
    protected override Version SchemaVersion => IdentitySchemaVersions.Version3;

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        base.OnModelCreating(builder);
        builder.Entity<ClubRow>(club =>
        {
            club.ToTable("clubs");
            club.HasKey(c => c.Club);
            club.Property(c => c.Club).HasMaxLength(64);
        });
        builder.Entity<EntryRow>(entry =>
        {
            entry.ToTable("entries");
            entry.HasKey(e => new { e.Club, e.Number });
            entry.HasIndex(e => new { e.Club, e.Id }).IsUnique();
            entry.Property(e => e.Club).HasMaxLength(64);
            entry.Property(e => e.Member).HasMaxLength(64);
            entry.Property(e => e.Device).HasMaxLength(64);
            entry.Property(e => e.Kind).HasMaxLength(64);
        });
        builder.Entity<BlobRow>(blob =>
        {
            blob.ToTable("blobs");
            blob.HasKey(b => new { b.Club, b.Sha256 });
            blob.Property(b => b.Club).HasMaxLength(64);
            blob.Property(b => b.Sha256).HasMaxLength(64);
            blob.Property(b => b.MediaType).HasMaxLength(64);
        });
        builder.Entity<MembershipRow>(member =>
        {
            member.ToTable("memberships");
            member.HasKey(m => new { m.Club, m.Member });
            member.HasIndex(m => m.AccountId);
            member.Property(m => m.Club).HasMaxLength(64);
            member.Property(m => m.Member).HasMaxLength(64);
            member.Property(m => m.Role).HasMaxLength(16);
        });
        builder.Entity<InvitationRow>(invitation =>
        {
            invitation.ToTable("invitations");
            invitation.HasKey(i => new { i.Club, i.Invitation });
            invitation.HasIndex(i => i.SecretHash).IsUnique();
            invitation.Property(i => i.Club).HasMaxLength(64);
            invitation.Property(i => i.Invitation).HasMaxLength(64);
            invitation.Property(i => i.SecretHash).HasMaxLength(64);
            invitation.Property(i => i.Role).HasMaxLength(16);
            invitation.Property(i => i.Label).HasMaxLength(200);
            invitation.Property(i => i.MadeBy).HasMaxLength(64);
        });
        builder.Entity<SnapshotRow>(snapshot =>
        {
            snapshot.ToTable("snapshots");
            snapshot.HasKey(s => s.Club);
            snapshot.Property(s => s.Club).HasMaxLength(64);
        });
        builder.Entity<SignInRow>(signIn =>
        {
            signIn.ToTable("sign_ins");
            signIn.HasKey(s => s.Id);
            signIn.HasIndex(s => s.AccountId);
            signIn.HasIndex(s => s.Club);
            signIn.Property(s => s.Club).HasMaxLength(64);
            signIn.Property(s => s.Outcome).HasMaxLength(32);
        });
        builder.Entity<DataProtectionKey>(key => key.ToTable("data_protection_keys"));
    }
}
