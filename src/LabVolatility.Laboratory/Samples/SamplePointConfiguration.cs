using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class SamplePointConfiguration : IEntityTypeConfiguration<SamplePoint>
{
    public void Configure(EntityTypeBuilder<SamplePoint> point)
    {
        point.ToTable("sample_points");
        point.HasKey(p => p.Code);
        point.Property(p => p.Code).HasMaxLength(Lengths.Code);
        point.Property(p => p.Name).HasMaxLength(Lengths.Name);
        point.HasOne<Tank>().WithMany().HasForeignKey(p => p.TankCode);
    }
}
