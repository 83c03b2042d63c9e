using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Methods;

internal sealed class PrecisionEntryConfiguration : IEntityTypeConfiguration<PrecisionEntry>
{
    public void Configure(EntityTypeBuilder<PrecisionEntry> entry)
    {
        entry.ToTable("precision_entries");
        entry.Property(e => e.Method).HasMaxLength(Lengths.Code);
        entry.Property(e => e.Edition).HasMaxLength(Lengths.Code);
        entry.Property(e => e.Quantity).HasMaxLength(Lengths.Code);
        entry.Property(e => e.Source).HasMaxLength(Lengths.Note);
        entry.HasIndex(e => new { e.Method, e.Quantity });
        entry.HasOne<Person>().WithMany().HasForeignKey(e => e.DraftedBy);
        entry.HasOne<Person>().WithMany().HasForeignKey(e => e.ApprovedBy);
    }
}
