using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Certificates;

internal sealed class CargoConfiguration : IEntityTypeConfiguration<Cargo>
{
    public void Configure(EntityTypeBuilder<Cargo> cargo)
    {
        cargo.ToTable("cargoes");
        cargo.HasKey(c => c.CertificateId);
        cargo.Property(c => c.CertificateId).ValueGeneratedNever();
        foreach (var name in (string[])[nameof(Cargo.Ship), nameof(Cargo.Voyage), nameof(Cargo.Port), nameof(Cargo.Berth), nameof(Cargo.Product), nameof(Cargo.Reference)])
            cargo.Property(name).HasMaxLength(Lengths.Name);
        cargo.Property(c => c.WhyGradesDiffer).HasMaxLength(Lengths.Note);
        cargo.Property(c => c.Remarks).HasMaxLength(Lengths.Note);
        cargo.HasOne<Certificate>().WithOne().HasForeignKey<Cargo>(c => c.CertificateId);
        cargo.HasMany(c => c.Tanks).WithOne().HasForeignKey(t => t.CertificateId);
    }
}
