using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class ConflictRowConfiguration : IEntityTypeConfiguration<ConflictRow>
{
    public void Configure(EntityTypeBuilder<ConflictRow> builder)
    {
        builder.ToTable("Conflicts");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(c => c.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(c => c.VisitRowId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(c => new { c.VisitId, c.Sha256 }).IsUnique();
        builder.HasIndex(c => c.SettledAt);
    }
}
