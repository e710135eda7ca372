using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class VisitRowConfiguration : IEntityTypeConfiguration<VisitRow>
{
    public void Configure(EntityTypeBuilder<VisitRow> builder)
    {
        builder.ToTable("Visits");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(v => v.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(v => v.SiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(v => v.MovedFromSiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(v => v.VisitId).IsUnique();
        builder.HasIndex(v => new { v.SiteId, v.ArrivedAt });
        builder.HasIndex(v => v.ArrivedAt);
        builder.HasIndex(v => new { v.State, v.ArrivedAt });
    }
}
