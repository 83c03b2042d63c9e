using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class BlendContentConfiguration : IEntityTypeConfiguration<BlendContent>
{
    public void Configure(EntityTypeBuilder<BlendContent> content)
    {
        content.ToTable("blend_contents");
        content.Property(c => c.Method).HasMaxLength(Lengths.Name);
        content.HasIndex(c => c.SampleId);
        content.HasOne<Sample>().WithMany().HasForeignKey(c => c.SampleId);
        content.HasOne<Person>().WithMany().HasForeignKey(c => c.By);
    }
}
