using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Bench;

internal sealed class DeterminationRevisionConfiguration : IEntityTypeConfiguration<DeterminationRevision>
{
    public void Configure(EntityTypeBuilder<DeterminationRevision> revision)
    {
        revision.ToTable("determination_revisions", table =>
        {
            table.HasCheckConstraint("amendment_has_a_reason", "revision = 1 OR (revision > 1 AND reason IS NOT NULL AND trim(reason) <> '')");
            table.HasCheckConstraint("set_aside_has_a_cause", "NOT set_aside OR (assignable_cause IS NOT NULL AND trim(assignable_cause) <> '')");
        });
        revision.Property(r => r.ByName).HasMaxLength(Lengths.Name);
        revision.Property(r => r.Reason).HasMaxLength(Lengths.Note);
        revision.Property(r => r.AssignableCause).HasMaxLength(Lengths.Note);
        revision.Property(r => r.Readings).HasJson();
        revision.Property(r => r.Handling).HasJson();
        revision.Property(r => r.Findings).HasJson();
        revision.HasIndex(r => new { r.DeterminationId, r.Revision }).IsUnique();
        revision.HasOne<Person>().WithMany().HasForeignKey(r => r.By);
    }
}
