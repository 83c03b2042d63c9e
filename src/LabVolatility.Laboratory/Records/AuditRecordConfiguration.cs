using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Records;

internal sealed class AuditRecordConfiguration : IEntityTypeConfiguration<AuditRecord>
{
    public void Configure(EntityTypeBuilder<AuditRecord> record)
    {
        record.ToTable("audit_records");
        record.HasKey(r => r.Sequence);
        record.Property(r => r.Sequence).ValueGeneratedNever();
        record.Property(r => r.Actor).HasMaxLength(Lengths.Name);
        record.Property(r => r.Origin).HasMaxLength(Lengths.Code);
        record.Property(r => r.Action).HasMaxLength(Lengths.Name);
        record.Property(r => r.Subject).HasMaxLength(Lengths.Name);
        record.Property(r => r.SubjectId).HasMaxLength(Lengths.Name);
        record.Property(r => r.Reason).HasMaxLength(Lengths.Note);
        record.Property(r => r.Build).HasMaxLength(Lengths.Name);
        record.Property(r => r.PreviousHash).HasMaxLength(Lengths.Hash);
        record.Property(r => r.Hash).HasMaxLength(Lengths.Hash);
        record.HasIndex(r => new { r.Subject, r.SubjectId });
        record.HasIndex(r => r.At);
    }
}
