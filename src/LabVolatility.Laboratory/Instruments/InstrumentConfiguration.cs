using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace LabVolatility.Laboratory.Instruments;

internal sealed class InstrumentConfiguration : IEntityTypeConfiguration<Instrument>
{
    public void Configure(EntityTypeBuilder<Instrument> instrument)
    {
        instrument.ToTable("instruments");
        instrument.HasKey(i => i.Code);
        instrument.Property(i => i.Code).HasMaxLength(Lengths.Code);
        instrument.Property(i => i.Name).HasMaxLength(Lengths.Name);
        instrument.Property(i => i.SerialNumber).HasMaxLength(Lengths.Name);
        instrument.Property(i => i.Location).HasMaxLength(Lengths.Name);
        instrument.Property(i => i.Methods).HasJson();
        instrument.Property(i => i.OutOfServiceReason).HasMaxLength(Lengths.Note);
    }
}
