using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Methods;

internal sealed class CorrelationEntryConfiguration : IEntityTypeConfiguration<CorrelationEntry>
{
    public void Configure(EntityTypeBuilder<CorrelationEntry> entry)
    {
        entry.ToTable("correlation_entries");
        entry.Property(e => e.Method).HasMaxLength(Lengths.Code);
        entry.Property(e => e.Source).HasMaxLength(Lengths.Note);
        entry.HasIndex(e => e.Number).IsUnique();
        entry.HasOne<Person>().WithMany().HasForeignKey(e => e.DraftedBy);
        entry.HasOne<Person>().WithMany().HasForeignKey(e => e.ApprovedBy);
    }
}
