using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class SampleConfiguration : IEntityTypeConfiguration<Sample>
{
    public void Configure(EntityTypeBuilder<Sample> sample)
    {
        sample.ToTable("samples");
        sample.Property(s => s.Number).HasMaxLength(Lengths.Code);
        sample.Property(s => s.SampledBy).HasMaxLength(Lengths.Name);
        sample.Property(s => s.VerdictNote).HasMaxLength(Lengths.Note);
        sample.Property(s => s.Note).HasMaxLength(Lengths.Note);
        sample.HasIndex(s => s.Number).IsUnique();
        sample.HasIndex(s => s.BatchId);
        sample.HasIndex(s => new { s.TankCode, s.SampledAt });
        sample.HasIndex(s => s.RegisteredAt);
        sample.HasOne<Grade>().WithMany().HasForeignKey(s => s.GradeCode);
        sample.HasOne<Batch>().WithMany().HasForeignKey(s => s.BatchId);
        sample.HasOne<Tank>().WithMany().HasForeignKey(s => s.TankCode);
        sample.HasOne<SamplePoint>().WithMany().HasForeignKey(s => s.SamplePointCode);
        sample.HasOne<Person>().WithMany().HasForeignKey(s => s.RegisteredBy);
        sample.HasOne<Person>().WithMany().HasForeignKey(s => s.ReceivedBy);
        sample.HasOne<Person>().WithMany().HasForeignKey(s => s.VerdictBy);
        sample.HasOne<Sample>().WithMany().HasForeignKey(s => s.ResampleOf);
        sample.HasMany(s => s.Containers).WithOne().HasForeignKey(c => c.SampleId);
        sample.HasMany(s => s.Tests).WithOne().HasForeignKey(t => t.SampleId);
    }
}
