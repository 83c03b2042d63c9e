using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class StepTakenConfiguration : IEntityTypeConfiguration<StepTaken>
{
    public void Configure(EntityTypeBuilder<StepTaken> step)
    {
        step.ToTable("steps_taken");
        step.Property(s => s.Subject).HasMaxLength(Lengths.Code);
        step.Property(s => s.Branch).HasJson();
        step.Property(s => s.Samples).HasJson();
        step.Property(s => s.Found).HasMaxLength(Lengths.Note);
        step.Property(s => s.Reason).HasMaxLength(Lengths.Note);
        step.Property(s => s.ByName).HasMaxLength(Lengths.Name);
        step.HasIndex(s => new { s.BatchId, s.Occasion, s.Subject, s.Place }).IsUnique();
        step.HasIndex(s => s.TestId);
        step.HasOne<Batch>().WithMany().HasForeignKey(s => s.BatchId);
        step.HasOne<AssignedTest>().WithMany().HasForeignKey(s => s.TestId);
        step.HasOne<Person>().WithMany().HasForeignKey(s => s.By);
    }
}
