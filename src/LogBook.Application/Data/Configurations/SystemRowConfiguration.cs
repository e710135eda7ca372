using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class SystemRowConfiguration : IEntityTypeConfiguration<SystemRow>
{
    public void Configure(EntityTypeBuilder<SystemRow> builder)
    {
        builder.ToTable("Systems");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(s => s.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(s => s.SiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(s => new { s.SiteId, s.CodeKey }).IsUnique();
        builder.HasIndex(s => s.AssessmentDue);
    }
}
