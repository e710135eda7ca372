using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class FirmRowConfiguration : IEntityTypeConfiguration<FirmRow>
{
    public void Configure(EntityTypeBuilder<FirmRow> builder)
    {
        builder.ToTable("Firm");
        builder.Property(f => f.Id).ValueGeneratedNever();
    }
}
