using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class SiteRowConfiguration : IEntityTypeConfiguration<SiteRow>
{
    public void Configure(EntityTypeBuilder<SiteRow> builder)
    {
        builder.ToTable("Sites");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(s => s.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(s => s.CodeKey).IsUnique();
        builder.HasIndex(s => s.AssignedTo);
    }
}
