using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class ContainerOpeningConfiguration : IEntityTypeConfiguration<ContainerOpening>
{
    public void Configure(EntityTypeBuilder<ContainerOpening> opening)
    {
        opening.ToTable("container_openings");
        opening.Property(o => o.Why).HasMaxLength(Lengths.Note);
        opening.HasOne<Person>().WithMany().HasForeignKey(o => o.By);
    }
}
