using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class HandBlendConfiguration : IEntityTypeConfiguration<HandBlend>
{
    public void Configure(EntityTypeBuilder<HandBlend> blend)
    {
        blend.ToTable("hand_blends");
        blend.HasKey(b => b.SampleId);
        blend.Property(b => b.SampleId).ValueGeneratedNever();
        blend.Property(b => b.EthanolLot).HasMaxLength(Lengths.Name);
        blend.Property(b => b.BlendstockVolume).HasJson();
        blend.Property(b => b.EthanolVolume).HasJson();
        blend.Property(b => b.Temperature).HasJson();
        blend.Property(b => b.Confirmed).HasJson();
        blend.Property(b => b.Note).HasMaxLength(Lengths.Note);
        blend.HasIndex(b => b.BlendstockContainerId).IsUnique();
        blend.HasOne<Sample>().WithOne().HasForeignKey<HandBlend>(b => b.SampleId);
        blend.HasOne<Sample>().WithMany().HasForeignKey(b => b.BlendstockId);
        blend.HasOne<Container>().WithMany().HasForeignKey(b => b.BlendstockContainerId);
        blend.HasOne<Person>().WithMany().HasForeignKey(b => b.MadeBy);
    }
}
