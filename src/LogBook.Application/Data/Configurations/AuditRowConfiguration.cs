using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class AuditRowConfiguration : IEntityTypeConfiguration<AuditRow>
{
    public void Configure(EntityTypeBuilder<AuditRow> builder)
    {
        builder.ToTable("AuditTrail");
        builder.Property(a => a.Id).ValueGeneratedNever();
        builder.HasIndex(a => new { a.Entity, a.Key });
        builder.HasIndex(a => a.CustomerId);
    }
}
