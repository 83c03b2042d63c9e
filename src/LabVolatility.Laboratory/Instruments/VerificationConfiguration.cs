using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Instruments;

internal sealed class VerificationConfiguration : IEntityTypeConfiguration<Verification>
{
    public void Configure(EntityTypeBuilder<Verification> verification)
    {
        verification.ToTable("verifications");
        verification.Property(v => v.Fluid).HasMaxLength(Lengths.Name);
        verification.Property(v => v.Lot).HasMaxLength(Lengths.Name);
        verification.Property(v => v.Typed).HasMaxLength(Lengths.Name);
        verification.Property(v => v.Note).HasMaxLength(Lengths.Note);
        verification.HasIndex(v => new { v.InstrumentCode, v.On });
        verification.HasOne<Instrument>().WithMany().HasForeignKey(v => v.InstrumentCode);
        verification.HasOne<Person>().WithMany().HasForeignKey(v => v.By);
    }
}
