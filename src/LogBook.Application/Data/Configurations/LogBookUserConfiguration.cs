using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class LogBookUserConfiguration : IEntityTypeConfiguration<LogBookUser>
{
    public void Configure(EntityTypeBuilder<LogBookUser> builder)
    {
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(u => u.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(u => u.PersonCode);
    }
}
