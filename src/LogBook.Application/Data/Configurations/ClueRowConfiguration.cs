using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class ClueRowConfiguration : IEntityTypeConfiguration<ClueRow>
{
    public void Configure(EntityTypeBuilder<ClueRow> builder)
    {
        builder.ToTable("Clues");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(c => c.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SystemRow>().WithMany().HasForeignKey(c => c.SystemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(c => c.SystemId).IsUnique();
    }
}
