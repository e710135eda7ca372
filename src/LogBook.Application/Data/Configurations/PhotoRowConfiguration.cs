using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class PhotoRowConfiguration : IEntityTypeConfiguration<PhotoRow>
{
    public void Configure(EntityTypeBuilder<PhotoRow> builder)
    {
        builder.ToTable("Photos");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(p => p.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(p => p.VisitRowId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(p => p.PhotoId).IsUnique();
        builder.HasIndex(p => p.VisitRowId);
    }
}
