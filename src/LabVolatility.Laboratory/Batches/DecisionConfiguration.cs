using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class DecisionConfiguration : IEntityTypeConfiguration<Decision>
{
    public void Configure(EntityTypeBuilder<Decision> decision)
    {
        decision.ToTable("decisions", table =>
        {
            table.HasCheckConstraint("evidence_is_named", "kind NOT IN ('Release', 'Concession') OR (assessment_id IS NOT NULL AND evidence_hash IS NOT NULL)");
            table.HasCheckConstraint("reason_is_due", "kind = 'Release' OR (reason IS NOT NULL AND trim(reason) <> '')");
        });
        decision.Property(d => d.EvidenceHash).HasMaxLength(Lengths.Hash);
        decision.Property(d => d.PersonName).HasMaxLength(Lengths.Name);
        decision.Property(d => d.PersonRoles).HasMaxLength(Lengths.Name);
        decision.Property(d => d.Meaning).HasMaxLength(Lengths.Note);
        decision.Property(d => d.Reason).HasMaxLength(Lengths.Note);
        decision.HasIndex(d => new { d.BatchId, d.Sequence }).IsUnique();
        decision.HasIndex(d => d.At);
        decision.HasOne<Batch>().WithMany().HasForeignKey(d => d.BatchId);
        decision.HasOne<FrozenAssessment>().WithMany().HasForeignKey(d => d.AssessmentId);
        decision.HasOne<Person>().WithMany().HasForeignKey(d => d.PersonId);
    }
}
