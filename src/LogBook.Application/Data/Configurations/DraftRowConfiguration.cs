using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class DraftRowConfiguration : IEntityTypeConfiguration<DraftRow>
{
    public void Configure(EntityTypeBuilder<DraftRow> builder)
    {
        builder.ToTable("Drafts");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(d => d.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(d => d.SiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<LogBookUser>().WithMany().HasForeignKey(d => d.UserId).OnDelete(DeleteBehavior.Cascade);
        builder.HasIndex(d => new { d.UserId, d.VisitId }).IsUnique();
    }
}
