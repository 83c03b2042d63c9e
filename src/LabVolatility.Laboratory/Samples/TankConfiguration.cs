using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Samples;

internal sealed class TankConfiguration : IEntityTypeConfiguration<Tank>
{
    public void Configure(EntityTypeBuilder<Tank> tank)
    {
        tank.ToTable("tanks");
        tank.HasKey(t => t.Code);
        tank.Property(t => t.Code).HasMaxLength(Lengths.Code);
        tank.Property(t => t.Name).HasMaxLength(Lengths.Name);
        tank.HasOne<Grade>().WithMany().HasForeignKey(t => t.GradeCode);
    }
}
