using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Certificates;

internal sealed class CargoTankConfiguration : IEntityTypeConfiguration<CargoTank>
{
    public void Configure(EntityTypeBuilder<CargoTank> tank)
    {
        tank.ToTable("cargo_tanks");
        tank.Property(t => t.TankCode).HasMaxLength(Lengths.Code);
        tank.HasIndex(t => new { t.CertificateId, t.Place }).IsUnique();
        tank.HasIndex(t => new { t.CertificateId, t.TankCode }).IsUnique();
        tank.HasOne<Tank>().WithMany().HasForeignKey(t => t.TankCode);
        tank.HasOne<Batch>().WithMany().HasForeignKey(t => t.BatchId);
        tank.HasOne<Decision>().WithMany().HasForeignKey(t => t.DecisionId);
    }
}
