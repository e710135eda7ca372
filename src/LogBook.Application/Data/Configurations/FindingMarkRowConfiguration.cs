using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class FindingMarkRowConfiguration : IEntityTypeConfiguration<FindingMarkRow>
{
    public void Configure(EntityTypeBuilder<FindingMarkRow> builder)
    {
        builder.ToTable("FindingMarks");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(f => f.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(f => f.SiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SystemRow>().WithMany().HasForeignKey(f => f.SystemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(f => new { f.SystemId, f.Kind, f.AboutKey, f.FirstSeen });
    }
}
