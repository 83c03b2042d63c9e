using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class ContainerConfiguration : IEntityTypeConfiguration<Container>
{
    public void Configure(EntityTypeBuilder<Container> container)
    {
        container.ToTable("containers");
        container.Property(c => c.Code).HasMaxLength(Lengths.Code);
        container.Property(c => c.TemperatureTyped).HasMaxLength(Lengths.Name);
        container.Property(c => c.Seal).HasMaxLength(Lengths.Name);
        container.Property(c => c.Condition).HasMaxLength(Lengths.Note);
        container.HasIndex(c => c.Code).IsUnique();
        container.HasIndex(c => new { c.SampleId, c.Number }).IsUnique();
        container.HasMany(c => c.Openings).WithOne().HasForeignKey(o => o.ContainerId);
    }
}
