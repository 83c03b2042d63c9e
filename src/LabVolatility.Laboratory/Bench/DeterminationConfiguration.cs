using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Bench;

internal sealed class DeterminationConfiguration : IEntityTypeConfiguration<Determination>
{
    public void Configure(EntityTypeBuilder<Determination> determination)
    {
        determination.ToTable("determinations");
        determination.Property(d => d.Method).HasMaxLength(Lengths.Code);
        determination.Property(d => d.Edition).HasMaxLength(Lengths.Code);
        determination.Property(d => d.Origin).HasMaxLength(Lengths.Code);
        determination.Property(d => d.ExternalId).HasMaxLength(Lengths.Name);
        determination.HasIndex(d => new { d.InstrumentCode, d.ExternalId }).IsUnique().HasFilter("external_id IS NOT NULL");
        determination.HasIndex(d => d.ContainerId, "one_test_a_container").IsUnique().HasFilter("sole_test");
        determination.HasIndex(d => d.ContainerId);
        determination.HasIndex(d => d.MeasuredAt);
        determination.HasOne<Sample>().WithMany().HasForeignKey(d => d.SampleId);
        determination.HasOne<Container>().WithMany().HasForeignKey(d => d.ContainerId);
        determination.HasOne<AssignedTest>().WithMany().HasForeignKey(d => d.TestId);
        determination.HasOne<Instrument>().WithMany().HasForeignKey(d => d.InstrumentCode);
        determination.HasOne<Person>().WithMany().HasForeignKey(d => d.MeasuredBy);
        determination.HasOne<Person>().WithMany().HasForeignKey(d => d.RecordedBy);
        determination.HasMany(d => d.Revisions).WithOne().HasForeignKey(r => r.DeterminationId);
        determination.HasMany(d => d.Results).WithOne().HasForeignKey(r => r.DeterminationId);
        determination.HasOne(d => d.TakenOn).WithOne().HasForeignKey<TakenOn>(t => t.DeterminationId);
    }
}
