using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class ReadingRowConfiguration : IEntityTypeConfiguration<ReadingRow>
{
    public void Configure(EntityTypeBuilder<ReadingRow> builder)
    {
        builder.ToTable("Readings");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(r => r.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(r => r.VisitRowId).OnDelete(DeleteBehavior.Cascade);
        builder.HasOne<SystemRow>().WithMany().HasForeignKey(r => r.SystemId).OnDelete(DeleteBehavior.Restrict);

        // Covers the history of one test: the table itself is not read, whatever its size.
        builder.HasIndex(r => new
        {
            r.SystemId, r.Test, r.ArrivedAt, r.CustomerId, r.SampleAt, r.Source, r.Phase, r.Value, r.Unit, r.Qualifier, r.VisitRowId,
        }).HasDatabaseName("IX_Readings_History");
        builder.HasIndex(r => r.VisitRowId);
    }
}
