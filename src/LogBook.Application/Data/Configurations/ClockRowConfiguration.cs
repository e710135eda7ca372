using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class ClockRowConfiguration : IEntityTypeConfiguration<ClockRow>
{
    public void Configure(EntityTypeBuilder<ClockRow> builder)
    {
        builder.ToTable("Clocks");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(c => c.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SystemRow>().WithMany().HasForeignKey(c => c.SystemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(c => c.SystemId).IsUnique();
    }
}
