using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class AuditHeadRowConfiguration : IEntityTypeConfiguration<AuditHeadRow>
{
    public void Configure(EntityTypeBuilder<AuditHeadRow> builder)
    {
        builder.ToTable("AuditHead");
        builder.Property(a => a.Id).ValueGeneratedNever();
    }
}
