using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class FigureRowConfiguration : IEntityTypeConfiguration<FigureRow>
{
    public void Configure(EntityTypeBuilder<FigureRow> builder)
    {
        builder.ToTable("Figures");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(f => f.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SiteRow>().WithMany().HasForeignKey(f => f.SiteId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<SystemRow>().WithMany().HasForeignKey(f => f.SystemId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(f => f.VisitRowId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(f => new { f.SystemId, f.Code, f.To });
        builder.HasIndex(f => f.VisitRowId);
    }
}
