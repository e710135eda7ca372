using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class SetUpRowConfiguration : IEntityTypeConfiguration<SetUpRow>
{
    public void Configure(EntityTypeBuilder<SetUpRow> builder)
    {
        builder.ToTable("SetUp");
        builder.HasIndex(s => new { s.Kind, s.CodeKey, s.From }).IsUnique();
    }
}
