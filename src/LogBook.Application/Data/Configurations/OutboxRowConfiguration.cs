using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LogBook.Application.Data.Configurations;

internal sealed class OutboxRowConfiguration : IEntityTypeConfiguration<OutboxRow>
{
    public void Configure(EntityTypeBuilder<OutboxRow> builder)
    {
        builder.ToTable("Outbox");
        builder.HasOne<CustomerRow>().WithMany().HasForeignKey(o => o.CustomerId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<VisitRow>().WithMany().HasForeignKey(o => o.VisitRowId).OnDelete(DeleteBehavior.Restrict);
        builder.HasIndex(o => o.MessageId).IsUnique();
        builder.HasIndex(o => new { o.AcceptedAt, o.GivenUpAt, o.DueAt });
        builder.HasIndex(o => o.VisitRowId);
        builder.HasIndex(o => new { o.Kind, o.Recipient, o.About }).IsUnique();
    }
}
