using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Batches;

internal sealed class BatchConfiguration : IEntityTypeConfiguration<Batch>
{
    public void Configure(EntityTypeBuilder<Batch> batch)
    {
        batch.ToTable("batches");
        batch.Property(b => b.Number).HasMaxLength(Lengths.Code);
        batch.Property(b => b.EthanolMethod).HasMaxLength(Lengths.Code);
        batch.Property(b => b.Destinations).HasJson();
        batch.Property(b => b.Note).HasMaxLength(Lengths.Note);
        batch.HasIndex(b => b.Number).IsUnique();
        batch.HasIndex(b => b.CreatedAt);
        batch.HasOne<Grade>().WithMany().HasForeignKey(b => b.GradeCode);
        batch.HasOne<Tank>().WithMany().HasForeignKey(b => b.TankCode);
        batch.HasOne<Person>().WithMany().HasForeignKey(b => b.CreatedBy);
    }
}
