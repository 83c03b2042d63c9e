using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class FrozenAssessmentConfiguration : IEntityTypeConfiguration<FrozenAssessment>
{
    public void Configure(EntityTypeBuilder<FrozenAssessment> assessment)
    {
        assessment.ToTable("assessments");
        assessment.Property(a => a.EvidenceHash).HasMaxLength(Lengths.Hash);
        assessment.Property(a => a.Build).HasMaxLength(Lengths.Name);
        assessment.HasIndex(a => new { a.BatchId, a.At });
        assessment.HasOne<Batch>().WithMany().HasForeignKey(a => a.BatchId);
        assessment.HasOne<Person>().WithMany().HasForeignKey(a => a.By);
    }
}
