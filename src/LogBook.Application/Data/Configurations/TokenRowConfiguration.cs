using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class TokenRowConfiguration : IEntityTypeConfiguration<TokenRow>
{
    public void Configure(EntityTypeBuilder<TokenRow> builder)
    {
        builder.ToTable("Tokens");
        builder.HasOne<LogBookUser>().WithMany().HasForeignKey(t => t.UserId).OnDelete(DeleteBehavior.Cascade);
        builder.HasIndex(t => t.Hash).IsUnique();
    }
}
