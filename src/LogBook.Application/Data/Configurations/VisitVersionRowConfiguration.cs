using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class VisitVersionRowConfiguration : IEntityTypeConfiguration<VisitVersionRow>
{
    public void Configure(EntityTypeBuilder<VisitVersionRow> builder)
    {
        builder.ToTable("VisitVersions");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(v => v.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(v => v.VisitRowId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(v => new { v.VisitRowId, v.Version }).IsUnique();
    }
}
